import { stringify } from 'yaml';
import { z } from 'zod';
import { formDefinition, type FormDefinition } from '../../schemas/form-definition.ts';

const head = `# A form made in a browser. Put it into content/forms/ of the library under this name, then run: npm run check
# Its url is its permanent name: never changed once released.
`;

/**
 * The definition as a file of `content/forms/`, held against its schema first.
 * Throws RangeError with what the schema says of it.
 */
export function definitionYaml(definition: FormDefinition): string {
  // The compiled checks of the schema library need eval, which a strict policy refuses.
  z.config({ jitless: true });
  const read = formDefinition.safeParse(definition);
  if (!read.success) throw new RangeError(read.error.issues.map(issueWords).join(' '));
  const { mustNotMiss, ...rest } = read.data;
  return head + stringify({ ...rest, ...(mustNotMiss.length > 0 && { mustNotMiss }) }, { lineWidth: 118 });
}

const issueWords = ({ path, message }: z.core.$ZodIssue): string => `“${path.join('.')}” ${message}.`;
