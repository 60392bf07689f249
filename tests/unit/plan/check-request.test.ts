import { describe, expect, it } from 'vitest';
import { readJson } from '../../../src/cli/json-text.ts';
import { checkRequest } from '../../../src/plan/check-request.ts';
import { libraryOf } from './small-library.ts';

const library = {
  ...libraryOf([{ id: 'neck-nodes', instruments: ['light', 'tuning-fork'] }, { id: 'neck-movement' }]),
  forms: [],
};

const keys = 'Known keys: form, manoeuvres, systems, minutes, start, cannot, without, last, avoidSides, pace.';

/** Every fault of a text, as `line:column  message`. */
function faultsOf(text: string): string[] {
  const { value, faults, placeOf } = readJson('request.json', text);
  const all = value === undefined ? faults : [...faults, ...checkRequest(library, value, placeOf).faults];
  return all.map(({ line, column, message }) => `${line}:${column}  ${message}`);
}

const nothingToExamine =
  'Nothing says what to examine. Give one of "form", "manoeuvres" and "systems", for example { "form": "adult-screening" }.';

/** A broken request and every fault that it must give. */
const table: [name: string, text: string, faults: string[]][] = [
  [
    'an unknown key',
    '{"systems":["page"],"minuts":10}',
    [`1:21  "minuts" is not a known key. Did you mean "minutes"? ${keys}`],
  ],
  ['an unknown key like none', '{"systems":["page"],"zzzzzz":1}', [`1:21  "zzzzzz" is not a known key. ${keys}`]],
  [
    'an unknown manoeuvre',
    '{"manoeuvres":["neck-node"]}',
    ['1:16  manoeuvre "neck-node" is not known. Did you mean "neck-nodes"?'],
  ],
  [
    'an unknown manoeuvre for last',
    '{"systems":["page"],"last":["nek-nodes"]}',
    ['1:29  manoeuvre "nek-nodes" is not known. Did you mean "neck-nodes"?'],
  ],
  ['an unknown system', '{"systems":["pag"]}', ['1:13  system "pag" is not known. Did you mean "page"?']],
  ['an unknown form', '{"form":"adult"}', ['1:2  form "adult" is not known.']],
  [
    'an unknown start',
    '{"systems":["page"],"start":"siting"}',
    ['1:21  position "siting" is not known. Did you mean "sitting"?'],
  ],
  [
    'an unknown position',
    '{"systems":["page"],"cannot":["sitting","kneel"]}',
    ['1:41  position "kneel" is not known. Known: sitting, supine, standing.'],
  ],
  [
    'an unknown instrument',
    '{"systems":["page"],"without":["lihgt"]}',
    ['1:32  instrument "lihgt" is not known. Did you mean "light"?'],
  ],
  [
    'what is no id at all',
    '{"manoeuvres":["Neck nodes!"]}',
    ['1:16  manoeuvre "Neck nodes!" is not known. Did you mean "neck-nodes"?'],
  ],
  [
    'an unknown side',
    '{"systems":["page"],"avoidSides":["rigth"]}',
    ['1:35  "avoidSides.0" is "rigth". Did you mean "right"? Expected one of left, right.'],
  ],
  ['a wrong type', '{"systems":["page"],"minutes":"ten"}', ['1:21  "minutes" is "ten"; expected a number.']],
  ['a single id where a list is expected', '{"systems":"page"}', ['1:2  "systems" is "page"; expected a list.']],
  ['a list where a single id is expected', '{"form":["adult"]}', ['1:2  "form" is a list; expected text.']],
  ['a number where an id is expected', '{"systems":["page"],"cannot":[3]}', ['1:31  "cannot.0" is 3; expected text.']],
  ['no minutes at all', '{"systems":["page"],"minutes":0}', ['1:21  "minutes" must be above 0.']],
  ['a pace below nothing', '{"systems":["page"],"pace":-1}', ['1:21  "pace" must be above 0.']],
  [
    'a pace past all sense',
    '{"systems":["page"],"pace":1e308}',
    ['1:21  "pace" is 1e+308; expected a number at most 100.'],
  ],
  ['an empty list', '{"manoeuvres":[]}', ['1:2  "manoeuvres" is empty; name at least one id.']],
  ['nothing to examine', '{"minutes":10}', [`1:1  ${nothingToExamine}`]],
  [
    'two things to examine',
    '{"systems":["page"],"manoeuvres":["neck-nodes"]}',
    ['1:2  "manoeuvres" and "systems" are given together. Give exactly one of "form", "manoeuvres" and "systems".'],
  ],
  ['a key given twice', '{"systems":["page"],\n  "pace":1,\n  "pace":2}', ['3:3  "pace" is given twice. Keep one.']],
  [
    'a list instead of a request',
    '[]',
    ['1:1  The request is a list; expected a group of keys such as { "form": "adult-screening" }.'],
  ],
  ['null', 'null', ['1:1  The request is null; expected a group of keys such as { "form": "adult-screening" }.']],
  ['an empty text', '', ['1:1  This is not JSON: expected a value at the end of the text.']],
  [
    'a missing brace',
    '{"systems":["page"]',
    ['1:20  This is not JSON: expected a closing brace at the end of the text.'],
  ],
  ['a missing comma', '{"systems":["page"]\n "pace":1}', ['2:2  This is not JSON: expected a comma at "pace".']],
  ['a missing colon', '{"pace" 1}', ['1:9  This is not JSON: expected a colon after the key at 1.']],
  ['a comma too many', '{"pace":1,}', ['1:11  This is not JSON: expected a key in double quotes at }.']],
  [
    'single quotes',
    "{'pace':1}",
    ["1:2  This is not JSON: expected a value, a string in double quotes, or a bracket at 'pace'."],
  ],
  ['an open string', '{"form":"adult', ['1:9  This is not JSON: a string is not closed at "adult.']],
  ['a comment', '// hello\n{}', ['1:1  This is not JSON: a comment is not allowed at // hello.']],
  ['something after the end', '{"pace":1} {}', ['1:12  This is not JSON: expected nothing more at {.']],
];

describe('a broken request', () => {
  it.each(table)('with %s', (_, text, faults) => {
    expect(faultsOf(text)).toEqual(faults);
  });

  it('names all its faults in one run, in reading order', () => {
    const text =
      '{\n  "frm": "x",\n  "start": "siting",\n  "minutes": -3,\n  "last": ["neck"],\n  "without": ["light", "lights"]\n}';
    expect(faultsOf(text)).toEqual([
      `1:1  ${nothingToExamine}`,
      `2:3  "frm" is not a known key. Did you mean "form"? ${keys}`,
      '3:3  position "siting" is not known. Did you mean "sitting"?',
      '4:3  "minutes" must be above 0.',
      '5:12  manoeuvre "neck" is not known. Known: neck-nodes, neck-movement.',
      '6:24  instrument "lights" is not known. Did you mean "light"?',
    ]);
  });
});

describe('a sound request', () => {
  it('passes unchanged, whatever it holds', () => {
    const value = {
      manoeuvres: ['neck-nodes'],
      minutes: 12.5,
      start: 'supine',
      cannot: ['standing'],
      without: ['light'],
      last: ['neck-movement'],
      avoidSides: ['left'],
      pace: 1.25,
    };
    expect(checkRequest(library, value)).toEqual({ request: value, faults: [] });
  });

  it('may name the same thing twice', () => {
    const value = { systems: ['page', 'page'] };
    expect(checkRequest(library, value).request).toEqual(value);
  });
});
