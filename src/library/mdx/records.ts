import { record as recordSchema, type Record as FormRecord } from '../../../schemas/record.ts';
import type { At } from '../faults.ts';
import { reportIssues } from '../schema-faults.ts';
import { didYouMean } from '../suggest.ts';
import { readAttributes, type Attributes, type Tag } from './attributes.ts';
import { readAttributeLine, type InlineReader } from './inline.ts';

const kinds = ['finding', 'scale', 'choice', 'quantity', 'text'] as const;
type Kind = (typeof kinds)[number];

const common = ['sides', 'code', 'codeDisplay'];
const attributesOf: { [K in Kind]: { required: string[]; optional: string[] } } = {
  finding: { required: ['normal'], optional: [] },
  scale: { required: ['scale'], optional: [] },
  choice: { required: ['options'], optional: ['normal'] },
  quantity: { required: ['unit', 'min', 'max'], optional: ['value'] },
  text: { required: [], optional: [] },
};

/** A record with the places of its attributes. */
export interface ReadRecord {
  value: FormRecord;
  at: (name: string) => At;
}

/** Reads a `<Record>`; undefined when it does not fit, with the reasons filed. */
export function readRecord(node: Tag, reader: InlineReader): ReadRecord | undefined {
  const kind = kindOf(node, reader);
  if (kind === undefined) return undefined;
  const { required, optional } = attributesOf[kind];
  const names = { required: ['id', 'label', 'kind', ...required], optional: [...common, ...optional] };
  const attributes = readAttributes(node, names, reader.file, reader.report);
  if (names.required.some((name) => (attributes.get(name) ?? '').trim() === '')) return undefined;
  const raw = rawRecord(kind, attributes, reader);
  const result = recordSchema.safeParse(raw);
  if (result.success) return { value: result.data, at: attributes.at };
  reportIssues(result.error.issues, recordSchema, raw, ([name]) => attributes.at(String(name)), reader.report);
  return undefined;
}

function kindOf(node: Tag, reader: InlineReader): Kind | undefined {
  const attribute = node.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === 'kind');
  const written = typeof attribute?.value === 'string' ? attribute.value : undefined;
  const kind = kinds.find((known) => known === written);
  if (kind !== undefined) return kind;
  const all = {
    required: ['id', 'label', 'kind'],
    optional: [...common, 'normal', 'scale', 'options', 'unit', 'min', 'max', 'value'],
  };
  const attributes = readAttributes(node, all, reader.file, reader.report);
  if (written !== undefined && written !== '') {
    reader.report(
      attributes.at('kind'),
      'schema',
      `kind "${written}" is not known.${didYouMean(written, kinds)} Kinds of record: ${kinds.join(', ')}.`,
    );
  }
  return undefined;
}

function rawRecord(kind: Kind, attributes: Attributes, reader: InlineReader): Record<string, unknown> {
  const raw: Record<string, unknown> = { kind };
  for (const name of ['id', 'label', 'scale', 'unit', 'value', ...common]) {
    if (attributes.has(name)) raw[name] = attributes.get(name);
  }
  for (const name of ['min', 'max']) if (attributes.has(name)) raw[name] = toNumber(attributes.get(name) ?? '');
  if (attributes.has('options')) raw['options'] = listOf(attributes.get('options'), ';');
  if (attributes.has('normal')) {
    const normal = attributes.get('normal') ?? '';
    raw['normal'] = kind === 'finding' ? readAttributeLine(normal, attributes.at('normal'), reader) : normal;
  }
  return raw;
}

/** The parts of an attribute that is a list, trimmed, empty ones dropped. */
export function listOf(text: string | undefined, separator: string | RegExp): string[] {
  return (text ?? '')
    .split(separator)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/** A number where the text is one; else the text, for the schema to refuse. */
export function toNumber(text: string): number | string {
  return /^-?\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : text;
}
