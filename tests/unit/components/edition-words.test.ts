import { describe, expect, it } from 'vitest';
import type { Form } from '../../../schemas/form.ts';
import { copyAdvice } from '../../../src/components/edition-words.ts';
import { fixtureForm } from '../forms/fixtures.ts';

const form = fixtureForm();
const withdrawn = (replacement?: string): Form => ({
  ...form,
  status: 'retired',
  withdrawal: {
    ...{ withdrawn: '2026-11-25', by: 'Clinical lead', reason: 'A caution was missing.' },
    ...(replacement !== undefined && { replacement }),
  },
});

describe('what to do with a copy', () => {
  it.each([
    ['current', form, 'It is the newest release.'],
    ['superseded', form, 'Use version 1.1.0.'],
    ['draft', form, 'Do not put it into use.'],
    ['withdrawn', withdrawn('1.0.1'), 'Do not use it: A caution was missing. Use version 1.0.1.'],
    ['withdrawn', withdrawn(), 'Do not use it: A caution was missing. Nothing replaces it.'],
  ] as const)('that is %s is said in words', (standing, of, words) => {
    expect(copyAdvice({ form: of, standing }, '1.1.0')).toBe(words);
  });
});
