import type { FormField } from '../../schemas/form.ts';
import type { Library } from '../../schemas/library.ts';
import type { Record } from '../../schemas/record.ts';
import { fieldOfKind, type FieldHead } from './field-kinds.ts';

/** A field's suffix of the linkId, its side, and what its label says of it. */
interface Place {
  suffix: '' | '.right' | '.left';
  side: FieldHead['side'];
  words: '' | ', right' | ', left';
}

const right: Place = { suffix: '.right', side: 'right', words: ', right' };
const left: Place = { suffix: '.left', side: 'left', words: ', left' };
const whole: Place = { suffix: '', side: 'none', words: '' };

/** Where the fields of a record stand; the right before the left. */
const placesBySides: { [S in Record['sides']]: Place[] } = {
  none: [whole],
  either: [whole],
  both: [right, left],
  right: [right],
  left: [left],
};

/** The fields that a record asks for: one, one for each side, or the side that was used and one. */
export function formFields(library: Library, manoeuvre: string, record: Record): FormField[] {
  const fields = placesBySides[record.sides].map((place) =>
    fieldOfKind(library, record, head(manoeuvre, record, place)),
  );
  return record.sides === 'either' ? [sideField(manoeuvre, record), ...fields] : fields;
}

function head(manoeuvre: string, record: Record, { suffix, side, words }: Place): FieldHead {
  return {
    linkId: `${record.id}${suffix}`,
    label: `${record.label}${words}`,
    base: record.label,
    side,
    record: record.id,
    manoeuvre,
    ...(record.code === undefined ? {} : { code: record.code }),
    ...(record.codeDisplay === undefined ? {} : { codeDisplay: record.codeDisplay }),
  };
}

function sideField(manoeuvre: string, { id, label }: Record): FormField {
  const options = ['Right', 'Left'].map((display) => ({ code: display.toLowerCase(), display, normal: false }));
  const words = `${label}: side used`;
  return {
    kind: 'choice',
    linkId: `${id}.side`,
    label: words,
    base: words,
    side: 'none',
    record: id,
    manoeuvre,
    options,
  };
}
