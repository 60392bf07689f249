import type { FormField } from '../../schemas/form.ts';
import { quantityText, rangeText } from '../text/numbers.ts';
import { midSentence } from '../text/words.ts';
import { abnormalOption, normalOption, notExaminedOption } from './answer-options.ts';
import { enteredNumber } from './entered-number.ts';
import { chosenOption, type Filled, type Given, givenOf } from './filled.ts';

type Of<K extends FormField['kind']> = Extract<FormField, { kind: K }>;

/** What was found, in words; undefined when the field was left blank or was marked as not examined. */
export function foundWords(field: FormField, filled: Filled): string | undefined {
  const [own, more] = givenOf(field, filled);
  if (own === undefined) return undefined;
  if (field.kind === 'finding') return findingWords(field, own.given, more);
  if (field.kind === 'quantity') return numberWords(field, own.given);
  return own.answer.type === 'coded' ? chosenOption(own.answer, own.given).label : oneLine(own.given);
}

/** The field and the reason, when it was marked as not examined; undefined otherwise. */
export function notExaminedWords(field: FormField, filled: Filled): string | undefined {
  if (field.kind !== 'finding') return undefined;
  const [own, reason] = givenOf(field, filled);
  if (own?.given !== notExaminedOption.code) return undefined;
  if (reason?.answer.type !== 'coded') return `${field.label} (no reason given)`;
  return `${field.label} (${midSentence(chosenOption(reason.answer, reason.given).label)})`;
}

function findingWords({ normal }: Of<'finding'>, code: string, detail: Given | undefined): string | undefined {
  if (code === normalOption.code) return `normal (${midSentence(normal)})`;
  if (code !== abnormalOption.code) return undefined;
  return detail === undefined ? 'ABNORMAL, no detail given' : `ABNORMAL: ${oneLine(detail.given)}`;
}

function numberWords({ unit, min, max, normal }: Of<'quantity'>, typed: string): string {
  const number = enteredNumber(typed);
  if (number === undefined) return `“${oneLine(typed)}” (not a number that can be read)`;
  const notes = [
    ...(number < min || number > max ? [`outside ${rangeText(min, max, unit)}, what the form accepts: check`] : []),
    ...(normal === undefined ? [] : [`normal: ${normal}`]),
  ];
  return `${quantityText(number, unit)}${notes.length === 0 ? '' : ` (${notes.join('; ')})`}`;
}

const oneLine = (words: string): string => words.replace(/\s+/g, ' ').trim();
