import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFRawStream, PDFString } from '@cantoo/pdf-lib';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { compilePdf } from '../../../src/pdf/engine.ts';
import { fieldAddress, parseFieldAddress } from '../../../src/pdf/form/field-address.ts';
import { FormFieldError, type FieldSpec } from '../../../src/pdf/form/field-spec.ts';
import { addFormFields } from '../../../src/pdf/form-pass.ts';
import { filled, subtypes, values, type Widget, widgets } from '../../fixtures/pdf-fields.ts';
import { present } from '../../fixtures/present.ts';
import { fontLines, told } from '../../fixtures/pdf-tools.ts';

const sides = [
  { code: 'right', display: 'Right' },
  { code: '4+', display: 'nearly all' },
];

/** One field of every kind. */
const specs: FieldSpec[] = [
  { kind: 'text', name: 'name', tooltip: 'Name', repeats: true },
  { kind: 'text', name: 'height_right', tooltip: 'Height, right, in cm' },
  { kind: 'text', name: 'notes', tooltip: 'Notes', multiline: true },
  { kind: 'tick', name: 'consent', tooltip: 'Consent' },
  { kind: 'radio', name: 'side', tooltip: 'Side used', options: sides },
  { kind: 'list', name: 'reason', tooltip: 'Why ≥ not', options: sides },
];

interface Place {
  to: string;
  words: string;
  page?: boolean;
}

const place = (name: string, option?: number): Place => ({ to: fieldAddress(name, option), words: name });
const singles = ['name', 'height_right', 'notes', 'consent', 'reason'].map((name) => place(name));
/** Each field once, then the repeated one again on a second page. */
const places: Place[] = [...singles, place('side', 0), place('side', 1), { ...place('name'), page: true }];

const drawn = (drawing: readonly Place[]): Uint8Array =>
  compilePdf({ template: '../../../tests/fixtures/typst/fields.typ', data: { places: drawing } });
const made = (drawing: readonly Place[] = places, fields: readonly FieldSpec[] = specs): Promise<Uint8Array> =>
  addFormFields(drawn(drawing), fields);

const sample = await made();
const found = await widgets(sample);
const named = (name: string): Widget[] => found.filter(({ fieldName }) => fieldName === name);

describe('field addresses', () => {
  it.each([
    [fieldAddress('a_b-1'), { name: 'a_b-1' }],
    [fieldAddress('side', 2), { name: 'side', option: 2 }],
    ['https://fingerbreadth.example/', undefined],
    ['field:a:b', undefined],
  ])('%s', (address, meaning) => expect(parseFieldAddress(address)).toEqual(meaning));
});

describe('the fields that are made', () => {
  it('replace every field link and leave other links alone', async () => {
    const kinds = await subtypes(sample);
    expect(kinds.filter((kind) => kind === 'Widget')).toHaveLength(places.length);
    expect(kinds.filter((kind) => kind === 'Link')).toHaveLength(1);
  });

  it('are text of one line and of several, a tick, a radio group and a list', () => {
    expect(named('height_right')[0]).toMatchObject({ fieldType: 'Tx', multiLine: false });
    expect(named('notes')[0]).toMatchObject({ fieldType: 'Tx', multiLine: true });
    expect(named('consent')[0]).toMatchObject({ fieldType: 'Btn', checkBox: true });
    expect(named('side').map((widget) => [widget.radioButton, widget.buttonValue])).toEqual([
      [true, 'right'],
      [true, '4+'],
    ]);
    const options = sides.map(({ code, display }) => ({ exportValue: code, displayValue: display }));
    expect(named('reason')[0]).toMatchObject({ fieldType: 'Ch', combo: true, options });
  });

  it('say what they are for, each answer of a group its own words', () => {
    expect(named('height_right')[0]?.alternativeText).toBe('Height, right, in cm');
    expect(named('reason')[0]?.alternativeText).toBe('Why ≥ not');
    expect(named('side').map(({ alternativeText }) => alternativeText)).toEqual([
      'Side used: Right',
      'Side used: nearly all',
    ]);
  });

  it('begin empty', async () => {
    expect(Object.fromEntries(await values(sample))).toEqual({
      ...{ name: '', height_right: '', notes: '', consent: 'Off', side: 'Off', reason: '' },
    });
  });

  it('share one value where one field is drawn on two pages', () => {
    expect(named('name').map(({ page }) => page)).toEqual([1, 2]);
  });
});

/** Values with letters that only the embedded font can show, none of the names a real one. */
const typed = new Map([
  ...[['name', 'Zoë Åström-Ñandú'] as const, ['height_right', '−5'.replace('−', '-')] as const],
  ...[['notes', 'one\ntwo'] as const, ['consent', 'Yes'] as const, ['side', '4+'] as const, ['reason', '4+'] as const],
]);

describe('filling in', () => {
  it('keeps every value through saving, and the file sound', async () => {
    const saved = await filled(sample, typed);
    expect(Object.fromEntries(await values(saved))).toEqual(Object.fromEntries(typed));
    expect(told('qpdf', saved, '--check')).toContain('No syntax or stream encoding errors');
  });

  it('shows what was typed, in the embedded font', async () => {
    const saved = await filled(sample, typed);
    expect(told('pdftotext', saved)).toContain('Zoë Åström-Ñandú');
    const fonts = fontLines(saved);
    expect(fonts.find((line) => line.startsWith('FiraSans '))).toMatch(/TrueType +WinAnsi +yes/);
    for (const line of fonts) expect(line).toMatch(/ yes +(yes|no) +(yes|no) +\d/);
  });
});

const document = await PDFDocument.load(sample, { updateMetadata: false });
const dictionaries = document.context
  .enumerateIndirectObjects()
  .map(([, object]) => object)
  .filter((object) => object instanceof PDFDict);
const withEntry = (key: string, value: string): PDFDict[] =>
  dictionaries.filter((dict) => dict.get(PDFName.of(key)) === PDFName.of(value));

describe('the tagged document', () => {
  it('holds one form element for each widget, which says what the widget says', () => {
    const forms = withEntry('S', 'Form');
    const alternatives = forms.map((element) => element.lookup(PDFName.of('Alt'), PDFHexString).decodeText());
    expect(alternatives.sort()).toEqual(found.map(({ alternativeText }) => alternativeText).sort());
    for (const element of forms) expect(element.lookup(PDFName.of('K'), PDFArray).size()).toBe(1);
    expect(withEntry('S', 'Link')).toHaveLength(1);
  });

  it('is left with nothing of the links in its widgets', () => {
    for (const widget of withEntry('Subtype', 'Widget'))
      for (const key of ['A', 'Border', 'Contents', 'QuadPoints']) expect(widget.has(PDFName.of(key)), key).toBe(false);
  });

  it('is tabbed through in the order of its structure', () => {
    for (const page of document.getPages()) expect(page.node.get(PDFName.of('Tabs'))).toBe(PDFName.of('S'));
  });

  it('is sound, tagged and the same each time', async () => {
    expect(told('qpdf', sample, '--check')).toContain('No syntax or stream encoding errors');
    expect(told('pdfinfo', sample)).toMatch(/Tagged:\s+yes/);
    expect(Buffer.compare(await made(), sample)).toBe(0);
  });

  it('carries a typing font of the letters of WinAnsi with their widths', () => {
    const font = present(withEntry('Subtype', 'TrueType')[0]);
    expect(font.get(PDFName.of('Encoding'))).toBe(PDFName.of('WinAnsiEncoding'));
    const widths = font.lookup(PDFName.of('Widths'), PDFArray);
    expect(widths.size()).toBe(224);
    const file = font.lookup(PDFName.of('FontDescriptor'), PDFDict).lookup(PDFName.of('FontFile2'));
    expect(file).toBeInstanceOf(PDFRawStream);
    expect((file as PDFRawStream).contents.length).toBeLessThan(20_000);
  });
});

const text = (name: string): FieldSpec => ({ kind: 'text', name, tooltip: name });

describe('an optional field', () => {
  const optional: FieldSpec = { kind: 'text', name: 'b', tooltip: 'Room', optional: true };
  const namesIn = async (drawing: Place[]): Promise<string[]> =>
    (await widgets(await made(drawing, [text('a'), optional]))).map(({ fieldName }) => fieldName);

  it('is made where it is drawn, and left out where it is not', async () => {
    expect(await namesIn([place('a'), place('b')])).toEqual(['a', 'b']);
    expect(await namesIn([place('a')])).toEqual(['a']);
  });

  it('is drawn once, as every other', async () => {
    await expect(made([place('b'), { ...place('b'), page: true }], [optional])).rejects.toThrow('drawn 2 times');
  });
});

describe('what is refused', () => {
  it.each<[string, FieldSpec[], Place[], string]>([
    ['a name used twice', [text('a'), text('a')], [place('a')], 'field name "a" is used twice; each name once'],
    [
      ...(['a name with a dot', [text('a.right')], [place('a.right')]] as [string, FieldSpec[], Place[]]),
      'field name "a.right" has a character outside A–Z, a–z, 0–9, "_" and "-"; write "_" for each "."',
    ],
    ['an empty name', [text('')], [], 'field name "" has a character outside'],
    ['no tooltip', [{ ...text('a'), tooltip: ' ' }], [place('a')], 'field "a" has no tooltip'],
    ['a field that is not drawn', [text('a')], [], 'field "a" is not drawn on any page'],
    [
      'a field drawn twice',
      [text('a')],
      [place('a'), { ...place('a'), page: true }],
      'field "a" is drawn 2 times, page 1 and 2',
    ],
    [
      'a drawing without a field',
      [text('a')],
      [place('a'), place('b')],
      'page 1 draws a field "b" that the form does not have',
    ],
    [
      'a text field drawn as a group',
      [text('a')],
      [place('a', 0)],
      'field "a" is drawn as a radio group, but is a text field',
    ],
  ])('%s', async (_, fields, drawing, message) => {
    await expect(made(drawing, fields)).rejects.toThrow(FormFieldError);
    await expect(made(drawing, fields)).rejects.toThrow(message);
  });

  const group = (options: { code: string; display: string }[]): FieldSpec => ({
    ...{ kind: 'radio', name: 'g', tooltip: 'Group', options },
  });
  const yes = { code: 'yes', display: 'yes' };

  it.each<[string, FieldSpec, Place[], string]>([
    ['a single answer', group([yes]), [place('g', 0)], 'field "g" offers 1 answers; give at least two'],
    ['an answer twice', group([yes, yes]), [place('g', 0), place('g', 1)], 'field "g" offers the answer "yes" twice'],
    [
      'a code that readers take for "not chosen"',
      group([yes, { code: 'Off', display: 'off' }]),
      [],
      'has the code "Off"',
    ],
    ['a code beyond ASCII', group([yes, { code: '½', display: 'half' }]), [], 'has the code "½"'],
    ['an answer that is not drawn', group(sides), [place('g', 0)], 'answer "4+" of field "g" is not drawn on any page'],
    [
      'an answer too many',
      group(sides),
      [place('g', 0), place('g', 1), place('g', 2)],
      'is drawn with the answer 2, which it lacks',
    ],
    ['a group without its answers', group(sides), [place('g')], 'is drawn with the answer missing, which it lacks'],
  ])('%s', async (_, field, drawing, message) => {
    await expect(made(drawing, [field])).rejects.toThrow(message);
  });

  it('every fault at once, a line each', async () => {
    const error = await made([], [text('a.b'), text('c'), text('c')]).catch((reason: unknown) => reason);
    expect((error as Error).message.split('\n')).toHaveLength(2);
  });

  it('a document without tags', async () => {
    const plain = await PDFDocument.create();
    const page = plain.addPage();
    const link = plain.context.obj({ Type: 'Annot', Subtype: 'Link', Rect: [0, 0, 9, 9], StructParent: 0 });
    link.set(PDFName.of('A'), plain.context.obj({ S: 'URI', URI: PDFString.of(fieldAddress('a')) }));
    page.node.set(PDFName.of('Annots'), plain.context.obj([plain.context.register(link)]));
    await expect(addFormFields(await plain.save(), [text('a')])).rejects.toThrow('the document is not tagged');
  });
});

describe('a program that judges PDFs and is not installed', () => {
  afterEach(() => vi.unstubAllEnvs());

  it('fails the test with the way to get it', () => {
    vi.stubEnv('PATH', '');
    expect(() => told('qpdf', sample, '--check')).toThrow(
      'qpdf is not installed. On Debian: sudo apt-get install qpdf',
    );
  });
});
