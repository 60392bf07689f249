import type { Form } from '../../schemas/form.ts';
import { compilePdf } from '../pdf/engine.ts';
import { addFormFields } from '../pdf/form-pass.ts';
import { formFieldSpecs } from './paper/form-fields.ts';
import { type Paper, sheetOf } from './paper/sheet.ts';
import { sheetFields } from './paper/sheet-fields.ts';

/**
 * The form as tagged, fillable PDF on A4 or US Letter, good for a pen as well; the same form, the same bytes.
 * Each item shows its first caution and what cannot wait; an annex, from the front of a sheet of its own, has every
 * caution and red flag in full, with what to do.
 * Rejects with TypesettingError when it can't be set (a word wider than its column, a record, or the head of an item, taller than a page),
 * and with FormFieldError when a field's name is malformed or used twice.
 */
export async function formPdf(form: Form, paper: Paper): Promise<Uint8Array> {
  const blank = compilePdf({ template: 'form.typ', data: sheetOf(form, paper) });
  return addFormFields(blank, [...sheetFields, ...formFieldSpecs(form)]);
}
