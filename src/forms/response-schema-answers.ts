import { type Answer, type Condition } from './answers.ts';
import { normalWords } from './normal-words.ts';
import type { JsonSchema } from './response-schema.ts';

/** Schema of one answer; title is its label, description its normal. */
export function answerSchema(answer: Answer): JsonSchema {
  return { title: answer.label, ...description(answer), ...typeSchema(answer) };
}

/** What an answer demands of the form that holds it: the answer that opens it. */
export function conditionSchema({ linkId, option }: Condition): JsonSchema {
  return { required: [linkId], properties: { [linkId]: { const: option.code } } };
}

function description({ part, field }: Answer): JsonSchema {
  const normal = part === undefined ? normalWords(field) : undefined;
  return normal === undefined ? {} : { description: `Normal: ${normal}` };
}

function typeSchema(answer: Answer): JsonSchema {
  switch (answer.type) {
    case 'coded':
      return { oneOf: answer.options.map(({ code, label }) => ({ const: code, title: label })) };
    case 'number':
      return quantitySchema(answer);
    case 'text':
      return { type: 'string', pattern: '\\S' };
  }
}

function quantitySchema({ unit, unitLabel, min, max }: Extract<Answer, { type: 'number' }>): JsonSchema {
  return {
    type: 'object',
    additionalProperties: false,
    required: ['value', 'unit'],
    properties: {
      value: { type: 'number', minimum: min, maximum: max },
      unit: { const: unit, title: unitLabel },
    },
  };
}
