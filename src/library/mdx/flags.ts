import type { RootContent } from 'mdast';
import type { Line } from '../../../schemas/inline.ts';
import { urgency, type Urgency } from '../../../schemas/common.ts';
import type { RedFlag } from '../../../schemas/manoeuvre.ts';
import { didYouMean } from '../suggest.ts';
import { isTag, readAttributes, type Tag } from './attributes.ts';
import { readAttributeLine, readLine, type InlineReader } from './inline.ts';
import { placeOf } from './parse.ts';

/** What stands under "### Red flags". */
export interface Flags {
  redFlags: RedFlag[];
  noRedFlag?: Line;
}

/** Reads `<RedFlag>` and `<NoRedFlag>` tags, whether MDX made blocks of them or words in a paragraph. */
export function readFlags(nodes: readonly RootContent[], reader: InlineReader): Flags {
  const flags: Flags = { redFlags: [] };
  for (const node of nodes.flatMap(unfold)) {
    if (isTag(node) && node.name === 'RedFlag') pushFlag(node, flags, reader);
    else if (isTag(node) && node.name === 'NoRedFlag') readNoFlag(node, flags, reader);
    else if (!isBlank(node)) reportStray(node, reader);
  }
  return flags;
}

function unfold(node: RootContent): RootContent[] {
  return node.type === 'paragraph' ? node.children : [node];
}

function pushFlag(node: Tag, flags: Flags, reader: InlineReader): void {
  const attributes = readAttributes(node, { required: ['urgency', 'finding'] }, reader.file, reader.report);
  const level = readUrgency(attributes.get('urgency'));
  const action = readLine(
    node.children.flatMap((child) => (child.type === 'paragraph' ? child.children : [child])) as never,
    reader,
  );
  if (level === undefined && (attributes.get('urgency') ?? '') !== '') {
    const written = attributes.get('urgency') ?? '';
    reader.report(
      attributes.at('urgency'),
      'schema',
      `urgency "${written}" is not known.${didYouMean(written, urgency.options)} Urgencies: ${urgency.options.join(', ')}.`,
    );
  }
  if (action.length === 0)
    reader.report(
      attributes.tag,
      'red-flag',
      'This red flag does not say what to do. Write the action between <RedFlag …> and </RedFlag>.',
    );
  const finding = readAttributeLine(attributes.get('finding') ?? '', attributes.at('finding'), reader);
  if (level !== undefined && action.length > 0 && finding.length > 0)
    flags.redFlags.push({ urgency: level, finding, action });
}

function readUrgency(text: string | undefined): Urgency | undefined {
  return urgency.options.find((option) => option === text);
}

function readNoFlag(node: Tag, flags: Flags, reader: InlineReader): void {
  const attributes = readAttributes(node, { required: ['reason'] }, reader.file, reader.report);
  const reason = attributes.get('reason');
  if (reason !== undefined && reason.trim() !== '')
    flags.noRedFlag = readAttributeLine(reason, attributes.at('reason'), reader);
}

function isBlank(node: RootContent): boolean {
  return node.type === 'text' && node.value.trim() === '';
}

function reportStray(node: RootContent, reader: InlineReader): void {
  const hint = isTag(node) ? didYouMean(node.name ?? '', ['RedFlag', 'NoRedFlag']) : '';
  const what = isTag(node) ? `<${String(node.name)}>` : 'Text';
  reader.report(
    placeOf(node, reader.file),
    'red-flag',
    `${what} may not stand under "### Red flags".${hint} Write <RedFlag urgency="…" finding="…">What to do.</RedFlag>, or <NoRedFlag reason="…" />.`,
  );
}
