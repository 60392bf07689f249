import { didYouMean } from '../../library/suggest.ts';

/** One thing wrong in a filled form. */
export interface ResponseFault {
  /** Keys and indexes from the resource down. */
  path: readonly (string | number)[];
  /** What was found, what is expected, what to do. */
  message: string;
}

/** A path as FHIR writes it: `QuestionnaireResponse.item[2].answer[0].valueDecimal`. */
export function pathText(path: ResponseFault['path']): string {
  return path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[${part}]` : `${text}.${part}`),
    'QuestionnaireResponse',
  );
}

/** Whether a value is a group of keys. */
export function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What was found, for a message: words in quotation marks, or what kind of thing it is. */
export function found(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  return isGroup(value) ? 'a group of keys' : JSON.stringify(value);
}

/** Keys that FHIR does not have here: a misspelt one would lose what it holds. */
export function unknownKeys(
  group: Record<string, unknown>,
  known: readonly string[],
  path: ResponseFault['path'],
): ResponseFault[] {
  return Object.keys(group)
    .filter((key) => !known.includes(key.replace(/^_/, '')))
    .map((key) => ({
      path: [...path, key],
      message: `"${key}" is not a key of FHIR here.${didYouMean(key, known)} Rename or delete it.`,
    }));
}
