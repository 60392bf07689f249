import { describe, expect, it } from 'vitest';
import type { Form, FormField, FormItem } from '../../../../schemas/form.ts';
import { sizeOf } from '../../../../src/forms/changes/change.ts';
import { formChanges } from '../../../../src/forms/changes/form-changes.ts';
import { changesText, changeText } from '../../../../src/forms/changes/words.ts';
import { present } from '../../../fixtures/present.ts';
import { fieldsOf, fixtureForm } from '../fixtures.ts';

type OfKind<K extends FormField['kind']> = Extract<FormField, { kind: K }>;

/** A copy of the form that a test may change in place. */
const copy = (): Form => structuredClone(fixtureForm());
const fieldOf = <K extends FormField['kind']>(form: Form, kind: K): OfKind<K> =>
  present(fieldsOf(form).find((field): field is OfKind<K> => field.kind === kind));
const itemOf = (form: Form, id: string): FormItem =>
  present(form.sections.flatMap(({ items }) => items).find(({ manoeuvre }) => manoeuvre === id));

function dropField(form: Form, linkId: string): void {
  for (const { items } of form.sections)
    for (const item of items) item.fields = item.fields.filter((field) => field.linkId !== linkId);
}

/** By the rules of versions: what is done to the newer form, and how large the change is. */
const rules: [string, 'major' | 'minor' | 'patch', string, (form: Form) => void][] = [
  ['a blank removed', 'major', 'blank removed', (form) => dropField(form, fieldOf(form, 'text').linkId)],
  ['a manoeuvre removed', 'major', 'removed', (form) => void form.sections.splice(2, 1)],
  [
    'a kind of answer changed',
    'major',
    'kind of answer changed',
    (form) => void Object.assign(fieldOf(form, 'choice'), { kind: 'text' }),
  ],
  ['a unit changed', 'major', 'unit changed', (form) => void (fieldOf(form, 'quantity').unit = 'mm')],
  ['a side changed', 'major', 'side changed', (form) => void (fieldOf(form, 'text').side = 'left')],
  ['the sides of a manoeuvre changed', 'major', 'sides changed', (form) => void (itemOf(form, 'feel').sides = 'left')],
  ['an answer removed', 'major', 'answer removed: ', (form) => void fieldOf(form, 'choice').options.pop()],
  [
    'an answer that is normal no more',
    'major',
    'meaning of the answer',
    (form) => {
      const option = present(fieldOf(form, 'scale').options.at(-1));
      option.normal = !option.normal;
    },
  ],
  ['another scale', 'major', 'scale changed', (form) => void (fieldOf(form, 'scale').scale = 'other')],
  [
    'a range narrowed below',
    'major',
    'smallest number accepted narrowed',
    (form) => void (fieldOf(form, 'quantity').min += 1),
  ],
  [
    'a range narrowed above',
    'major',
    'largest number accepted narrowed',
    (form) => void (fieldOf(form, 'quantity').max -= 1),
  ],
  [
    'another manoeuvre for a blank',
    'major',
    'belongs to another manoeuvre',
    (form) => void (fieldOf(form, 'text').manoeuvre = 'other'),
  ],
  [
    'another code',
    'major',
    'code changed',
    (form) => void (present(fieldsOf(form).find(({ code }) => code !== undefined)).code = '1-8'),
  ],
  ['a caution removed', 'major', 'caution removed: ', (form) => void itemOf(form, 'feel').cautions.pop()],
  ['a red flag removed', 'major', 'red flag removed: ', (form) => void itemOf(form, 'look').redFlags.pop()],
  [
    'a red flag less urgent',
    'major',
    'urgency of the red flag',
    (form) => void (present(itemOf(form, 'look').redFlags[0]).urgency = 'soon'),
  ],
  [
    'consent no more asked',
    'major',
    'consent and chaperone changed',
    (form) => void (itemOf(form, 'count').sensitive = false),
  ],
  [
    'a sign that must not be missed removed',
    'major',
    'sign that must not be missed removed',
    (form) => void form.mustNotMiss.pop(),
  ],
  [
    'another address',
    'major',
    'permanent address changed',
    (form) => void (form.url = 'https://fingerbreadth.example/forms/other'),
  ],
  [
    'a range widened below',
    'minor',
    'smallest number accepted widened',
    (form) => void (fieldOf(form, 'quantity').min -= 1),
  ],
  [
    'a range widened above',
    'minor',
    'largest number accepted widened',
    (form) => void (fieldOf(form, 'quantity').max += 1),
  ],
  [
    'an answer added',
    'minor',
    'answer added: rarely',
    (form) => void fieldOf(form, 'choice').options.push({ code: 'rarely', display: 'rarely', normal: false }),
  ],
  [
    'a blank added',
    'minor',
    'blank added',
    (form) => void itemOf(form, 'feel').fields.push({ ...fieldOf(form, 'text'), linkId: 'new' }),
  ],
  [
    'a manoeuvre added',
    'minor',
    'added',
    (form) => void present(form.sections[0]).items.push({ ...itemOf(form, 'greet'), manoeuvre: 'new' }),
  ],
  ['a caution added', 'minor', 'caution added: Slowly.', (form) => void itemOf(form, 'feel').cautions.push('Slowly.')],
  ['a code given', 'minor', 'code changed', (form) => void (fieldOf(form, 'text').code = '1-8')],
  [
    'consent newly asked',
    'minor',
    'consent and chaperone changed',
    (form) => void (itemOf(form, 'feel').sensitive = true),
  ],
  ['a position changed', 'minor', 'position changed', (form) => void (itemOf(form, 'look').positions = ['standing'])],
  [
    'a manoeuvre moved to another part',
    'minor',
    'moved to another part',
    (form) => void (present(form.sections[0]).linkId = 'elsewhere'),
  ],
  [
    'a caution reworded',
    'patch',
    'caution reworded',
    (form) => void (itemOf(form, 'feel').cautions[1] = 'Never both.'),
  ],
  [
    'a red flag reworded',
    'patch',
    'red flag reworded',
    (form) => void (present(itemOf(form, 'look').redFlags[0]).finding = 'It halts'),
  ],
  [
    'what to do reworded',
    'patch',
    'what to do for the red flag',
    (form) => void (present(itemOf(form, 'look').redFlags[0]).action = 'Shout for help.'),
  ],
  ['a label reworded', 'patch', 'reworded', (form) => void (fieldOf(form, 'text').label = 'Other words')],
  [
    'an answer reworded',
    'patch',
    'answer reworded',
    (form) => void (present(fieldOf(form, 'choice').options[0]).display = 'other words'),
  ],
  [
    'answers in another order',
    'patch',
    'order of the answers changed',
    (form) => void fieldOf(form, 'scale').options.reverse(),
  ],
  [
    'words for normal reworded',
    'patch',
    'words for normal reworded',
    (form) => void (fieldOf(form, 'finding').normal = 'Other words'),
  ],
  ['a title reworded', 'patch', 'title reworded', (form) => void (itemOf(form, 'feel').title = 'Other words')],
  ['the purpose reworded', 'patch', 'purpose reworded', (form) => void (form.purpose = 'Another.')],
  [
    'another order of the examination',
    'patch',
    'order of the examination changed',
    (form) => void form.sections.reverse(),
  ],
];

describe('what changed', () => {
  it.each(rules)('%s is a %s change', (_, size, words, change) => {
    const after = copy();
    change(after);
    const changes = formChanges(fixtureForm(), after);
    expect(sizeOf(changes)).toBe(size);
    expect(
      changes
        .filter((one) => one.size === size)
        .map((one) => one.words)
        .join(),
    ).toContain(words);
  });

  it.each(rules.filter(([, size]) => size === 'major'))('%s is found backwards too', (_, _size, _words, change) => {
    const after = copy();
    change(after);
    expect(formChanges(after, fixtureForm())).not.toEqual([]);
  });

  it('is nothing between a form and itself, nor by version, state, date, publisher, sources or sign-off', () => {
    const after = { ...copy(), version: '9.0.0', status: 'retired' as const, date: '2030-01-01', publisher: 'Other' };
    expect(formChanges(fixtureForm(), { ...after, sources: [] })).toEqual([]);
    expect(changesText([])).toBe('No difference in what the form asks or says.');
  });

  it('is told in words that name the place, with before and after, the largest first', () => {
    const after = copy();
    fieldOf(after, 'quantity').unit = 'mm';
    after.purpose = 'Another.';
    const changes = formChanges(fixtureForm(), after);
    expect(changes.map(({ size }) => size)).toEqual(['major', 'patch']);
    const { label, linkId, unit } = fieldOf(fixtureForm(), 'quantity');
    expect(changeText(present(changes[0]))).toBe(`${label} (${linkId}): unit changed, from “${unit}” to “mm”`);
    expect(changesText(changes)).toMatch(
      /^Major: [^]*\n\nWording or order: [^]*\n {2}The form: purpose reworded, from “/,
    );
  });
});
