import { describe, expect, it } from 'vitest';
import type { Form, FormItem } from '../../../schemas/form.ts';
import { agreementLines, agreementOf, type Ratings } from '../../../src/forms/observation-agreement.ts';
import { isSafetyCritical, mostWatched, observationOf, watchedItems } from '../../../src/forms/observation.ts';
import type { Rating } from '../../../src/forms/observation-words.ts';
import { present } from '../../fixtures/present.ts';
import { fixtureForm } from './fixtures.ts';

const form = fixtureForm();
const items = watchedItems(observationOf(form));

/** A form of sections with so many items each. */
function formOf(...counts: number[]): Form {
  const [section] = form.sections;
  const [item] = present(section).items;
  const itemsOf = (system: number, count: number): FormItem[] =>
    Array.from({ length: count }, (_, index) => ({ ...present(item), manoeuvre: `m-${system}-${index}` }));
  const sections = counts.map((count, system) => ({
    ...present(section),
    ...{ linkId: `s-${system}`, title: `System ${system}`, items: itemsOf(system, count) },
  }));
  return { ...form, sections };
}

describe('the observation sheet of a form', () => {
  it('has each item of the form once, in its order, numbered from 1', () => {
    const asked = form.sections.flatMap((section) => section.items.map(({ manoeuvre }) => manoeuvre));
    expect(items.map(({ manoeuvre }) => manoeuvre)).toEqual(asked);
    expect(items.map(({ number }) => number)).toEqual(asked.map((_, index) => index + 1));
  });

  it.each([
    ['25 items on one sheet, without a warning', [10, 15], [[10, 15]]],
    ['26 items on two sheets', [10, 16], [[10], [16]]],
    ['sections together while there is room', [10, 15, 20, 5, 1], [[10, 15], [20, 5], [1]]],
    [
      'sheets as even as they can be',
      [9, 8, 8, 8, 8],
      [
        [9, 8],
        [8, 8, 8],
      ],
    ],
    [
      'sheets more even than full',
      [9, 8, 5, 3, 8],
      [
        [9, 8],
        [5, 3, 8],
      ],
    ],
    ['a section that is longer than a sheet parted', [5, 60, 3], [[5], [25], [25], [10, 3]]],
  ])('puts %s', (_what, counts, sheets) => {
    const observation = observationOf(formOf(...counts));
    expect(observation.sheets.map(({ sections }) => sections.map((section) => section.items.length))).toEqual(sheets);
    expect(observation.sheets.map(({ part }) => part)).toEqual(sheets.map((_, index) => index + 1));
    expect(observation.warning !== undefined).toBe(observation.count > mostWatched);
    const links = observation.sheets.flatMap(({ sections }) => sections.map(({ linkId }) => linkId));
    expect(new Set(links).size).toBe(links.length);
  });

  it('says how many there are and how many sheets where they are more than 25', () => {
    expect(observationOf(formOf(20, 20)).warning).toMatch(/^40 items are more than the 25 .* into 2 sheets/);
  });

  it('refuses a form that holds nothing', () => {
    expect(() => observationOf({ ...form, sections: [] })).toThrow('holds nothing to watch');
  });
});

describe('safety-critical', () => {
  const item = (more: Partial<FormItem>): FormItem => ({
    ...present(form.sections[0]?.items[0]),
    ...{ sensitive: false, redFlags: [], cautions: [], ...more },
  });
  const flag = (urgency: 'now' | 'today') => [{ urgency, finding: 'It stops.', action: 'Call.' }];

  it.each([
    ['a sensitive examination', item({ sensitive: true }), true],
    [
      'what shows something to act on now, with "never"',
      item({ redFlags: flag('now'), cautions: ['Never both.'] }),
      true,
    ],
    ['the same with "stop" later in a sentence', item({ redFlags: flag('now'), cautions: ['Pain: stop.'] }), true],
    ['a forbidding caution alone', item({ cautions: ['Never both.'] }), false],
    ['one with a flag that can wait', item({ redFlags: flag('today'), cautions: ['Never both.'] }), false],
    [
      'a flag with cautions that only limit',
      item({ redFlags: flag('now'), cautions: ['Gently, not stopping.'] }),
      false,
    ],
  ])('%s: %s', (_what, one, critical) => {
    expect(isSafetyCritical(one)).toBe(critical);
  });

  it('brings the cautions that forbid to the sheet, and no others', () => {
    const changed = structuredClone(form);
    const first = present(changed.sections[0]);
    first.items[0] = item({ redFlags: flag('now'), cautions: ['Gently.', 'Never both.', 'Stop at pain.'] });
    const [watched] = watchedItems(observationOf(changed));
    expect(watched).toMatchObject({ critical: true, forbids: ['Never both.', 'Stop at pain.'] });
  });
});

describe('two observers', () => {
  const three = [
    { manoeuvre: 'greet', title: 'Greet', number: 1, critical: false },
    { manoeuvre: 'look', title: 'Look', number: 2, critical: true },
    { manoeuvre: 'feel', title: 'Feel', number: 3, critical: false },
  ];
  const marked = (...marks: [string, Rating][]): Ratings => new Map(marks);

  it('are compared item by item; only what both marked counts', () => {
    const {
      same,
      both,
      items: compared,
    } = agreementOf(
      three,
      marked(['greet', 'described'], ['look', 'differs']),
      marked(['greet', 'described'], ['feel', 'not-seen']),
    );
    expect([same, both]).toEqual([1, 1]);
    expect(compared.map(({ verdict }) => verdict)).toEqual(['same', 'one', 'one']);
  });

  it('are told what to talk about, the safety-critical first', () => {
    const agreement = agreementOf(
      three,
      marked(['greet', 'described'], ['look', 'described'], ['feel', 'described']),
      marked(['greet', 'not-seen'], ['look', 'differs'], ['feel', 'described']),
    );
    expect(agreementLines(agreement)).toEqual([
      'Marked the same: 1 of the 3 items that both marked.',
      '2 Look, safety-critical: As described / Differs',
      '1 Greet: As described / Not seen',
    ]);
  });

  it('who marked nothing together agree on nothing', () => {
    const agreement = agreementOf(three, marked(['greet', 'described']), marked());
    expect(agreement).toMatchObject({ same: 0, both: 0, different: [] });
    expect(agreement.items.map(({ verdict }) => verdict)).toEqual(['one', 'none', 'none']);
    expect(agreementLines(agreement)).toEqual(['No item has been marked by both observers yet.']);
  });
});
