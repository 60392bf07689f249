import type { Form } from '../../schemas/form.ts';
import { answersOfForm } from './answers.ts';
import { answerSchema, conditionSchema } from './response-schema-answers.ts';

/** A JSON Schema as plain data. */
export interface JsonSchema {
  [keyword: string]: unknown;
}

/**
 * JSON Schema (draft 2020-12) of a filled form: which form it is, and a flat object of answers keyed by linkId.
 *
 * A finding is `"N"`, `"A"` or `"not-performed"`; a grade or choice is its code; a number is `{ "value": 3, "unit": "cm" }`;
 * words are a string. What was not filled in is left out. Nothing unknown is accepted, a detail needs "A", and a reason
 * needs "not-performed": the same codes and conditions as the Questionnaire's.
 */
export function responseSchema(form: Form): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    ...identifier(form),
    $comment: form.copyright,
    title: `${form.title}: a filled form`,
    description: `${form.purpose} A filled form is a health record: who was examined, by whom and when is kept by the record system that holds it.`,
    type: 'object',
    additionalProperties: false,
    required: ['form', 'version', 'hash', 'answers'],
    properties: { ...identitySchemas(form), answers: answersSchema(form) },
  };
}

/** A UUID names the form alone, and nothing can stand below it: such a schema has no name of its own. */
function identifier({ url, version }: Form): JsonSchema {
  return url.startsWith('https:') ? { $id: `${url}/${version}/filled-form` } : {};
}

function identitySchemas({ url, version, hash }: Form): JsonSchema {
  return {
    form: { const: url, title: 'Permanent address of the form' },
    version: { const: version, title: 'Version of the form' },
    hash: { const: hash, title: "SHA-256 of the form's content" },
  };
}

function answersSchema(form: Form): JsonSchema {
  const answers = answersOfForm(form).map(({ answer }) => answer);
  return {
    type: 'object',
    additionalProperties: false,
    properties: Object.fromEntries(answers.map((answer) => [answer.linkId, answerSchema(answer)])),
    dependentSchemas: Object.fromEntries(
      answers.flatMap(({ linkId, when }) => (when === undefined ? [] : [[linkId, conditionSchema(when)]])),
    ),
  };
}
