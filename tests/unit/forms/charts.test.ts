import { describe, expect, it } from 'vitest';
import type { Form } from '../../../schemas/form.ts';
import { chartsOf } from '../../../src/forms/paper/charts.ts';
import { formPdf } from '../../../src/forms/pdf.ts';
import { bare, bareText, pages } from '../../fixtures/pdf-text.ts';
import { widgets } from '../../fixtures/pdf-fields.ts';
import { present } from '../../fixtures/present.ts';
import { paperForm } from './pdf-form.ts';

const form = paperForm();

/** The form as if its sections examined these systems, in turn. */
const examining = (...systems: [string, ...string[]]): Form => ({
  ...form,
  sections: form.sections.map((section, index) => ({ ...section, system: present(systems[index % systems.length]) })),
});
const keyOf = (of: Form): string[] => present(chartsOf(of)).key.map(({ words }) => words);

describe('the body charts of a form', () => {
  it('show the places that the form examines, and say what each sign is', () => {
    expect(keyOf(examining('reflexes', 'sensation'))).toEqual(['reflex', 'a place to try sensation']);
    expect(keyOf(examining('legs-and-circulation'))).toEqual(['pulse']);
    expect(keyOf(examining('abdomen'))).toEqual([]);
    expect(present(chartsOf(examining('reflexes'))).front).not.toBe(present(chartsOf(examining('abdomen'))).front);
  });

  it('are left out where a form only measures', () => {
    expect(chartsOf(examining('preparation', 'vital-signs', 'eyes'))).toBeUndefined();
  });

  it.each(['a4', 'letter', 'large'] as const)(
    'stand after the end of the form on %s, with lines and sides',
    async (print) => {
      const bytes = await formPdf(form, print);
      const texts = (await pages(bytes)).map(bareText);
      const first = texts.findIndex((text) => text.includes(bare('Body charts')));
      const end = texts.findIndex((text) => text.includes(bare('Summary and what is to be done')));
      expect(first).toBeGreaterThan(end);
      const lines = (await widgets(bytes)).filter(({ fieldName }) => fieldName === 'sheet_charts');
      expect(lines.map(({ page }) => page)).toEqual([first + 1]);
      const figures = texts.slice(first).join('');
      for (const words of ['From the front', 'From behind', 'Right', 'Left', 'What the marks mean'])
        expect(figures).toContain(bare(words));
    },
  );
});
