import { type ParagraphChild, TextRun, type XmlComponent } from 'docx';
import { element } from './xml.ts';

/** What a content control is known by: a tag for software, a name for whoever fills it in. */
export interface ControlName {
  /** linkId, or linkId=code for one box of several. */
  tag: string;
  /** Label with side. */
  alias: string;
}

/** Longest tag and name in characters: a word processor's own dialogue takes no more. */
const longest = 64;

/** A name cut at a word where it is too long; its full words stand beside the control. */
function shortened(alias: string): string {
  return alias.length <= longest ? alias : `${alias.slice(0, longest - 1).replace(/\s\S*$/, '')}…`;
}

function names({ tag, alias }: ControlName): XmlComponent[] {
  if (tag.length > longest)
    throw new RangeError(`The tag "${tag}" has ${tag.length} characters, ${longest} at most: shorten the record's id.`);
  return [element('w:alias', { 'w:val': shortened(alias) }), element('w:tag', { 'w:val': tag })];
}

/** The library has no class for a content control; a paragraph takes any component, though its type lists them. */
function control(properties: readonly XmlComponent[], content: XmlComponent): ParagraphChild {
  const parts = [element('w:sdtPr', {}, properties), element('w:sdtContent', {}, [content])];
  return element('w:sdt', {}, parts) as XmlComponent as ParagraphChild;
}

const font = 'MS Gothic';
const empty = '☐';
const box = (state: string, character: string): XmlComponent =>
  element(`w14:${state}`, { 'w14:val': character, 'w14:font': font });

/** A box to tick, empty. */
export function checkBox(name: ControlName): ParagraphChild {
  const states = [
    element('w14:checked', { 'w14:val': '0' }),
    box('checkedState', '2612'),
    box('uncheckedState', '2610'),
  ];
  return control([...names(name), element('w14:checkbox', {}, states)], new TextRun({ text: empty, font }));
}

/** How an empty control shows where to write: on a line of its own, or on the ruled line that its paragraph stands on. */
export type BlankLine = 'own line' | 'ruled line';

/** What an empty control shows, `length` figures wide; it goes when something is written. */
const room = (length: number, on: BlankLine): XmlComponent =>
  new TextRun({ text: '\u2007'.repeat(length), ...(on === 'own line' ? { underline: {} } : {}) });
const showingRoom = (): XmlComponent => element('w:showingPlcHdr');

/** A blank for words or a number, `length` figures wide while it is empty; it grows with what is written. */
export function blank(name: ControlName, length: number, on: BlankLine): ParagraphChild {
  const words = element('w:text', { 'w:multiLine': '1' });
  return control([...names(name), showingRoom(), words], room(length, on));
}

/** A blank on a ruled line that opens a list of answers; on paper it is written on. */
export function list(name: ControlName, options: readonly { code: string; label: string }[]): ParagraphChild {
  const entries = options.map(({ code, label }) => element('w:listItem', { 'w:displayText': label, 'w:value': code }));
  const choices = element('w:dropDownList', {}, entries);
  return control([...names(name), showingRoom(), choices], room(shortBlank, 'ruled line'));
}

const shortBlank = 6;
