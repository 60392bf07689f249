import { isMap, isPair, isScalar, LineCounter, parseDocument, type Document, type Node } from 'yaml';
import type { z } from 'zod';
import type { Entry, Report } from './content.ts';
import type { At } from './faults.ts';
import type { ContentFile } from './read.ts';
import { reportIssues } from './schema-faults.ts';

/** A parsed YAML text with the places of its parts. */
export interface YamlText {
  value: unknown;
  /** Place of the part at `path`, or of the nearest part around it that exists. */
  at: (path?: readonly PropertyKey[]) => At;
}

/**
 * Parses YAML that starts `firstLine` lines down in `file`. Every syntax error and
 * duplicate key is filed, and aliases that multiply without end; undefined when there was any.
 */
export function parseYaml(text: string, file: string, report: Report, firstLine = 1): YamlText | undefined {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, uniqueKeys: true });
  const place = (offset: number): At => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(1, line) + firstLine - 1, column: Math.max(1, col) };
  };
  const tab = document.errors.length > 0 ? /^ *\t/m.exec(text) : null;
  if (tab !== null) {
    report(place(tab.index), 'yaml-syntax', 'A tab indents this line. YAML takes spaces only.');
    return undefined;
  }
  for (const error of document.errors) {
    report(
      place(error.pos[0]),
      'yaml-syntax',
      `YAML cannot be read here: ${error.message}. Mend the syntax; text with ": " or " #" in it needs quotes.`,
    );
  }
  if (document.errors.length > 0) return undefined;
  try {
    return { value: document.toJS() as unknown, at: (path = []) => place(offsetOf(document, path)) };
  } catch (error) {
    // Aliases that multiply without end are only found when they are followed.
    const reason = error instanceof Error ? error.message : String(error);
    report(place(0), 'yaml-syntax', `YAML cannot be read here: ${reason}. Write the entries out without aliases.`);
    return undefined;
  }
}

/** Reads a file that is a list of entries of one noun. Entries that do not fit are filed and left out. */
export function readList<T>(file: ContentFile, schema: z.ZodType<T>, report: Report): Entry<T>[] {
  const yaml = parseYaml(file.text, file.file, report);
  if (yaml === undefined) return [];
  if (!Array.isArray(yaml.value)) {
    report(yaml.at(), 'schema', 'The file is not a list. Write each entry as "- id: …" with its keys indented below.');
    return [];
  }
  return yaml.value.flatMap((value, index) =>
    readEntry(value, schema, (path = []) => yaml.at([index, ...path]), report),
  );
}

/** Reads a file that is one entry of a noun. */
export function readSingle<T>(file: ContentFile, schema: z.ZodType<T>, report: Report): Entry<T>[] {
  const yaml = parseYaml(file.text, file.file, report);
  return yaml === undefined ? [] : readEntry(yaml.value, schema, yaml.at, report);
}

function readEntry<T>(value: unknown, schema: z.ZodType<T>, at: Entry<T>['at'], report: Report): Entry<T>[] {
  const result = schema.safeParse(value);
  if (result.success) return [{ value: result.data, at }];
  reportIssues(result.error.issues, schema, value, at, report);
  return [];
}

function offsetOf(document: Document.Parsed, path: readonly PropertyKey[]): number {
  let node: unknown = document.contents;
  let offset = startOf(node) ?? 0;
  for (const key of path) {
    const pair = isMap(node)
      ? node.items.find((item) => isPair(item) && isScalar(item.key) && String(item.key.value) === String(key))
      : undefined;
    node = pair ? pair.value : (node as { get?(key: unknown, keep: true): unknown } | null)?.get?.(key, true);
    const found = startOf(pair?.key) ?? startOf(node);
    if (found === undefined) return offset;
    offset = found;
  }
  return offset;
}

function startOf(node: unknown): number | undefined {
  return (node as Node | null | undefined)?.range?.[0];
}
