/** Forms made from the slice that a browser is given are those that the whole Library gives. */
import { parse } from 'yaml';
import { describe, expect, it } from 'vitest';
import { form as formSchema } from '../../../schemas/form.ts';
import { formDefinition } from '../../../schemas/form-definition.ts';
import { startingChoice, withTicked, type MakeChoice, type MakeWords } from '../../../src/client/make-choice.ts';
import { definitionOfChoice, knownOf } from '../../../src/client/make-definition.ts';
import { finishedFile } from '../../../src/client/make-files.ts';
import { makeFiles } from '../../../src/client/make-file-list.ts';
import { madeForm, type MadeForm } from '../../../src/client/make-form.ts';
import { liveForm } from '../../../src/client/make-live.ts';
import { libraryOfSlice, makeSlice, type MakeSlice } from '../../../src/client/make-slice.ts';
import { definitionYaml } from '../../../src/client/make-yaml.ts';
import { buildForm } from '../../../src/forms/form.ts';
import { unzipped } from '../../../src/forms/zip.ts';
import { invariants } from '../../../src/forms/invariants.ts';
import { questionnaireOf } from '../../../src/forms/questionnaire-of.ts';
import { requireLibrary } from '../../../src/library/load.ts';

const library = requireLibrary('content');
const sent = JSON.parse(JSON.stringify(makeSlice(library))) as MakeSlice;
const slim = libraryOfSlice(sent);
const known = knownOf(slim);
const day = '2026-01-02';

const exam = (id: string): MakeChoice => startingChoice(known.exams.find((one) => one.id === id));
const said: MakeWords = { title: 'Our visit', purpose: 'To try.', leavesOut: 'All else.', publisher: 'P', url: '' };
const made = (choice: MakeChoice, words: Partial<MakeWords> = {}): MadeForm =>
  madeForm(
    slim,
    definitionOfChoice(slim, { ...choice, words: { ...choice.words, publisher: 'A practice', ...words } }, day),
  );

describe('the slice of the Library for making forms', () => {
  it.each(library.forms.map(({ id }) => id))('gives the form that the whole gives: %s', (id) => {
    expect(buildForm(slim, id).sections).toEqual(buildForm(library, id).sections);
    expect(buildForm(slim, id).sources).toEqual(buildForm(library, id).sources);
  });

  it('gives every manoeuvre as the whole gives it', () => {
    const all = madeForm(
      slim,
      definitionOfChoice(slim, { ...startingChoice(), added: [...known.manoeuvres], words: said }, day),
    );
    const whole = { ...library, forms: [...library.forms, all.definition] };
    expect(buildForm(whole, all.definition.id)).toEqual(all.form);
    expect(all.form.sections.flatMap(({ items }) => items)).toHaveLength(
      library.protocols.flatMap(({ manoeuvres }) => manoeuvres).length,
    );
  });

  it('holds nothing that only pages say', () => {
    expect(JSON.stringify(sent)).not.toMatch(/"(technique|adaptations|abnormal|appliesTo|tell)":/);
  });
});

describe('a made form', () => {
  it('is the stock form in all but its identity and rights when nothing is changed', () => {
    const stock = buildForm(library, 'short-visit');
    const { form } = made(exam('short-visit'));
    expect(form.sections).toEqual(stock.sections);
    expect(form.leavesOut).toBe(stock.leavesOut);
    expect(form.id).toBe('short-examination');
    expect([form.status, form.version, form.date]).toEqual(['draft', '0.1.0', day]);
    expect(form.copyright).toContain(`Made from Fingerbreadth ${library.version}, not reviewed by Fingerbreadth.`);
  });

  it('keeps what must not be missed, and says what was taken off', () => {
    const whole = exam('chest-pain');
    const own = known.exams.find(({ id }) => id === 'chest-pain')?.manoeuvres ?? [];
    const { form } = made(withTicked(known, whole, [...own.slice(1), 'gait']));
    const titles = new Map(library.protocols.flatMap(({ manoeuvres }) => manoeuvres.map((one) => [one.id, one.title])));
    expect(form.mustNotMiss).toEqual(library.forms.find(({ id }) => id === 'chest-pain')?.mustNotMiss);
    expect(form.mustNotMiss.length).toBeGreaterThan(0);
    expect(form.leavesOut).toContain(
      `Taken off the examination that it was made from: ${titles.get(own[0] ?? '') ?? 'none'}.`,
    );
    const held = form.sections.flatMap(({ items }) => items.map(({ manoeuvre }) => manoeuvre));
    expect(held).toEqual(expect.arrayContaining([...own.slice(1), 'gait', 'unwell-first', 'finish-and-explain']));
    expect(held).not.toContain(own[0]);
  });

  it('is named after its content and publisher: a UUID of version 8 (RFC 9562, 5.8)', () => {
    const { form } = made(exam('intake'));
    expect(form.url).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(made(exam('intake')).form.url).toBe(form.url);
    const others = [
      made(exam('intake'), { title: 'Another' }),
      made(exam('intake'), { publisher: 'Another' }),
      made({ ...exam('intake'), added: ['gait'] }),
    ];
    expect(new Set([form.url, ...others.map((one) => one.form.url)]).size).toBe(4);
    expect(made(exam('intake'), { url: 'https://a.example.org/f' }).form.url).toBe('https://a.example.org/f');
  });

  it('never has the id of a stock form, and has one whatever its title is written in', () => {
    expect(made(exam('intake'), { title: 'Short  visit' }).form.id).toBe('short-visit-own');
    expect(made(exam('intake'), { title: 'Überblick: größer' }).form.id).toBe('uberblick-gro-er');
    expect(made(exam('intake'), { title: 'A title '.repeat(9) }).form.id).toBe('a-title-a-title-a-title-a-title');
    expect(made(exam('intake'), { title: 'w'.repeat(40) }).form.id).toBe('w'.repeat(32));
    expect(made(exam('intake'), { title: '字' }).form.id).toBe('made-form');
  });

  it.each([{ title: 'Our visit' }, { url: 'https://a.example.org/f' }])(
    'is sound by every rule of forms: %j',
    (words) => {
      const { form } = made(exam('heart-and-lungs'), words);
      expect(formSchema.safeParse(form).error?.issues ?? []).toEqual([]);
      expect(invariants(questionnaireOf(form))).toEqual([]);
    },
  );

  it('is shown with every item, its positions and its time', () => {
    const { sum, html } = liveForm(made(exam('short-visit'), { title: '<b>' }), '/sub/');
    expect(sum).toMatch(/^\d+ items, \d+ blanks, about \d+ minutes\.$/);
    const { form } = made(exam('short-visit'));
    for (const { manoeuvre, title } of form.sections.flatMap(({ items }) => items)) {
      expect(html).toContain(`/${manoeuvre}/`);
      expect(html).toContain(title.replaceAll('&', '&amp;'));
    }
    expect(html.match(/class="headed part"/g)).toHaveLength(form.sections.length + 1);
    expect(html).not.toContain('<b></b>');
  });
});

describe('the definition', () => {
  it('comes back from its file as it was, and makes the same form from the whole Library', () => {
    const choice = withTicked(known, exam('chest-pain'), ['gait', 'radial-pulse']);
    const { definition, form } = made(choice, { title: 'Line: "one" # two', purpose: ' Two\n\nlines.  ' });
    const read = formDefinition.parse(parse(definitionYaml(definition)));
    expect(read).toEqual(definition);
    expect(read.purpose).toBe('Two lines.');
    expect(buildForm({ ...library, forms: [...library.forms, read] }, read.id)).toEqual(form);
  });

  it('is refused when its schema refuses it', () => {
    const { definition } = made(exam('intake'));
    expect(() => definitionYaml({ ...definition, title: ' ' })).toThrow('“title” is empty');
    expect(() => definitionYaml({ ...definition, url: 'http://a.example.org' })).toThrow('“url”');
  });
});

describe('the files of a made form', () => {
  it('say in every text format what it was made from and that nobody reviewed it', async () => {
    const form = made(exam('intake'));
    const noPdf = (): Promise<never> => Promise.reject(new Error('No PDF is asked for here.'));
    for (const { ending } of makeFiles.filter((file) => !/pdf|zip/.test(file.ending))) {
      const { bytes, name } = await finishedFile(form, ending, noPdf);
      const parts = ending === 'docx' ? unzipped(bytes).map((part) => part.bytes) : [bytes];
      const text = parts.map((part) => new TextDecoder().decode(part)).join('\n');
      expect(text.replace(/\s+/g, ' '), name).toContain('not reviewed by Fingerbreadth');
      expect(name).toBe(`intake-measurements.${ending}`);
    }
  });

  it('are together in one archive, the PDFs too', async () => {
    const pdf = (_made: MadeForm, paper: string): Promise<Uint8Array<ArrayBuffer>> =>
      Promise.resolve(new Uint8Array(new TextEncoder().encode(paper)));
    const { bytes } = await finishedFile(made(exam('intake')), 'zip', pdf);
    const paths = unzipped(bytes).map(({ path }) => path.replace(/^[^/]+\//, ''));
    const own = makeFiles.filter(({ ending }) => ending !== 'zip').map(({ ending }) => `intake-measurements.${ending}`);
    expect(paths).toEqual(['manifest.json', ...own, 'changes.txt', 'licences.txt', 'sources.txt']);
  });
});
