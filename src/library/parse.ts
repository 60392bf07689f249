import type { Content, Reference, Report } from './content.ts';
import { readGuide, readProtocol } from './mdx/protocol.ts';
import type { ContentFile } from './read.ts';
import { readTables } from './tables.ts';

const pages = { protocols: /^protocols\/[^/]+\.mdx$/, guides: /^guides\/[^/]+\.mdx$/ };

/** Parses every file of a content folder into drafts with places; what cannot be parsed is filed and left out. */
export function parseContent(root: string, files: readonly ContentFile[], reportTo: Report, today?: string): Content {
  const faulty = new Set<string>();
  const report: Report = (at, rule, message) => {
    faulty.add(at.file);
    reportTo(at, rule, message);
  };
  const tables = readTables(files, report);
  const positions = tables.positions.map((entry) => entry.value.id);
  const references: Reference[] = [];
  const inFolder = (folder: RegExp): ContentFile[] => files.filter(({ path }) => folder.test(path));
  const protocols = inFolder(pages.protocols).flatMap(
    (file) => readProtocol(file, positions, references, report) ?? [],
  );
  const guides = inFolder(pages.guides).flatMap((file) => readGuide(file, references, report) ?? []);
  reportStrayPages(files, report);
  const unread = idsWritten(files.filter(({ file }) => faulty.has(file)));
  const drawings = new Map(files.filter(({ path }) => path.endsWith('.svg')).map(({ path, text }) => [path, text]));
  return { root, tables, references, protocols, guides, unread, drawings, ...(today === undefined ? {} : { today }) };
}

function reportStrayPages(files: readonly ContentFile[], report: Report): void {
  for (const { file, path } of files) {
    if (!path.endsWith('.mdx') || Object.values(pages).some((folder) => folder.test(path))) continue;
    const message = 'The page stands where none is read. Pages live in protocols/ and guides/, not in folders below.';
    report({ file, line: 1, column: 1 }, 'file', message);
  }
}

/** Every id that some files give, as near as their text tells: of pages, manoeuvres and entries of tables. */
function idsWritten(files: readonly ContentFile[]): Set<string> {
  const given = /<Manoeuvre\s[^>]*?\bid=["']([\w-]+)|^[-\s]*id:\s*["']?([\w-]+)/gm;
  const inText = files.flatMap(({ text }) =>
    [...text.matchAll(given)].flatMap(([, page, table]) => page ?? table ?? []),
  );
  return new Set([...inText, ...files.flatMap(({ path }) => /([^/]+)\.mdx$/.exec(path)?.[1] ?? [])]);
}
