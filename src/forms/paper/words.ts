import type { Form } from '../../../schemas/form.ts';
import { reasonOptions } from '../answer-options.ts';

/** Above all else on every form. */
export const unwellFirst = 'Unwell? Stop and treat first by local protocol.';

/** How a form is filled in, in sentences. */
export const fillingIn: readonly string[] = [
  `One box for each finding. Write what is abnormal, or why it was not examined (${reasonOptions.map(({ label }) => label.toLowerCase()).join(', ')}), beside it.`,
  'The patient’s right always comes before the left.',
  'An answer left empty says nothing: it is not a normal finding.',
];

/** Where the rest of the cautions stands. */
export const safetyHere =
  'An item shows its first caution and what cannot wait. All cautions, all red flags and what to do stand in the annex under the item’s number: read it before you start.';

/** What identifies a form wherever a copy of it turns up, and who owns what, in sentences. */
export const rightsWords = ({ url, version, hash, publisher, copyright }: Form): string[] => [
  `Permanent name of the form: ${url}, version ${version}.`,
  `SHA-256 of its content: ${hash}.`,
  `${publisher}. ${copyright}`,
];
