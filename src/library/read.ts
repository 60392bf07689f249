import { lstatSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Fault } from './faults.ts';

/** One file of a content folder, as text. */
export interface ContentFile {
  /** Path for messages: the folder as given, then the path inside it, with forward slashes. */
  file: string;
  /** Path inside the content folder, with forward slashes. */
  path: string;
  text: string;
}

const wanted = /\.(mdx|yaml)$/;

/** Reads every `.mdx` and `.yaml` file below `root`, in a stable order; links are not followed, so that nothing outside is read. A missing folder, an empty file and a file that is not UTF-8 are faults. */
export function readContent(root: string): { files: ContentFile[]; faults: Fault[] } {
  const shown = root.replaceAll('\\', '/').replace(/\/+$/, '');
  const files: ContentFile[] = [];
  const faults: Fault[] = [];
  if (!isFolder(root)) {
    faults.push(fault(shown, 'This is not a folder. Give the path of a content folder, for example "content".'));
    return { files, faults };
  }
  for (const path of listFiles(root)) {
    const file = `${shown}/${path}`;
    const text = decode(readFileSync(join(root, path)));
    if (text === undefined) faults.push(fault(file, 'The file is not UTF-8 text. Save it with the encoding UTF-8.'));
    else if (text.trim() === '') faults.push(fault(file, 'The file is empty. Write its content or delete the file.'));
    else files.push({ file, path, text });
  }
  return { files, faults };
}

function listFiles(root: string): string[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => wanted.test(path) && lstatSync(join(root, path)).isFile())
    .sort();
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function fault(file: string, message: string): Fault {
  return { file, line: 1, column: 1, rule: 'file', message };
}
