import type { Form } from '../../schemas/form.ts';
import { compilePdf } from '../pdf/engine.ts';
import { addFormFields } from '../pdf/form-pass.ts';
import { observationOf } from './observation.ts';
import { observationFields } from './observation-fields.ts';
import { observationSheet } from './observation-sheet.ts';
import type { Paper } from './paper/sheet.ts';

/**
 * The observation sheets of a form as tagged, fillable PDF on A4 or US Letter, good for a pen as well; the same form, the
 * same bytes. Each sheet begins on a page of its own and has a judgement of its own.
 * Rejects with TypesettingError when it can't be set, and with FormFieldError when a field is drawn wrongly.
 */
export async function observationPdf(form: Form, paper: Paper): Promise<Uint8Array> {
  const blank = compilePdf({ template: 'watch.typ', data: observationSheet(form, paper) });
  return addFormFields(blank, observationFields(observationOf(form)));
}
