import type { FieldSpec } from './form/field-spec.ts';
import { typingFont } from './form/read-typing-font.ts';
import { withFields } from './form/with-fields.ts';

/**
 * Turns each tagged link to `field:…` of a PDF into the widget of a form field: the same input, the same bytes.
 * Every field of `specs` must be drawn once, each answer of a radio group too.
 * Rejects with FormFieldError, which lists every fault, when a name is malformed, doubled, unknown or not drawn.
 */
export async function addFormFields(pdf: Uint8Array, specs: readonly FieldSpec[]): Promise<Uint8Array> {
  return withFields(pdf, specs, { font: await typingFont() });
}
