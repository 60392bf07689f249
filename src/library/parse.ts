import type { Content, Reference, Report } from './content.ts';
import { readGuide, readProtocol } from './mdx/protocol.ts';
import type { ContentFile } from './read.ts';
import { readTables } from './tables.ts';

/** Parses every file of a content folder into drafts with places; what cannot be parsed is filed and left out. */
export function parseContent(root: string, files: readonly ContentFile[], report: Report, today?: string): Content {
  const tables = readTables(files, report);
  const positions = tables.positions.map((entry) => entry.value.id);
  const references: Reference[] = [];
  const inFolder = (folder: RegExp): ContentFile[] => files.filter(({ path }) => folder.test(path));
  return {
    root,
    tables,
    references,
    protocols: inFolder(/^protocols\/[^/]+\.mdx$/).flatMap(
      (file) => readProtocol(file, positions, references, report) ?? [],
    ),
    guides: inFolder(/^guides\/[^/]+\.mdx$/).flatMap((file) => readGuide(file, references, report) ?? []),
    ...(today === undefined ? {} : { today }),
  };
}
