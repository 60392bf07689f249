import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Line } from '../../schemas/inline.ts';
import { siteFonts } from '../../src/cli/site-fonts.ts';
import { wordsOf } from '../../src/library/readability.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { thin } from '../../src/text/numbers.ts';
import { plainText } from '../../src/text/plain.ts';

const library = requireLibrary('content');
const manoeuvres = library.protocols.flatMap((protocol) => protocol.manoeuvres);
const text = (line: Line): string => plainText(line, library);

describe('a library whose pages were parsed in an earlier run', () => {
  it('is the same, and so are the places of its faults', () => {
    for (let run = 0; run < 2; run++) expect(requireLibrary('content', { keepTrees: true })).toEqual(library);
  });
});

describe('the text of the library', () => {
  it('says hardly anything twice: under 1 % of sentences stand in two manoeuvres', () => {
    const seen = new Map<string, string>();
    const repeated: string[] = [];
    for (const one of manoeuvres) {
      for (const line of [...one.technique, ...one.normal, ...one.abnormal, ...one.errors, ...one.adaptations]) {
        const sentence = text(line);
        if (wordsOf(sentence).length < 6) continue;
        const owner = seen.get(sentence);
        if (owner !== undefined && owner !== one.id) repeated.push(`${owner} = ${one.id}: ${sentence}`);
        seen.set(sentence, one.id);
      }
    }
    expect(seen.size).toBeGreaterThan(300);
    expect(repeated.length / seen.size, repeated.join('\n')).toBeLessThan(0.01);
  });

  it('has a glyph in the site font for every character', () => {
    const characters = siteFonts.find(({ file }) => file.startsWith('fira-sans-400'))?.characters ?? '';
    // The thin space is only white; any font of the reader's machine draws it.
    const known = characters + thin;
    const lines = manoeuvres.flatMap((one) => [
      ...[
        ...one.tell,
        ...one.technique,
        ...one.normal,
        ...one.abnormal,
        ...one.cautions,
        ...one.errors,
        ...one.adaptations,
        one.aim,
      ].map(text),
      ...one.redFlags.flatMap(({ finding, action }) => [text(finding), text(action)]),
      ...one.records.map(({ label }) => label),
      one.title,
    ]);
    const lacking = new Set(
      lines.flatMap((line) => Array.from(line)).filter((character) => !known.includes(character)),
    );
    expect([...lacking]).toEqual([]);
  });

  it('names a published source for every value, scale and ratio, or says that it is common practice or from memory', () => {
    const status = new Map(library.sources.map(({ id, status: read }) => [id, read]));
    const figures = [...library.values, ...library.scales, ...library.evidence];
    expect(figures.length).toBeGreaterThan(30);
    expect(figures.filter(({ source }) => status.get(source) === undefined).map(({ id }) => id)).toEqual([]);
    expect(library.evidence.filter(({ source }) => status.get(source) === 'none').map(({ id }) => id)).toEqual([]);
  });

  it('uses every value, scale and evidence entry somewhere', () => {
    const content = JSON.stringify(library.protocols);
    const used = (type: string, id: string): boolean => content.includes(`{"type":"${type}","id":"${id}"}`);
    const inRecords = new Set(
      manoeuvres.flatMap((one) =>
        one.records.flatMap((record) =>
          record.kind === 'quantity' ? (record.value ?? []) : record.kind === 'scale' ? record.scale : [],
        ),
      ),
    );
    const related = new Set(library.evidence.flatMap(({ disagreesWith }) => disagreesWith));
    const idle = [
      ...library.values.filter(
        ({ id }) => !used('value', id) && !inRecords.has(id) && !library.tools.some((tool) => tool.values.includes(id)),
      ),
      ...library.scales.filter(({ id }) => !used('scale', id) && !inRecords.has(id)),
      ...library.evidence.filter(({ id }) => !used('evidence', id) && !related.has(id)),
    ];
    expect(idle.map(({ id }) => id)).toEqual([]);
  });

  it('uses every source', () => {
    const content = JSON.stringify([
      library.protocols,
      library.values,
      library.scales,
      library.evidence,
      library.tools,
    ]);
    const guides = library.guides.map(({ id }) => readFileSync(`content/guides/${id}.mdx`, 'utf8')).join('\n');
    expect(
      library.sources
        .filter(({ id }) => !content.includes(`"${id}"`) && !guides.includes(`source:${id})`))
        .map(({ id }) => id),
    ).toEqual([]);
  });

  it('gives inspection before touch in the abdomen: look, listen, percuss, light, deep', () => {
    const order = [
      'abdomen-inspection',
      'bowel-sounds',
      'abdomen-percussion',
      'abdomen-light-palpation',
      'abdomen-deep-palpation',
    ];
    for (const [index, id] of order.entries()) {
      const one = manoeuvres.find((other) => other.id === id);
      expect(one?.after ?? [], id).toEqual(expect.arrayContaining(order.slice(0, index)));
    }
  });

  it('listens to the carotid before feeling it, and looks at the neck veins before either', () => {
    const after = (id: string): string[] => manoeuvres.find((one) => one.id === id)?.after ?? [];
    expect(after('carotid-pulse')).toEqual(expect.arrayContaining(['carotid-bruit', 'jugular-venous-pressure']));
    expect(after('carotid-bruit')).toContain('jugular-venous-pressure');
  });
});
