import packageJson from '../../package.json' with { type: 'json' };
import type { Library } from '../../schemas/library.ts';
import { faultLine, sortFaults, type Fault } from './faults.ts';
import type { Report } from './content.ts';
import { linkLibrary } from './link.ts';
import { withKeptTrees } from './kept-trees.ts';
import { parseContent } from './parse.ts';
import { readContent } from './read.ts';
import { rules } from './rules/index.ts';
import { applyRule } from './rules/rule.ts';

/** What came of reading a content folder. */
export interface Loaded {
  /** Present only when there is no fault. */
  library?: Library;
  /** Every fault, in reading order. */
  faults: Fault[];
  /** What deserves a look but does not fail. */
  warnings: Fault[];
}

/** How to read: the Library's version (package.json's by default) and the day that reviews are judged by. */
export interface LoadOptions {
  version?: string;
  today?: string;
  /** Keep what pages parse to in `.cache/`, so that the next run parses only those that changed. */
  keepTrees?: boolean;
}

/** Reads, parses, checks and links a content folder. All faults are found in one run; nothing is thrown for bad content. */
export function loadLibrary(root: string, options: LoadOptions = {}): Loaded {
  const { files: read, faults } = readContent(root);
  const files = options.keepTrees === true ? withKeptTrees(read) : read;
  const warnings: Fault[] = [];
  const reportTo =
    (list: Fault[]): Report =>
    (at, rule, message) =>
      void list.push({ ...at, rule, message });
  const content = parseContent(root, files, reportTo(faults), options.today);
  for (const rule of rules) applyRule(rule, content, reportTo(rule.level === 'warning' ? warnings : faults));
  if (content.protocols.length === 0 && faults.length === 0) {
    faults.push({
      file: root,
      line: 1,
      column: 1,
      rule: 'file',
      message: 'The folder holds no protocol. Write at least one page in protocols/.',
    });
  }
  const checked = { faults: sortFaults(faults), warnings: sortFaults(warnings) };
  return faults.length > 0
    ? checked
    : { ...checked, library: linkLibrary(content, options.version ?? packageJson.version) };
}

/** Reads a content folder that must be sound; throws one error that lists every fault. */
export function requireLibrary(root: string, options: LoadOptions = {}): Library {
  const { library, faults } = loadLibrary(root, options);
  if (library !== undefined) return library;
  throw new Error(`The content has ${faults.length} faults:\n${faults.map(faultLine).join('\n')}`);
}
