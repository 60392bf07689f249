import type { FieldSpec } from '../../pdf/form/field-spec.ts';
import type { FormField } from '../../../schemas/form.ts';
import { type Answer, answersOf } from '../answers.ts';
import { normalWords } from '../normal-words.ts';
import { acceptedRange } from '../records.ts';
import { wrapped, wrappedPieces } from './wrap.ts';

/** A box to put a cross in. */
const box = '[\u00a0]\u00a0';

/** Answers up to this length share a line with others. */
const longestShared = 40;

/** A box before each answer: several in a line, or one a line where they are long. */
const boxes = (words: readonly string[]): string[] =>
  words.some(({ length }) => length > longestShared)
    ? words.flatMap((each) => wrapped(box + each, '  ', 6))
    : wrappedPieces(
        words.map((each) => box + each),
        '  ',
        { first: '  ' },
      );

/** A grade's meaning stands above its item, so that its code is enough. */
const optionWords = ({ field }: Answer, { code, label }: { code: string; label: string }): string =>
  field.kind === 'scale' ? code : label;

/** What a blank is called below the label of its field. */
const partCaptions: { [part: string]: string } = {
  detail: 'Detail, if abnormal:',
  'reason not examined': 'Reason, if not examined (one of these):',
};

function lines(answer: Answer): string[] {
  const { part } = answer;
  const caption = part === undefined ? [] : [`  ${partCaptions[part] ?? part}`];
  switch (answer.type) {
    case 'coded':
      return [...caption, ...boxes(answer.options.map((option) => optionWords(answer, option)))];
    case 'number':
      return [...caption, ...wrapped(`Number in ${answer.unitLabel}, from ${acceptedRange(answer)}:`, '  ')];
    case 'text':
      return caption.length > 0 ? caption : ['  In words:'];
  }
}

/** A field: its label with its side, what is normal, then its blanks, each ending where the answer goes. */
export function fieldLines(field: FormField): string[] {
  const normal = normalWords(field);
  return [
    ...wrapped(field.label, '', 2),
    ...(normal === undefined ? [] : wrapped(`Normal: ${normal}`, '  ')),
    ...answersOf(field).flatMap(lines),
  ];
}

/** A blank of the sheet itself, no part of the form's data. */
export function sheetFieldLines(spec: FieldSpec): string[] {
  if (spec.kind === 'text') return wrapped(`${spec.tooltip}:`, '', 2);
  if (spec.kind === 'tick') return wrapped(box + spec.tooltip, '', 4);
  return [...wrapped(spec.tooltip, '', 2), ...boxes(spec.options.map(({ display }) => display))];
}
