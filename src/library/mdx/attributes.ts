import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
import type { Report } from '../content.ts';
import type { At } from '../faults.ts';
import { didYouMean } from '../suggest.ts';
import { placeOf, reportCode } from './parse.ts';

export type Tag = MdxJsxFlowElement | MdxJsxTextElement;

/** The string attributes of a tag, with their places. */
export interface Attributes {
  tag: At;
  /** Value of an attribute; undefined when it is not written. A bare attribute is the empty string. */
  get: (name: string) => string | undefined;
  has: (name: string) => boolean;
  /** Place of an attribute; of the tag where it is not written. */
  at: (name: string) => At;
}

/** Which attributes a tag takes. */
export interface AttributeNames {
  required: readonly string[];
  optional?: readonly string[];
}

/** Reads the attributes of a tag; unknown, repeated, missing, empty and computed ones are filed. */
export function readAttributes(node: Tag, names: AttributeNames, file: string, report: Report): Attributes {
  const read: Reading = { node, names, file, report, values: new Map(), places: new Map() };
  node.attributes.forEach((attribute) => {
    readAttribute(attribute, read);
  });
  const tag = placeOf(node, file);
  for (const name of names.required) reportIfLacking(name, tag, read);
  return {
    tag,
    get: (name) => read.values.get(name),
    has: (name) => read.values.has(name),
    at: (name) => read.places.get(name) ?? tag,
  };
}

interface Reading {
  node: Tag;
  names: AttributeNames;
  file: string;
  report: Report;
  values: Map<string, string>;
  places: Map<string, At>;
}

/** Stands for a computed value, which is filed as code and not again as missing. */
const computed = ' ';

function readAttribute(attribute: Tag['attributes'][number], read: Reading): void {
  const at = placeOf(attribute.position ? attribute : read.node, read.file);
  if (attribute.type !== 'mdxJsxAttribute') return void reportCode(attribute, read.file, read.report);
  const { name, value } = attribute;
  const known = [...read.names.required, ...(read.names.optional ?? [])];
  if (typeof value === 'object' && value !== null) {
    reportCode(attribute, read.file, read.report);
    read.values.set(name, computed);
  } else if (!known.includes(name)) {
    const message = `"${name}" is not an attribute of <${String(read.node.name)}>.${didYouMean(name, known)} Attributes: ${known.join(', ')}.`;
    read.report(at, 'unknown-attribute', message);
  } else {
    if (read.values.has(name)) read.report(at, 'unknown-attribute', `"${name}" is written twice. Keep one.`);
    read.values.set(name, value ?? '');
    read.places.set(name, at);
  }
}

function reportIfLacking(name: string, tag: At, { node, values, places, report }: Reading): void {
  const value = values.get(name);
  const shown = String(node.name);
  if (value === undefined) report(tag, 'missing-attribute', `<${shown}> has no "${name}". Write ${name}="…".`);
  else if (value !== computed && value.trim() === '') {
    report(places.get(name) ?? tag, 'missing-attribute', `"${name}" of <${shown}> is empty. Write its value.`);
  }
}

/** Whether a node is a tag. */
export function isTag(node: { type: string }): node is Tag {
  return node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement';
}
