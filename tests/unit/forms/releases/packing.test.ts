import { describe, expect, it } from 'vitest';
import type { Form, FormField } from '../../../../schemas/form.ts';
import { packForm, unpackForm } from '../../../../src/forms/releases/packing.ts';
import { readRelease, releaseText, sealed } from '../../../../src/forms/releases/release-file.ts';
import { fixtureForm } from '../fixtures.ts';

const form = fixtureForm();

/** The form with one field changed. */
function withField(linkId: string, change: Partial<FormField>): Form {
  const sections = form.sections.map((section) => ({
    ...section,
    items: section.items.map((item) => ({
      ...item,
      fields: item.fields.map((field) => (field.linkId === linkId ? ({ ...field, ...change } as FormField) : field)),
    })),
  }));
  return { ...form, sections };
}

const some = form.sections.flatMap(({ items }) => items.flatMap(({ fields }) => fields));
const right = some.find(({ side }) => side === 'right')?.linkId ?? '';

describe('a packed form', () => {
  it('unpacks to the very same form, and is less than half as long in its fields', () => {
    expect(unpackForm(packForm(form))).toEqual(form);
    const length = (value: unknown): number => JSON.stringify(value).length;
    expect(length(packForm(form).sections.map(({ items }) => items))).toBeLessThan(
      0.5 * length(form.sections.map(({ items }) => items)),
    );
  });

  it.each([
    ['a label that is not the usual one', { label: 'Another label' }],
    ['a linkId that is not the usual one', { linkId: 'unusual.link' }],
    ['another manoeuvre', { manoeuvre: 'another' }],
    ['a side of its own words', { base: 'Only here' }],
    ['a code', { code: '8867-4', codeDisplay: 'Heart rate' }],
    ['a source', { source: 'A book' }],
  ])('keeps %s', (_, change) => {
    const changed = withField(right, change);
    expect(changed).not.toEqual(form);
    expect(unpackForm(packForm(changed))).toEqual(changed);
  });

  it('is read back from a release’s file as it was sealed', () => {
    const signOff = { author: 'A', reviewer: 'B', approver: 'C', approved: '2026-01-01', reviewDue: '2027-01-01' };
    const release = sealed({ ...form, status: 'active', signOff });
    const name = `${form.id}@${form.version}.json`;
    expect(readRelease(`x/${name}`, name, releaseText(release))).toEqual({ release, faults: [] });
  });
});
