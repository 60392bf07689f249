import { describe, expect, test } from 'vitest';
import type { Form } from '../../schemas/form.ts';
import { formDocx } from '../../src/forms/docx/docx.ts';
import { buildForm } from '../../src/forms/form.ts';
import { formPdf } from '../../src/forms/pdf.ts';
import { formText } from '../../src/forms/plain/text.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { byDocx } from '../fixtures/told/by-docx.ts';
import { byCodebook, byQuestionnaire, bySchema } from '../fixtures/told/by-machines.ts';
import { byPdf } from '../fixtures/told/by-pdf.ts';
import { byText } from '../fixtures/told/by-text.ts';
import { expected } from '../fixtures/told/told.ts';
import { fixtureLibrary } from '../fixtures/library.ts';
import { fixtureForm } from '../unit/forms/fixtures.ts';

const library = requireLibrary('content');
const stock = ['adult-screening', 'intake', 'bed-bound'].map((id) => buildForm(library, id));
const forms: Form[] = [...stock, buildForm(fixtureLibrary, 'whole'), fixtureForm()];

/** What one format does not hold is found nowhere else: every comparison is of the whole list, in the form's order. */
describe.each(forms.map((form) => [form.id, form] as const))('every blank of %s stands once, the same', (_, form) => {
  test('in the Questionnaire', () => {
    expect(byQuestionnaire(form)).toEqual(expected(form, ['linkId', 'label', 'side', 'unit', 'range', 'codes']));
  });

  const whole = ['linkId', 'label', 'side', 'unit', 'unitLabel', 'range', 'codes', 'words'] as const;
  test('in the JSON Schema of a filled form', () => expect(bySchema(form)).toEqual(expected(form, whole)));
  test('in the codebook', () => expect(byCodebook(form)).toEqual(expected(form, whole)));

  test('in the PDF', async () => {
    const wanted = expected(form, ['linkId', 'label', 'side', 'unitLabel', 'range', 'codes', 'words']);
    const named = wanted.map(({ linkId, ...told }) => ({ name: linkId.replaceAll('.', '_'), ...told }));
    const byName = (a: { name: string }, b: { name: string }): number => (a.name < b.name ? -1 : 1);
    // Widgets come page by page, the short answers of an item together: the order is that of the paper.
    expect((await byPdf(await formPdf(form, 'a4'))).sort(byName)).toEqual(named.sort(byName));
  });

  test('in the .docx', async () => {
    const wanted = expected(form, ['linkId', 'label', 'side', 'unitLabel', 'range', 'codes', 'shown']);
    const byId = (a: { linkId: string }, b: { linkId: string }): number => (a.linkId < b.linkId ? -1 : 1);
    expect(byDocx(await formDocx(form)).sort(byId)).toEqual(wanted.sort(byId));
  });

  test('in the plain text', () => {
    expect(byText(formText(form))).toEqual(expected(form, ['label', 'unitLabel', 'range', 'shown']));
  });
});
