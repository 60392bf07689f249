import type { Form } from '../../../schemas/form.ts';
import { zipped } from '../zip.ts';
import { changeList } from './changes.ts';
import { licences } from './licences.ts';
import { sourceList } from './sources.ts';

/** A file of a bundle. */
export interface BundleFile {
  name: string;
  mediaType: string;
  /** What it is good for. */
  use: string;
  bytes: Uint8Array;
}

/** What a bundle is made of. */
export interface BundleRequest {
  form: Form;
  /** The form in every other format. */
  files: readonly BundleFile[];
  /** The release before this one, where there is one. */
  before?: Form | undefined;
  /** SHA-256 of bytes as hex: the caller's, since a browser has another than Node. */
  sha256: (bytes: Uint8Array) => string | Promise<string>;
}

/** Name of the manifest within a bundle. */
export const manifestName = 'manifest.json';

const text = (name: string, use: string, words: string): BundleFile => ({
  ...{ name, use, mediaType: 'text/plain; charset=utf-8' },
  bytes: new TextEncoder().encode(words),
});

/**
 * Everything of one form in one zip archive, in a folder of its name and version: its files, what changed, licences,
 * sources, and a manifest that tells whether a file is whole. The same parts, the same bytes.
 * Rejects with RangeError when two files have one name.
 */
export async function formBundle({ form, files, before, sha256 }: BundleRequest): Promise<Uint8Array<ArrayBuffer>> {
  const all = [
    ...files,
    text('changes.txt', 'What changed since the release before.', changeList(form, before)),
    text('licences.txt', 'Who owns what, and what may be done with it.', licences(form)),
    text('sources.txt', 'What the form rests on, and how each source was read.', sourceList(form)),
  ];
  const manifest = new TextEncoder().encode(await manifestOf(form, all, sha256));
  const folder = `${form.id}-${form.version}`;
  const paths = [{ name: manifestName, bytes: manifest }, ...all];
  return zipped(paths.map(({ name, bytes }) => ({ path: `${folder}/${name}`, bytes })));
}

async function manifestOf(form: Form, files: readonly BundleFile[], sha256: BundleRequest['sha256']): Promise<string> {
  const { id, title, url, version, status, date, publisher, hash } = form;
  const listed = files.map(async ({ name, mediaType, use, bytes }) => {
    return { name, mediaType, use, size: bytes.length, sha256: await sha256(bytes) };
  });
  const value = { form: id, title, url, version, status, date, publisher, contentHash: hash };
  return `${JSON.stringify({ ...value, files: await Promise.all(listed) }, undefined, 2)}\n`;
}
