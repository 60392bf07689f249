import type { FormField } from '../../schemas/form.ts';
import { type Answer, answersOf } from './answers.ts';

/** Answers by linkId: the code that was chosen, else what was typed. What was left blank is not in it. */
export type Filled = ReadonlyMap<string, string>;

/** One blank with what was put into it. */
export interface Given {
  answer: Answer;
  /** Never empty. */
  given: string;
}

/** The answers of a field that count: none that is blank, none that its condition does not open. */
export function givenOf(field: FormField, filled: Filled): Given[] {
  return answersOf(field).flatMap((answer) => {
    const given = filled.get(answer.linkId)?.trim() ?? '';
    return given !== '' && isOpen(answer, filled) ? [{ answer, given }] : [];
  });
}

/** Whether the answer that a blank depends on was given. */
export function isOpen({ when }: Answer, filled: Filled): boolean {
  return when === undefined || filled.get(when.linkId) === when.option.code;
}

/** What the form calls the chosen code. Throws RangeError for a code that it does not offer. */
export function chosenOption(
  { linkId, options }: Extract<Answer, { type: 'coded' }>,
  code: string,
): (typeof options)[number] {
  const option = options.find((each) => each.code === code);
  if (option === undefined) throw new RangeError(`"${linkId}" does not offer the answer "${code}"`);
  return option;
}
