import type { RootContent } from 'mdast';
import { guideHead } from '../../../schemas/guide.ts';
import type { Block } from '../../../schemas/inline.ts';
import { protocolHead } from '../../../schemas/protocol.ts';
import type { GuideDraft, ManoeuvreDraft, ProtocolDraft, Reference, Report } from '../content.ts';
import type { ContentFile } from '../read.ts';
import { reportIssues } from '../schema-faults.ts';
import { didYouMean } from '../suggest.ts';
import { isTag } from './attributes.ts';
import { readLine, readReferenceTag, type InlineReader } from './inline.ts';
import { readManoeuvre } from './manoeuvre.ts';
import { isCode, parseMdx, placeOf, reportCode } from './parse.ts';
import { readItem } from './sections.ts';

/** Reads a protocol page; undefined when it cannot be made into one, with every reason filed. */
export function readProtocol(
  file: ContentFile,
  allPositions: readonly string[],
  references: Reference[],
  report: Report,
): ProtocolDraft | undefined {
  const tree = parseMdx(file, report);
  if (tree === undefined) return undefined;
  const reader: InlineReader = { file: tree.file, report, references };
  const head = protocolHead.safeParse(tree.front.value);
  if (!head.success) reportIssues(head.error.issues, protocolHead, tree.front.value, tree.front.at, report);
  const id = /([^/]+)\.mdx$/.exec(file.path)?.[1] ?? '';
  const { opening, manoeuvres } = readPage(tree.children, id, allPositions, reader);
  if (opening.length === 0)
    report(
      { file: file.file, line: 1, column: 1 },
      'opening',
      'The page has no opening prose. Write a few sentences between the front matter and the first <Manoeuvre>.',
    );
  if (manoeuvres.length === 0)
    report({ file: file.file, line: 1, column: 1 }, 'opening', 'The page has no <Manoeuvre> that can be read.');
  if (!head.success) return undefined;
  const place = { file: file.file, line: 1, column: 1 };
  return {
    value: { ...head.data, id, opening, manoeuvres: manoeuvres.map(({ value }) => value), place },
    key: tree.front.at,
    manoeuvres,
  };
}

function readPage(
  nodes: readonly RootContent[],
  system: string,
  allPositions: readonly string[],
  reader: InlineReader,
): { opening: Block[]; manoeuvres: ManoeuvreDraft[] } {
  const opening: Block[] = [];
  const manoeuvres: ManoeuvreDraft[] = [];
  for (const node of nodes) {
    if (isTag(node) && node.name === 'Manoeuvre')
      pushPresent(manoeuvres, readManoeuvre(node, system, allPositions, reader));
    else if (manoeuvres.length > 0) reportStray(node, reader);
    else pushPresent(opening, readBlock(node, reader));
  }
  return { opening, manoeuvres };
}

function readBlock(node: RootContent, reader: InlineReader): Block | undefined {
  if (node.type === 'paragraph') return { type: 'paragraph', line: readLine(node.children, reader) };
  if (node.type === 'list')
    return { type: 'list', ordered: node.ordered === true, lines: node.children.map((item) => readItem(item, reader)) };
  reportStray(node, reader);
  return undefined;
}

function reportStray(node: RootContent, reader: InlineReader): void {
  if (isCode(node)) reportCode(node, reader.file, reader.report);
  else if (isTag(node) && !isMisplaced(node.name)) readReferenceTag(node, reader);
  else if (isTag(node))
    reader.report(
      placeOf(node, reader.file),
      'unknown-tag',
      `<${String(node.name)}> may not stand here.${didYouMean(node.name ?? '', ['Manoeuvre'])} Outside <Manoeuvre> there is only opening prose.`,
    );
  else
    reader.report(
      placeOf(node, reader.file),
      'opening',
      'Only paragraphs and lists may open the page, and only <Manoeuvre> may follow them.',
    );
}

function isMisplaced(name: string | null): boolean {
  return name !== null && /^[A-Z]/.test(name);
}

function pushPresent<T>(list: T[], item: T | undefined): void {
  if (item !== undefined) list.push(item);
}

/** Reads a guide: its front matter and references; refuses code as in protocols. */
export function readGuide(file: ContentFile, references: Reference[], report: Report): GuideDraft | undefined {
  const tree = parseMdx(file, report);
  if (tree === undefined) return undefined;
  const reader: InlineReader = { file: tree.file, report, references };
  tree.children.forEach((node) => readGuideBlock(node, reader));
  const head = guideHead.safeParse(tree.front.value);
  const id = /([^/]+)\.mdx$/.exec(file.path)?.[1] ?? '';
  if (head.success) return { value: { ...head.data, id }, at: { file: file.file, line: 1, column: 1 } };
  reportIssues(head.error.issues, guideHead, tree.front.value, tree.front.at, report);
  return undefined;
}

function readGuideBlock(node: RootContent, reader: InlineReader): void {
  if (node.type === 'heading' && node.depth > 1) return void readLine(node.children, reader);
  if (node.type === 'paragraph') return void readLine(node.children, reader);
  if (node.type === 'list') return void node.children.forEach((item) => readItem(item, reader));
  if (isCode(node)) return void reportCode(node, reader.file, reader.report);
  reader.report(
    placeOf(node, reader.file),
    'markdown',
    'A guide holds headings from ## down, paragraphs and lists; nothing else.',
  );
}
