import { describe, expect, it } from 'vitest';
import { type Form, form as formSchema } from '../../../schemas/form.ts';
import type { Library } from '../../../schemas/library.ts';
import { buildForm } from '../../../src/forms/form.ts';
import { formHash, shortCode } from '../../../src/forms/form-hash.ts';
import { loincNotice } from '../../../src/forms/loinc.ts';
import { allKinds, fieldsOf, fixtureForm, library, steps } from './fixtures.ts';

const form = fixtureForm();
const field = (linkId: string) => fieldsOf(form).find((each) => each.linkId === linkId);

describe('a form', () => {
  it('keeps to its schema', () => {
    expect(formSchema.parse(form)).toEqual(form);
  });

  it('takes its sections from the run sheet and numbers a system that comes back', () => {
    expect(form.sections.map(({ linkId, title, position }) => [linkId, title, position])).toEqual([
      ['preparation', 'Preparation', 'chair'],
      ['neck', 'Neck', 'sitting'],
      ['heart', 'Heart', 'sitting'],
      ['neck-2', 'Neck (part 2)', 'supine'],
    ]);
  });

  it('keeps every stage of a manoeuvre in one item, with the position of each', () => {
    expect(form.sections[2]?.items.map(({ manoeuvre, positions }) => [manoeuvre, positions])).toEqual([
      ['count', ['sitting', 'supine']],
    ]);
  });

  it.each(allKinds)('gives a %s record the fields of its sides, the right before the left', (kind) => {
    const ids = fieldsOf(form)
      .filter(({ record }) => record.startsWith(`${kind}-`))
      .map(({ linkId, side }) => [linkId, side]);
    expect(ids).toEqual([
      [`${kind}-none`, 'none'],
      [`${kind}-both.right`, 'right'],
      [`${kind}-both.left`, 'left'],
      [`${kind}-left.left`, 'left'],
      [`${kind}-right.right`, 'right'],
      [`${kind}-either.side`, 'none'],
      [`${kind}-either`, 'none'],
    ]);
  });

  it('says the side in the label and leaves it out of the base', () => {
    expect(field('text-both.left')).toMatchObject({
      label: 'Fixture text, asked both, left',
      base: 'Fixture text, asked both',
    });
  });

  it('asks which side was used where either serves', () => {
    expect(field('quantity-either.side')).toMatchObject({
      kind: 'choice',
      label: 'Fixture quantity, asked either: side used',
      options: [
        { code: 'right', display: 'Right', normal: false },
        { code: 'left', display: 'Left', normal: false },
      ],
    });
  });

  it('names the detail and the reason of a finding after its own side', () => {
    expect(field('finding-both.right')).toMatchObject({
      detail: 'finding-both.right.detail',
      reason: 'finding-both.right.reason',
    });
  });

  it('writes references out in plain text', () => {
    expect(field('finding-none')).toMatchObject({ normal: 'Smooth, up to 3\u202fcm' });
    expect(form.sections[3]?.items[0]?.cautions).toEqual(['Not above 3\u202fcm', 'Never both sides at once.']);
  });

  it('spells out grades and cites their source', () => {
    expect(field('scale-none')).toMatchObject({
      scaleTitle: 'Fixture grades',
      source: 'Nobody N. On fixtures. 2020; table 2',
      options: [
        { code: '0', display: '0 – nothing', normal: false },
        { code: '4+', display: '4+ – nearly all', normal: false },
        { code: '5', display: '5 – all', normal: true },
      ],
    });
  });

  it('gives a choice codes that say what they stand for', () => {
    expect(field('choice-none')).toMatchObject({
      options: [
        { code: 'seen', display: 'seen', normal: true },
        { code: 'above-the-jaw', display: 'above the jaw', normal: false },
        { code: 'not-identified', display: 'not identified', normal: false },
      ],
    });
  });

  it('tells answers apart that differ only by a sign', () => {
    const options = JSON.stringify(['seen', '< 3', '≥ 3', '3+', 'café']);
    const text = JSON.stringify(library).replace(/"options":\[[^\]]+\]/, `"options":${options}`);
    const changed = buildForm(JSON.parse(text) as Library, 'fixture-form', () => steps);
    const built = fieldsOf(changed).find(({ linkId }) => linkId === 'choice-none');
    expect(built?.kind === 'choice' && built.options.map(({ code }) => code)).toEqual([
      ...['seen', 'below-3', 'at-least-3', '3-plus', 'cafe'],
    ]);
  });

  it('gives a quantity its unit as shown, range, and normal with its source', () => {
    expect(field('quantity-none')).toMatchObject({
      ...{ unit: 'cm', unitLabel: 'cm', min: -5, max: 20, normal: 'at most 3\u202fcm' },
      source: 'Nobody N. On fixtures. 2020; table 1',
    });
    expect(field('beat-count')).toMatchObject({ unit: '1', unitLabel: 'number' });
  });

  it("carries LOINC's notice when a field has a code, and only then", () => {
    expect(form.copyright).toBe(`CC BY 4.0. ${loincNotice}`);
    expect(buildForm(library, 'fixture-form', () => steps.slice(0, 1)).copyright).toBe('CC BY 4.0.');
  });

  it('refuses a form that the library does not have, by name', () => {
    expect(() => buildForm(library, 'other', () => steps)).toThrow('no form "other"; forms are fixture-form');
  });
});

describe('the hash of a form', () => {
  it('is the same for the same content, built again', () => {
    expect(fixtureForm()).toEqual(form);
    expect(JSON.stringify(fixtureForm())).toBe(JSON.stringify(form));
  });

  it('does not move with version, status, date or publisher', () => {
    const released = { ...form, version: '9.9.9', status: 'active' as const, date: '2030-01-01', publisher: 'Else' };
    expect(formHash(released)).toBe(form.hash);
  });

  it.each(['title', 'purpose', 'leavesOut', 'url', 'copyright'] as const)('moves with the %s', (key) => {
    expect(formHash({ ...form, [key]: `${form[key]}x` })).not.toBe(form.hash);
  });

  it('moves with a single word of a caution', () => {
    const changed = JSON.stringify(form).replace('Ask about pain first.', 'Ask about pain.');
    expect(formHash(JSON.parse(changed) as Form)).not.toBe(form.hash);
  });

  it('is shortened to eight digits', () => {
    expect(shortCode(form.hash)).toMatch(/^[0-9a-f]{8}$/);
    expect(form.hash.startsWith(shortCode(form.hash))).toBe(true);
  });
});
