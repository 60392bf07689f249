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
  get(name: string): string | undefined;
  has(name: string): boolean;
  /** Place of an attribute; of the tag where it is not written. */
  at(name: string): At;
}

/** Which attributes a tag takes. */
export interface AttributeNames {
  required: readonly string[];
  optional?: readonly string[];
}

/** Reads the attributes of a tag; unknown, repeated, missing, empty and computed ones are filed. */
export function readAttributes(node: Tag, names: AttributeNames, file: string, report: Report): Attributes {
  const tag = placeOf(node, file);
  const known = [...names.required, ...(names.optional ?? [])];
  const values = new Map<string, string>();
  const places = new Map<string, At>();
  for (const attribute of node.attributes) {
    if (attribute.type !== 'mdxJsxAttribute' || (typeof attribute.value === 'object' && attribute.value !== null)) {
      reportCode(attribute.position ? attribute : node, file, report);
      if (attribute.type === 'mdxJsxAttribute') values.set(attribute.name, ' ');
      continue;
    }
    const at = attribute.position ? placeOf(attribute, file) : tag;
    if (!known.includes(attribute.name)) {
      report(
        at,
        'unknown-attribute',
        `"${attribute.name}" is not an attribute of <${String(node.name)}>.${didYouMean(attribute.name, known)} Attributes: ${known.join(', ')}.`,
      );
      continue;
    }
    if (values.has(attribute.name)) report(at, 'unknown-attribute', `"${attribute.name}" is written twice. Keep one.`);
    values.set(attribute.name, attribute.value ?? '');
    places.set(attribute.name, at);
  }
  for (const name of names.required) {
    if (!values.has(name))
      report(tag, 'missing-attribute', `<${String(node.name)}> has no "${name}". Write ${name}="…".`);
    else if (values.get(name)?.trim() === '') {
      if (values.get(name) === '')
        report(
          places.get(name) ?? tag,
          'missing-attribute',
          `"${name}" of <${String(node.name)}> is empty. Write its value.`,
        );
    }
  }
  return {
    tag,
    get: (name) => values.get(name),
    has: (name) => values.has(name),
    at: (name) => places.get(name) ?? tag,
  };
}

/** Whether a node is a tag. */
export function isTag(node: { type: string }): node is Tag {
  return node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement';
}
