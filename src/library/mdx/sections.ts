import type { Heading, List, ListItem, RootContent } from 'mdast';
import type { Line } from '../../../schemas/inline.ts';
import type { PlacedLine } from '../content.ts';
import type { At } from '../faults.ts';
import { didYouMean } from '../suggest.ts';
import { isTag } from './attributes.ts';
import { readLine, readReferenceTag, type InlineReader } from './inline.ts';
import { isCode, placeOf, reportCode } from './parse.ts';

/** The fixed headings of a manoeuvre, in their order; `always` ones stand in preparation entries too. */
export const headings = [
  { title: 'Tell the patient', need: 'always' },
  { title: 'Technique', need: 'always' },
  { title: 'Normal findings', need: 'examined' },
  { title: 'Abnormal findings', need: 'examined' },
  { title: 'Red flags', need: 'examined' },
  { title: 'Cautions', need: 'always' },
  { title: 'Common errors', need: 'examined' },
  { title: 'Adaptations', need: 'optional' },
  { title: 'Card', need: 'optional' },
] as const;
export type HeadingTitle = (typeof headings)[number]['title'];

/** A manoeuvre's children cut at its headings. */
export interface Sections {
  aim: RootContent[];
  byHeading: Map<HeadingTitle, RootContent[]>;
  places: Map<HeadingTitle, At>;
  records: RootContent[];
}

const titles = headings.map(({ title }) => title);

/** Cuts the children of a manoeuvre at `###` headings; unknown, repeated and misplaced headings are filed. */
export function cutSections(children: readonly RootContent[], reader: InlineReader): Sections {
  const sections: Sections = { aim: [], byHeading: new Map(), places: new Map(), records: [] };
  let into: RootContent[] = sections.aim;
  for (const node of children) {
    if (node.type === 'heading') into = openHeading(node, sections, reader) ?? [];
    else if (isTag(node) && node.name === 'Record') sections.records.push(node);
    else into.push(node);
  }
  return sections;
}

function openHeading(node: Heading, sections: Sections, reader: InlineReader): RootContent[] | undefined {
  const at = placeOf(node, reader.file);
  const text = node.children.map((child) => ('value' in child ? child.value : '')).join('');
  const title = titles.find((known) => known === text.trim());
  if (title === undefined || node.depth !== 3) return void reportHeading(text, node.depth, at, reader);
  if (sections.byHeading.has(title)) {
    reader.report(at, 'heading', `"### ${title}" stands twice in this manoeuvre. Join the two.`);
    return undefined;
  }
  const later = [...sections.byHeading.keys()].find((open) => titles.indexOf(open) > titles.indexOf(title));
  if (later !== undefined)
    reader.report(at, 'heading', `"### ${title}" comes after "### ${later}". The order is: ${titles.join(', ')}.`);
  const content: RootContent[] = [];
  sections.byHeading.set(title, content);
  sections.places.set(title, at);
  return content;
}

function reportHeading(text: string, depth: number, at: At, reader: InlineReader): undefined {
  const hint = didYouMean(text, titles.map(String));
  reader.report(
    at,
    'heading',
    `"${'#'.repeat(depth)} ${text}" is not a heading of a manoeuvre.${hint} Headings, each with ###: ${titles.join(', ')}.`,
  );
}

/** Reads a section that is one list; anything else in it is filed. */
export function readListSection(
  nodes: readonly RootContent[],
  title: HeadingTitle,
  ordered: boolean,
  reader: InlineReader,
): PlacedLine[] {
  return nodes.flatMap((node): PlacedLine[] => {
    if (node.type === 'list') return readList(node, title, ordered, reader);
    reportNotList(node, title, ordered, reader);
    return [];
  });
}

function readList(list: List, title: HeadingTitle, ordered: boolean, reader: InlineReader): PlacedLine[] {
  if (Boolean(list.ordered) !== ordered) reportNotList(list, title, ordered, reader);
  return list.children.map((item) => ({ line: readItem(item, reader), at: placeOf(item, reader.file) }));
}

/** Reads one item of a list as a line. */
export function readItem(item: ListItem, reader: InlineReader): Line {
  const lines = item.children.map((child): Line => {
    if (child.type === 'paragraph') return readLine(child.children, reader);
    if (isTag(child)) return readReferenceTag(child, reader);
    reader.report(
      placeOf(child, reader.file),
      'markdown',
      'A list item holds one line of text, no list or block inside it. Make it one sentence or two items.',
    );
    return [];
  });
  return lines.flatMap((line, index) => (index === 0 ? line : [{ type: 'text' as const, text: ' ' }, ...line]));
}

function reportNotList(node: RootContent, title: HeadingTitle, ordered: boolean, reader: InlineReader): void {
  if (isCode(node)) return void reportCode(node, reader.file, reader.report);
  if (isTag(node) && !['Value', 'Scale', 'Evidence', 'Measure'].includes(node.name ?? ''))
    return void readReferenceTag(node, reader);
  const shape = ordered ? 'a numbered list ("1. …")' : 'a list ("- …")';
  reader.report(
    placeOf(node, reader.file),
    'markdown',
    `"### ${title}" holds ${shape} and nothing else. Write this as items of it.`,
  );
}
