import { z } from 'zod';
import { type Answer, answersOf } from './answers.ts';
import { type Filled, isOpen } from './filled.ts';
import { fieldsOf, type FormSlice } from './form-slice.ts';

const value = z.looseObject({
  valueCoding: z.looseObject({ system: z.string().optional(), code: z.string() }).optional(),
  valueDecimal: z.number().optional(),
  valueInteger: z.number().optional(),
  valueString: z.string().optional(),
});
type Value = z.infer<typeof value>;

const item = z.looseObject({
  linkId: z.string(),
  answer: z.array(value).optional(),
  get item() {
    return z.array(item).optional();
  },
});
type Item = z.infer<typeof item>;

const response = z.looseObject({
  resourceType: z.literal('QuestionnaireResponse'),
  questionnaire: z.string(),
  item: z.array(item).default([]),
});

/** Answers that were read, and all that hinders reading them, one sentence each. */
export interface ReadResponse {
  filled: Filled;
  faults: string[];
}

/**
 * Reads the answers of a FHIR R4 QuestionnaireResponse to this form. What can't be read is a fault, never left out in
 * silence: another form or version, an unknown linkId, a wrong type, a code that is not offered, an answer whose
 * condition is not met, a second answer. A number out of range is read.
 */
export function readResponse(form: FormSlice, json: unknown): ReadResponse {
  const parsed = response.safeParse(json);
  if (!parsed.success) return { filled: new Map(), faults: parsed.error.issues.map(issueWords) };
  const { questionnaire, item: items } = parsed.data;
  const answers = new Map(
    fieldsOf(form)
      .flatMap(answersOf)
      .map((answer) => [answer.linkId, answer]),
  );
  const filled = new Map<string, string>();
  const faults = answeredItems(items).flatMap((one) => readItem(one, answers, filled));
  const closed = [...filled.keys()].flatMap((linkId) => closedFault(answers.get(linkId), filled));
  return { filled, faults: [...identityFaults(form, questionnaire), ...faults, ...closed] };
}

function issueWords({ path, message }: z.core.$ZodIssue): string {
  return `${path.length === 0 ? 'the file' : path.join('.')}: ${message}`;
}

function identityFaults({ url, version }: FormSlice, questionnaire: string): string[] {
  const expected = `${url}|${version}`;
  if (questionnaire === expected) return [];
  return [`questionnaire: found "${questionnaire}", expected "${expected}"`];
}

function answeredItems(items: readonly Item[]): Item[] {
  return items.flatMap((one) => [...(one.answer?.length ? [one] : []), ...answeredItems(one.item ?? [])]);
}

function readItem(
  { linkId, answer: values = [] }: Item,
  answers: ReadonlyMap<string, Answer>,
  filled: Map<string, string>,
): string[] {
  const answer = answers.get(linkId);
  const [first, second] = values;
  if (answer === undefined) return [`${linkId}: the form has no blank of this name`];
  if (first === undefined) return [];
  if (second !== undefined || filled.has(linkId)) return [`${linkId}: answered more than once`];
  const given = typed(answer, first);
  if (given === undefined) return [`${linkId}: ${expectedWords(answer)}`];
  filled.set(linkId, given);
  return [];
}

/** The answer as it would have been chosen or typed; undefined when it is of another type or not offered. */
function typed(answer: Answer, { valueCoding, valueDecimal, valueInteger, valueString }: Value): string | undefined {
  if (answer.type === 'text') return valueString?.trim() === '' ? undefined : valueString;
  if (answer.type === 'number') return (valueDecimal ?? valueInteger)?.toString();
  const option = answer.options.find(({ system, code }) => system === valueCoding?.system && code === valueCoding.code);
  return option?.code;
}

function expectedWords(answer: Answer): string {
  if (answer.type === 'text') return 'expected words in valueString';
  if (answer.type === 'number') return 'expected a number in valueDecimal';
  return `expected in valueCoding one of ${answer.options.map(({ system, code }) => `${system}|${code}`).join(', ')}`;
}

function closedFault(answer: Answer | undefined, filled: Filled): string[] {
  if (answer?.when === undefined || isOpen(answer, filled)) return [];
  const { linkId, option } = answer.when;
  return [`${answer.linkId}: answered although "${linkId}" is not "${option.code}"`];
}
