import { z } from 'zod';
import type { At } from './faults.ts';
import { didYouMean } from './suggest.ts';
import type { Report } from './content.ts';

type Issue = z.core.$ZodIssue;

/** Files one fault for each thing a zod schema found, in the words of the project. */
export function reportIssues(
  issues: readonly Issue[],
  schema: z.ZodType,
  value: unknown,
  at: (path: readonly PropertyKey[]) => At,
  report: Report,
): void {
  for (const issue of issues) {
    if (issue.code === 'unrecognized_keys') reportKeys(issue, schema, value, at, report);
    else report(at(issue.path), 'schema', sentence(issue, value));
  }
}

function reportKeys(
  issue: z.core.$ZodIssueUnrecognizedKeys,
  schema: z.ZodType,
  value: unknown,
  at: (path: readonly PropertyKey[]) => At,
  report: Report,
): void {
  const known = knownKeys(schema, issue.path, value);
  for (const key of issue.keys) {
    const message = `"${key}" is not a known key.${didYouMean(key, known)} Known keys: ${known.join(', ')}.`;
    report(at([...issue.path, key]), 'unknown-key', message);
  }
}

function sentence(issue: Issue, value: unknown): string {
  const name = issue.path.length > 0 ? `"${issue.path.map(String).join('.')}"` : 'This entry';
  const found = valueAt(value, issue.path);
  switch (issue.code) {
    case 'invalid_type':
      return found === undefined
        ? `${name} is missing. Expected ${typeName(issue.expected)}.`
        : `${name} is ${show(found)}; expected ${typeName(issue.expected)}.`;
    case 'invalid_value':
      return choice(name, found, issue.values.map(String));
    case 'invalid_union':
      return union(name, found, issue);
    case 'invalid_format':
      return issue.format === 'date'
        ? `${name} is ${show(found)}; expected a day written YYYY-MM-DD.`
        : `${name} ${said(issue.message)} (found ${show(found)}).`;
    case 'too_small':
    case 'too_big':
      return `${name} ${outOfBounds(issue, found)}`;
    default:
      return `${name} ${said(issue.message)}.`;
  }
}

/** A number or a list outside its bounds; a text has a message of its own ("is empty"). */
function outOfBounds(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig, found: unknown): string {
  const [from, past, bound] =
    issue.code === 'too_small' ? ['at least', 'above', issue.minimum] : ['at most', 'below', issue.maximum];
  if (Array.isArray(found)) return `holds ${found.length}; expected ${from} ${bound}.`;
  if (typeof found !== 'number') return `${said(issue.message)}.`;
  return `is ${found}; expected a number ${issue.inclusive === false ? past : from} ${bound}.`;
}

/** The schemas' own messages go on from the name ("is empty"); zod's stand alone. */
function said(message: string): string {
  return /^(is|has|holds|lies|names) /.test(message) ? message : `cannot be used: ${message}`;
}

function choice(name: string, found: unknown, values: string[]): string {
  if (found === undefined) return `${name} is missing. Expected one of ${values.join(', ')}.`;
  const hint = typeof found === 'string' ? didYouMean(found, values) : '';
  return `${name} is ${show(found)}.${hint} Expected one of ${values.join(', ')}.`;
}

function union(name: string, found: unknown, issue: z.core.$ZodIssueInvalidUnion): string {
  const options = (issue as { options?: unknown[] }).options;
  if (issue.discriminator !== undefined && options) return choice(name, found, options.map(String));
  return `${name} is ${show(found)}, which is none of the forms allowed here.`;
}

function typeName(expected: string): string {
  return (
    (
      {
        string: 'text',
        int: 'a whole number',
        number: 'a number',
        array: 'a list',
        object: 'a group of keys',
        record: 'a group of keys',
        boolean: 'true or false',
      } as Record<string, string>
    )[expected] ?? expected
  );
}

function show(found: unknown): string {
  if (typeof found === 'string') return `"${found}"`;
  if (Array.isArray(found)) return 'a list';
  return typeof found === 'object' && found !== null ? 'a group of keys' : String(found);
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((part, key) => (part as Record<PropertyKey, unknown> | null | undefined)?.[key], value);
}

function knownKeys(schema: z.ZodType, path: readonly PropertyKey[], value: unknown): string[] {
  const object = schemaAt(schema, path, value);
  return object instanceof z.ZodObject ? Object.keys(object.shape) : [];
}

function schemaAt(schema: z.ZodType, path: readonly PropertyKey[], value: unknown): z.ZodType | undefined {
  const bare = unwrap(schema, value);
  const [key, ...rest] = path;
  if (key === undefined || bare === undefined) return bare;
  const next = (value as Record<PropertyKey, unknown> | undefined)?.[key];
  if (bare instanceof z.ZodObject) return schemaAt(bare.shape[String(key)] as z.ZodType, rest, next);
  if (bare instanceof z.ZodArray) return schemaAt(bare.element as z.ZodType, rest, next);
  return undefined;
}

function unwrap(schema: z.ZodType | undefined, value: unknown): z.ZodType | undefined {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault)
    return unwrap(schema.unwrap() as z.ZodType, value);
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return schema;
  const kind = (value as Record<string, unknown> | undefined)?.[schema.def.discriminator];
  const options = schema.options as z.ZodObject[];
  return options.find((option) => (option.shape[schema.def.discriminator] as z.ZodLiteral).value === kind);
}
