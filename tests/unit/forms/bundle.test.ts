import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../../schemas/form.ts';
import { type BundleFile, formBundle } from '../../../src/forms/bundle/bundle.ts';
import { formHash } from '../../../src/forms/form-hash.ts';
import { unzipped, zipped } from '../../../src/forms/zip.ts';
import { sha256 } from '../../../src/library/hash.ts';
import { present } from '../../fixtures/present.ts';
import { zipEntries } from '../../fixtures/zip-directory.ts';
import { fixtureForm } from './fixtures.ts';

const form = fixtureForm();
const files: BundleFile[] = [
  { name: 'fixture-form.txt', mediaType: 'text/plain', use: 'To read.', bytes: new TextEncoder().encode('Blank\n') },
  { name: 'fixture-form.bin', mediaType: 'application/octet-stream', use: 'None.', bytes: Uint8Array.of(0, 255, 7) },
];
const bundle = await formBundle({ form, files, sha256 });
const entries = new Map(unzipped(bundle).map(({ path, bytes }) => [path, bytes]));
const text = (name: string, of = entries): string =>
  new TextDecoder('utf-8', { fatal: true }).decode(present(of.get(`fixture-form-0.1.0/${name}`)));

interface Manifest {
  [key: string]: unknown;
  files: { name: string; size: number; sha256: string; mediaType: string; use: string }[];
}
const manifest = JSON.parse(text('manifest.json')) as Manifest;

/** SHA-256 by Node itself. Algorithm: NIST FIPS 180-4. */
const digest = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

describe('a bundle', () => {
  it('holds every file it was given, byte for byte, in a folder of its name and version', () => {
    for (const { name, bytes } of files) expect(entries.get(`fixture-form-0.1.0/${name}`)).toEqual(bytes);
    expect([...entries.keys()].map((path) => path.split('/')[1])).toEqual([
      ...['manifest.json', 'fixture-form.txt', 'fixture-form.bin', 'changes.txt', 'licences.txt', 'sources.txt'],
    ]);
  });

  it('is the same bytes for the same parts, whatever the clock says', async () => {
    expect(Buffer.compare(await formBundle({ form: structuredClone(form), files, sha256 }), bundle)).toBe(0);
  });

  it('says in its manifest what form it is, and of each other file its size and SHA-256', () => {
    const { id, version, url, hash } = form;
    expect(manifest).toMatchObject({ form: id, version, url, status: 'draft', contentHash: hash });
    const others = [...entries].filter(([path]) => !path.endsWith('manifest.json'));
    expect(manifest.files.map(({ name, size, sha256: sum }) => [name, size, sum])).toEqual(
      others.map(([path, bytes]) => [path.split('/')[1], bytes.length, digest(bytes)]),
    );
  });

  it('is an archive by the published format: every entry whole, by its checksum, none with the time of the clock', () => {
    const listed = zipEntries(bundle);
    expect(listed.map(({ path }) => path)).toEqual([...entries.keys()]);
    for (const { path, bytes, year } of listed) {
      expect(Buffer.compare(bytes, present(entries.get(path))), path).toBe(0);
      expect(year).toBe(1980);
    }
  });

  it('refuses two files of one name', async () => {
    await expect(formBundle({ form, files: [...files, present(files[0])], sha256 })).rejects.toThrow(/two files/);
    expect(() =>
      zipped([
        { path: 'a', bytes: Uint8Array.of() },
        { path: 'a', bytes: Uint8Array.of(1) },
      ]),
    ).toThrow(RangeError);
  });
});

describe('its lists', () => {
  it('says of a first release that there is none before it', () => {
    expect(text('changes.txt')).toContain('First release');
  });

  it('says what changed since the release before', async () => {
    const [section, ...sections] = structuredClone(form.sections);
    const later = { ...form, version: '2.0.0', sections: sections.length > 0 ? sections : [present(section)] };
    const changed: Form = { ...later, hash: formHash(later) };
    const own = new Map(
      unzipped(await formBundle({ form: changed, before: form, files, sha256 })).map(({ path, bytes }) => [
        path.replace('2.0.0', '0.1.0'),
        bytes,
      ]),
    );
    expect(text('changes.txt', own)).toContain('Compared with fixture-form 0.1.0');
    expect(text('changes.txt', own)).toMatch(/Major: [\s\S]*Do greet[^\n]*removed/);
  });

  it('keeps the form’s licence, LOINC’s notice word for word, and the owners of its scales', () => {
    const flat = text('licences.txt').replaceAll(/\s+/g, ' ');
    // LOINC and RELMA terms of use: the notice that stands wherever a code does.
    expect(flat).toContain('This material contains content from LOINC (http://loinc.org).');
    expect(flat).toContain(form.copyright);
    expect(flat).toContain('Fixture grades: Nobody N. On fixtures. 2020; table 2');
    expect(flat).toContain('SIL Open Font License');
  });

  it('names each source with how it was read, and says so where none were kept', async () => {
    expect(text('sources.txt')).toContain('Seen (1): read in a stored copy at the place that is used.');
    expect(text('sources.txt').replaceAll(/\s+/g, ' ')).toContain('- Nobody N. On fixtures. 2020. throughout.');
    const { sources: _, ...without } = form;
    const own = new Map(
      unzipped(await formBundle({ form: without, files, sha256 })).map(({ path, bytes }) => [path, bytes]),
    );
    expect(text('sources.txt', own)).toContain('No list of sources was kept with this form.');
  });

  it('does not change what a form is known by when a source is read again', () => {
    const reread = { ...form, sources: form.sources?.map((source) => ({ ...source, status: 'memory' as const })) };
    expect(formHash(reread as Form)).toBe(form.hash);
  });
});
