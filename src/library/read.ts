import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, posix } from 'node:path';
import type { Root } from 'mdast';
import type { Fault } from './faults.ts';

/** One file of a content folder, as text. */
export interface ContentFile {
  /** Path for messages: the folder as given, then the path inside it, with forward slashes. */
  file: string;
  /** Path inside the content folder, with forward slashes. */
  path: string;
  text: string;
  /** What a page parses to, where an earlier run of the same text kept it. */
  tree?: Root;
  /** Takes what a page parses to, for the next run. */
  keep?: (tree: Root) => void;
}

const wanted = /\.(mdx|yaml)$|^clinics\/[^/]+\/[^/]+\.svg$/;
/** Endings that an author may take for the wanted ones; such a file must not be passed over in silence. */
const misnamed = /\.(mdx?|markdown|ya?ml)$|^clinics\/[^/]+\/[^/]+\.svg$/i;

/** Frozen releases have their own reader: they are no tables, and what they hold is never linked anew. */
const released = 'forms/released/';
const anyReleased = /^(clinics\/[^/]+\/)?forms\/released\//;

/**
 * Reads every `.mdx` and `.yaml` file below `root` and the drawings of clinics, but the frozen releases, in a stable order; links are not followed, so that nothing
 * outside is read, nor are names that begin with a dot. A missing folder, a file that cannot be read, is empty,
 * is not UTF-8 or ends in `.md` or `.yml`, and a character that cannot be seen are faults.
 */
export function readContent(root: string): { files: ContentFile[]; faults: Fault[] } {
  const shown = root.replaceAll('\\', '/').replace(/\/+$/, '');
  const files: ContentFile[] = [];
  const faults: Fault[] = [];
  if (!isFolder(root)) {
    faults.push(fault(shown, 'This is not a folder. Give the path of a content folder, for example "content".'));
    return { files, faults };
  }
  for (const path of listFiles(root).filter((each) => !anyReleased.test(each))) {
    const file = `${shown}/${path}`;
    const { text, problem } = readText(root, path);
    if (problem !== undefined) faults.push(fault(file, problem));
    else {
      files.push({ file, path, text });
      faults.push(...unseenCharacters(file, text));
    }
  }
  return { files, faults };
}

/** Reads every file of the folder of frozen releases, its path inside the content folder; none when it is not there. */
export function readReleased(root: string): { files: ContentFile[]; faults: Fault[] } {
  const shown = root.replaceAll('\\', '/').replace(/\/+$/, '');
  const folder = join(root, released);
  const names = isFolder(folder) ? readdirSync(folder).filter((name) => !name.startsWith('.')) : [];
  const read = names.sort().map((name) => {
    const [path, file] = [`${released}${name}`, `${shown}/${released}${name}`];
    return { path, file, ...readUtf8(join(folder, name)) };
  });
  return {
    files: read.flatMap(({ path, file, text, problem }) => (problem === undefined ? [{ path, file, text }] : [])),
    faults: read.flatMap(({ file, problem }) => (problem === undefined ? [] : [fault(file, problem)])),
  };
}

/** Paths below `root`, sorted. Node's own recursion would follow links to folders. */
function listFiles(root: string, below = ''): string[] {
  return readdirSync(join(root, below), { withFileTypes: true })
    .flatMap((entry) => {
      const path = posix.join(below, entry.name);
      if (entry.isDirectory()) return listFiles(root, path);
      return entry.isFile() && misnamed.test(path) && !entry.name.startsWith('.') ? [path] : [];
    })
    .sort();
}

function readText(root: string, path: string): { text: string; problem?: string } {
  if (wanted.test(path)) return readUtf8(join(root, path));
  return { text: '', problem: 'The name does not end in .mdx (pages) or .yaml (tables). Rename the file.' };
}

function readUtf8(path: string): { text: string; problem?: string } {
  const problem = (text: string): { text: string; problem: string } => ({ text: '', problem: text });
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    return problem(`The file cannot be read: ${error instanceof Error ? error.message : String(error)}.`);
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return text.trim() === '' ? problem('The file is empty. Write its content or delete the file.') : { text };
  } catch {
    return problem('The file is not UTF-8 text. Save it with the encoding UTF-8.');
  }
}

/** Control, formatting and unassigned characters: they hide or turn round what a reader sees, and no font has them. */
function unseenCharacters(file: string, text: string): Fault[] {
  return [...text.matchAll(/(?![\t\n\r])\p{C}/gu)].map((match) => {
    const before = text.slice(0, match.index).split('\n');
    const code = (match[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
    const message = `The character U+${code} cannot be seen. Delete it.`;
    return { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1, rule: 'unseen-character', message };
  });
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function fault(file: string, message: string): Fault {
  return { file, line: 1, column: 1, rule: 'file', message };
}
