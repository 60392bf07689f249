import type { RootContent } from 'mdast';
import { manoeuvreHead, type Manoeuvre } from '../../../schemas/manoeuvre.ts';
import type { Line } from '../../../schemas/inline.ts';
import type { ManoeuvreDraft, PlacedLine } from '../content.ts';
import type { At } from '../faults.ts';
import { reportIssues } from '../schema-faults.ts';
import { readAttributes, type Attributes, type Tag } from './attributes.ts';
import { readFlags } from './flags.ts';
import { readLine, type InlineReader } from './inline.ts';
import { placeOf } from './parse.ts';
import { listOf, readRecord, toNumber, type ReadRecord } from './records.ts';
import { cutSections, headings, readListSection, type HeadingTitle, type Sections } from './sections.ts';

const attributeNames = {
  required: ['id', 'title', 'synonyms', 'scope', 'position', 'exposure', 'examiner', 'seconds', 'sides', 'sources'],
  optional: ['sensitive', 'instruments', 'after'],
};

/** Reads one `<Manoeuvre>`; undefined when its head does not fit, with every reason filed. */
export function readManoeuvre(
  node: Tag,
  system: string,
  allPositions: readonly string[],
  reader: InlineReader,
): ManoeuvreDraft | undefined {
  const attributes = readAttributes(node, attributeNames, reader.file, reader.report);
  const head = readHead(attributes, allPositions, reader);
  const sections = cutSections(node.children, reader);
  const body = readBody(sections, reader);
  const records = readRecords(sections, reader);
  reportMissing(sections, body, attributes, reader);
  if (head === undefined) return undefined;
  const value: Manoeuvre = {
    ...head,
    ...withoutPlaces(body),
    system,
    derivedAfter: [],
    records: records.map((one) => one.value),
    place: attributes.tag,
  };
  return {
    value,
    attribute: attributes.at,
    heading: (name) => sections.places.get(name as HeadingTitle) ?? attributes.tag,
    tell: body.tell,
    technique: body.technique,
    recordAttribute: (index, name) => records[index]?.at(name) ?? attributes.tag,
  };
}

function readHead(
  attributes: Attributes,
  allPositions: readonly string[],
  reader: InlineReader,
): ReturnType<typeof manoeuvreHead.parse> | undefined {
  if (attributeNames.required.some((name) => (attributes.get(name) ?? '').trim() === '')) return undefined;
  const raw = rawHead(attributes, allPositions);
  if (raw.stages.some((stage) => stage.length === 0)) {
    const message = 'A stage of "position" names no position. Write a position on both sides of ">", or leave ">" out.';
    reader.report(attributes.at('position'), 'schema', message);
    return undefined;
  }
  const result = manoeuvreHead.safeParse(raw);
  if (result.success) return result.data;
  const at = ([name]: readonly PropertyKey[]): At => attributes.at(name === 'stages' ? 'position' : String(name));
  reportIssues(result.error.issues, manoeuvreHead, raw, at, reader.report);
  return undefined;
}

function rawHead(
  attributes: Attributes,
  allPositions: readonly string[],
): Record<string, unknown> & { stages: string[][] } {
  const list = (name: string): string[] => listOf(attributes.get(name), /\s+/);
  return {
    ...Object.fromEntries(['id', 'title', 'scope', 'examiner', 'sides'].map((name) => [name, attributes.get(name)])),
    synonyms: listOf(attributes.get('synonyms'), ';'),
    sensitive: attributes.has('sensitive'),
    stages: readStages(attributes.get('position') ?? '', allPositions),
    exposure: list('exposure').filter((id) => id !== 'none'),
    instruments: list('instruments'),
    seconds: toNumber(attributes.get('seconds') ?? ''),
    after: list('after'),
    sources: list('sources'),
  };
}

function readStages(text: string, allPositions: readonly string[]): string[][] {
  return text.split('>').map((stage) => {
    const ids = listOf(stage, /\s+/);
    return ids.length === 1 && ids[0] === 'any' && allPositions.length > 0 ? [...allPositions] : ids;
  });
}

interface Body extends Pick<Manoeuvre, 'redFlags' | 'noRedFlag'> {
  aim: Line;
  tell: PlacedLine[];
  technique: PlacedLine[];
  normal: PlacedLine[];
  abnormal: PlacedLine[];
  cautions: PlacedLine[];
  errors: PlacedLine[];
  adaptations: PlacedLine[];
  card: PlacedLine[];
}

function readBody(sections: Sections, reader: InlineReader): Body {
  const list = (title: HeadingTitle, ordered = false): PlacedLine[] =>
    readListSection(sections.byHeading.get(title) ?? [], title, ordered, reader);
  return {
    aim: readAim(sections.aim, reader),
    tell: list('Tell the patient'),
    technique: list('Technique', true),
    normal: list('Normal findings'),
    abnormal: list('Abnormal findings'),
    ...readFlags(sections.byHeading.get('Red flags') ?? [], reader),
    cautions: list('Cautions'),
    errors: list('Common errors'),
    adaptations: list('Adaptations'),
    card: list('Card'),
  };
}

function readAim(nodes: readonly RootContent[], reader: InlineReader): Line {
  const [first, ...rest] = nodes;
  for (const node of first?.type === 'paragraph' ? rest : nodes) {
    reader.report(
      placeOf(node, reader.file),
      'aim',
      'Before the first heading stands one paragraph, the aim, and nothing else.',
    );
  }
  return first?.type === 'paragraph' ? readLine(first.children, reader) : [];
}

function readRecords(sections: Sections, reader: InlineReader): ReadRecord[] {
  return sections.records.flatMap((node) => readRecord(node as Tag, reader) ?? []);
}

function withoutPlaces(
  body: Body,
): Omit<Manoeuvre, keyof ReturnType<typeof manoeuvreHead.parse> | 'system' | 'derivedAfter' | 'records' | 'place'> {
  const lines = (placed: PlacedLine[]): Line[] => placed.map(({ line }) => line);
  return {
    aim: body.aim,
    tell: lines(body.tell),
    technique: lines(body.technique),
    normal: lines(body.normal),
    abnormal: lines(body.abnormal),
    redFlags: body.redFlags,
    ...(body.noRedFlag ? { noRedFlag: body.noRedFlag } : {}),
    cautions: lines(body.cautions),
    errors: lines(body.errors),
    adaptations: lines(body.adaptations),
    card: lines(body.card),
  };
}

function reportMissing(sections: Sections, body: Body, attributes: Attributes, reader: InlineReader): void {
  const name = attributes.get('id') ?? 'this manoeuvre';
  const preparation = attributes.get('scope') === 'preparation';
  if (body.aim.length === 0)
    reader.report(
      attributes.tag,
      'aim',
      `${name} has no aim. Write one sentence under the tag: what question it answers.`,
    );
  for (const { title, need } of headings) {
    if (need === 'optional' || (need === 'examined' && preparation)) continue;
    const place = sections.places.get(title);
    if (place === undefined) reader.report(attributes.tag, 'heading', missing(title, name));
    else if (sections.byHeading.get(title)?.length === 0)
      reader.report(place, 'heading', `"### ${title}" is empty in ${name}. Write at least one line under it.`);
  }
}

function missing(title: HeadingTitle, name: string): string {
  const index = headings.findIndex((heading) => heading.title === title);
  const before = headings[index - 1]?.title;
  const after = headings[index + 1]?.title;
  const where =
    before === undefined ? `before "### ${String(after)}"` : `between "### ${before}" and "### ${String(after)}"`;
  const why =
    title === 'Cautions'
      ? ' Every manoeuvre says how it can hurt;'
      : title === 'Red flags'
        ? ' Every manoeuvre says what cannot wait, or why nothing here can;'
        : ' Every manoeuvre has this part;';
  return `"### ${title}" is missing in ${name}.${why} write at least one line ${where}.`;
}
