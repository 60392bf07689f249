import { unzipSync, type Zippable, zipSync } from 'fflate';

/** A file of an archive: its path, with forward slashes, and its bytes. */
export interface ArchiveFile {
  path: string;
  bytes: Uint8Array;
}

/** Stored with every file: archives made of the same files are the same bytes. The earliest day that the format can hold. */
const storedTime = '1980-01-01T00:00:00';

/** Packs files in the order given. Throws RangeError when a path comes twice. */
export function zipped(files: readonly ArchiveFile[]): Uint8Array<ArrayBuffer> {
  const paths = files.map(({ path }) => path);
  const twice = paths.find((path, index) => paths.indexOf(path) < index);
  if (twice !== undefined) throw new RangeError(`The archive has two files "${twice}"; each path once.`);
  const entries: Zippable = Object.fromEntries(files.map(({ path, bytes }) => [path, bytes]));
  return zipSync(entries, { level: 6, mtime: storedTime });
}

/** The files of an archive in its order. */
export function unzipped(archive: Uint8Array): ArchiveFile[] {
  return Object.entries(unzipSync(archive)).map(([path, bytes]) => ({ path, bytes }));
}
