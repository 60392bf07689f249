import { describe, expect, it } from 'vitest';
import { observationFields } from '../../../src/forms/observation-fields.ts';
import { observationOf, watchedItems } from '../../../src/forms/observation.ts';
import { observationPdf } from '../../../src/forms/observation-pdf.ts';
import { criticalWords, judgement, remarks, watchNotice } from '../../../src/forms/observation-words.ts';
import { filled, values, widgets } from '../../fixtures/pdf-fields.ts';
import { bare, bareText, pages } from '../../fixtures/pdf-text.ts';
import { present } from '../../fixtures/present.ts';
import { fixtureForm } from './fixtures.ts';

/** The fixture form, long enough for two sheets, its first item safety-critical. */
function longForm() {
  const form = fixtureForm();
  const section = present(form.sections[1]);
  const item = present(section.items[0]);
  const flags = { redFlags: [{ urgency: 'now' as const, finding: 'It stops', action: 'Call.' }] };
  section.items = Array.from({ length: 24 }, (_, index) => ({
    ...{ ...item, ...flags, manoeuvre: `look-${index}`, title: `Look at part ${index}` },
    cautions: index % 2 === 0 ? ['Never both sides at once.', 'Gently.'] : ['Gently.'],
  }));
  return form;
}

const form = longForm();
const observation = observationOf(form);
const items = watchedItems(observation);

const sheetsOn = { a4: await observationPdf(form, 'a4'), letter: await observationPdf(form, 'letter') };

describe.each(['a4', 'letter'] as const)('the observation sheets on %s', (paper) => {
  const blank = sheetsOn[paper];

  it('name each item once with its cautions that forbid, and have a head and a judgement for each sheet', async () => {
    const text = (await pages(blank)).map(bareText).join('');
    const times = (words: string): number => text.split(bare(words)).length - 1;
    for (const { number, title, critical } of items)
      expect(text, title).toContain(bare(`${number}${critical ? ' !' : ''}${title}`));
    expect(times('Never both sides at once.')).toBe(12);
    // The one item that is critical though no caution of it forbids shows what it has.
    expect(times('Gently.')).toBe(1);
    expect(observation.sheets.length).toBe(2);
    for (const words of [judgement.meaning, criticalWords, watchNotice, ...remarks.map(({ label }) => label)])
      expect(times(words), words).toBe(2);
    expect(times(present(observation.warning))).toBe(1);
  });

  it('have every field, which keeps what is put into it', async () => {
    const fields = await widgets(blank);
    expect(new Set(fields.map(({ fieldName }) => fieldName))).toEqual(
      new Set(observationFields(observation).map(({ name }) => name)),
    );
    const answers = new Map([
      ['mark_look-3', 'differs'],
      ['how_look-3', 'From the left'],
      ['sheet-2_judgement', 'safe-with-gaps'],
    ]);
    const after = await values(await filled(blank, answers));
    for (const [name, value] of answers) expect(after.get(name)).toBe(value);
  });
});

it('the same form gives the same bytes', async () => {
  expect(await observationPdf(longForm(), 'a4')).toEqual(sheetsOn.a4);
});
