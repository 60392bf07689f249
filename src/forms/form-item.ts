import type { FormItem } from '../../schemas/form.ts';
import type { Line } from '../../schemas/inline.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import { plainText } from '../text/plain.ts';
import { formFields } from './form-fields.ts';

/** A manoeuvre as an item of a form, in plain text; `positions` are those of its stages, as planned. */
export function formItem(library: Library, manoeuvre: Manoeuvre, positions: string[]): FormItem {
  const plain = (line: Line): string => plainText(line, library);
  return {
    manoeuvre: manoeuvre.id,
    title: manoeuvre.title,
    sides: manoeuvre.sides,
    sensitive: manoeuvre.sensitive,
    positions,
    cautions: manoeuvre.cautions.map(plain),
    redFlags: manoeuvre.redFlags.map(({ urgency, finding, action }) => ({
      urgency,
      finding: plain(finding),
      action: plain(action),
    })),
    fields: manoeuvre.records.flatMap((record) => formFields(library, manoeuvre.id, record)),
  };
}
