import type { Form } from '../../schemas/form.ts';
import type { FieldSpec } from '../pdf/form/field-spec.ts';
import { compilePdf } from '../pdf/engine.ts';
import { addFormFields } from '../pdf/form-pass.ts';
import { formFieldSpecs } from './paper/form-fields.ts';
import { type Print, sheetOf } from './paper/sheet.ts';
import { sheetFields } from './paper/sheet-fields.ts';

/** Type that is written in, in points: large print is typed in as it is printed. */
const largeType = 16;

const enlarged = (spec: FieldSpec): FieldSpec => (spec.kind === 'text' ? { ...spec, size: largeType } : spec);

/**
 * The form as tagged, fillable PDF on A4 or US Letter, good for a pen as well; the same form, the same bytes.
 * Each item shows its first caution and what cannot wait; an annex, from the front of a sheet of its own, has every
 * caution and red flag in full, with what to do. In large print they stand in full at the item, and there is no annex.
 * Rejects with TypesettingError when it can't be set (a word wider than its column, a record, or the head of an item, taller than a page),
 * and with FormFieldError when a field's name is malformed or used twice.
 */
export async function formPdf(form: Form, print: Print): Promise<Uint8Array> {
  const fields = [...sheetFields, ...formFieldSpecs(form)];
  const large = print === 'large';
  const blank = compilePdf({ template: large ? 'form-large.typ' : 'form.typ', data: sheetOf(form, print) });
  return addFormFields(blank, large ? fields.map(enlarged) : fields);
}
