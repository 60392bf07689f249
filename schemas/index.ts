import { z } from 'zod';
import { cardSet } from './card-set.ts';
import { clinic } from './clinic.ts';
import { evidence } from './evidence.ts';
import { formDefinition } from './form-definition.ts';
import { form } from './form.ts';
import { guide } from './guide.ts';
import { library } from './library.ts';
import { manoeuvre } from './manoeuvre.ts';
import { plan, planRequest } from './plan.ts';
import { priority } from './priority.ts';
import { protocol } from './protocol.ts';
import { record } from './record.ts';
import { scale } from './scale.ts';
import { source } from './source.ts';
import { value } from './value.ts';
import { examinerPlace, exposure, instrument, landmark, position, system, tool } from './vocabulary.ts';

/** Every noun of the project by the name under which its JSON Schema is served. */
export const schemas: Readonly<Record<string, z.ZodType>> = {
  'card-set': cardSet,
  clinic,
  evidence,
  'examiner-place': examinerPlace,
  exposure,
  form,
  'form-definition': formDefinition,
  guide,
  instrument,
  landmark,
  library,
  manoeuvre,
  position,
  priority,
  protocol,
  record,
  'run-sheet-answer': plan,
  'run-sheet-request': planRequest,
  scale,
  source,
  system,
  tool,
  value,
};

/** JSON Schema (draft 2020-12) of a noun, as it is written: keys with a default may be left out. Throws for an unknown noun. */
export function jsonSchema(noun: string): object {
  const schema = schemas[noun];
  if (schema === undefined) throw new Error(`No noun is called "${noun}". Nouns: ${Object.keys(schemas).join(', ')}.`);
  return { title: noun, ...z.toJSONSchema(schema, { io: 'input', target: 'draft-2020-12' }) };
}
