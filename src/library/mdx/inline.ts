import type { Link, PhrasingContent, Text } from 'mdast';
import type { Inline, Line, Target } from '../../../schemas/inline.ts';
import type { Reference, Report } from '../content.ts';
import type { At } from '../faults.ts';
import { didYouMean } from '../suggest.ts';
import { isTag, readAttributes, type Tag } from './attributes.ts';
import { isCode, placeOf, reportCode } from './parse.ts';
import { curlyQuotes } from './quotes.ts';

/** What turns tree nodes into lines, and keeps what it meets on the way. */
export interface InlineReader {
  file: string;
  report: Report;
  references: Reference[];
}

const referenceTags = { Value: 'value', Scale: 'scale', Evidence: 'evidence', Measure: 'measure' } as const;
const knownTags = [...Object.keys(referenceTags), 'Manoeuvre', 'Record', 'RedFlag', 'NoRedFlag'];
const linkKinds = ['manoeuvre', 'system', 'guide', 'source'] as const;

/** Turns phrasing content into a line: text joined, white space folded, references collected, code refused. */
export function readLine(nodes: readonly PhrasingContent[], reader: InlineReader): Line {
  return tidy(nodes.flatMap((node) => readNode(node, reader)));
}

/** Turns an attribute's text into a line; `[[value-id]]` becomes a reference to a value. */
export function readAttributeLine(text: string, at: At, reader: InlineReader): Line {
  const parts = text.split(/\[\[([^\]]*)\]\]/);
  return tidy(
    parts.map((part, index): Inline => {
      if (index % 2 === 0) return { type: 'text', text: curlyQuotes(part) };
      reader.references.push({ kind: 'value', id: part.trim(), at });
      return { type: 'value', id: part.trim() };
    }),
  );
}

/** A reference tag standing alone as a block, as MDX reads a list item that holds nothing else. */
export function readReferenceTag(node: Tag, reader: InlineReader): Line {
  const name = node.name ?? '';
  if (!isReference(name)) {
    reportTag(node, reader);
    return [];
  }
  const kind = referenceTags[name];
  const attributes = readAttributes(node, { required: ['id'] }, reader.file, reader.report);
  const id = attributes.get('id');
  if (id === undefined || id.trim() === '') return [];
  reader.references.push({ kind, id, at: attributes.at('id') });
  return [{ type: kind, id }];
}

const isReference = (name: string): name is keyof typeof referenceTags => Object.hasOwn(referenceTags, name);

function readNode(node: PhrasingContent, reader: InlineReader): Inline[] {
  if (node.type === 'text') return readText(node, reader);
  if (node.type === 'break') return [{ type: 'text', text: ' ' }];
  if (node.type === 'strong' || node.type === 'emphasis')
    return [{ type: node.type, children: readLine(node.children, reader) }];
  if (node.type === 'link') return readLink(node, reader);
  if (isTag(node)) return readReferenceTag(node, reader);
  if (isCode(node)) reportCode(node, reader.file, reader.report);
  else
    reader.report(
      placeOf(node, reader.file),
      'markdown',
      `${nodeName(node.type)} is not used in content. Write plain text, **strong**, *emphasis* or a link.`,
    );
  return [];
}

function readText(node: Text, reader: InlineReader): Inline[] {
  if (node.value.includes('[[')) {
    const message = '"[[…]]" stands for a value in attributes only. In prose write <Value id="…"/>.';
    reader.report(placeOf(node, reader.file), 'markdown', message);
  }
  return [{ type: 'text', text: curlyQuotes(node.value) }];
}

function readLink(node: Link, reader: InlineReader): Inline[] {
  const to = readTarget(node.url);
  const at = placeOf(node, reader.file);
  if (to === undefined) {
    reader.report(
      at,
      'link',
      `The link goes to "${node.url}". Links go to manoeuvre:ID, system:ID, guide:ID, source:ID or an https address.`,
    );
    return [];
  }
  if (to.kind !== 'web') reader.references.push({ kind: to.kind, id: to.id, at });
  return [{ type: 'link', to, children: readLine(node.children, reader) }];
}

function readTarget(url: string): Target | undefined {
  if (/^https:\/\/[^\s/]+/i.test(url)) return { kind: 'web', url };
  const [scheme, id] = url.split(':');
  const kind = linkKinds.find((known) => known === scheme);
  return kind !== undefined && id !== undefined && /^[a-z0-9-]+$/.test(id) ? { kind, id } : undefined;
}

function reportTag(node: Tag, reader: InlineReader): void {
  const name = node.name ?? '';
  if (isHtml(name)) return void reportCode(node, reader.file, reader.report);
  const reserved =
    name === 'Figure' ? ' <Figure> is reserved for drawings, which are not part of the format yet; leave it out.' : '';
  reader.report(
    placeOf(node, reader.file),
    'unknown-tag',
    `<${name}> is not a tag that may stand here.${didYouMean(name, knownTags)}${reserved} Tags in prose: <Value>, <Scale>, <Evidence>, <Measure>.`,
  );
}

function isHtml(name: string): boolean {
  return name === '' || /^[a-z]/.test(name);
}

function nodeName(type: string): string {
  return (
    ({ inlineCode: 'Code in backticks', image: 'An image', delete: 'Struck-out text' } as Record<string, string>)[
      type
    ] ?? `Markdown "${type}"`
  );
}

function tidy(line: Line): Line {
  const joined: Line = [];
  for (const part of line) {
    const last = joined.at(-1);
    if (part.type === 'text' && last?.type === 'text') last.text += part.text;
    else joined.push({ ...part });
  }
  for (const part of joined) if (part.type === 'text') part.text = part.text.replace(/[ \t\r\n]+/g, ' ');
  const first = joined[0];
  const end = joined.at(-1);
  if (first?.type === 'text') first.text = first.text.replace(/^ +/, '');
  if (end?.type === 'text') end.text = end.text.replace(/ +$/, '');
  return joined.filter((part) => part.type !== 'text' || part.text !== '');
}
