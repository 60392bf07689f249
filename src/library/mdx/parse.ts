import type { Root, RootContent } from 'mdast';
import type {} from 'mdast-util-mdx';
import { remark } from 'remark';
import remarkFrontmatter from 'remark-frontmatter';
import remarkMdx from 'remark-mdx';
import type { Node } from 'unist';
import { VFileMessage } from 'vfile-message';
import type { Report } from '../content.ts';
import type { At } from '../faults.ts';
import type { ContentFile } from '../read.ts';
import { parseYaml, type YamlText } from '../yaml-table.ts';

/** An MDX file as a tree, with its front matter apart. Nothing in it was run. */
export interface MdxTree {
  file: string;
  front: YamlText;
  /** Everything after the front matter. */
  children: RootContent[];
}

const processor = remark().use(remarkFrontmatter, ['yaml']).use(remarkMdx);

/** Parses one MDX file; files a fault and returns undefined when its syntax or front matter is broken. */
export function parseMdx(file: ContentFile, report: Report): MdxTree | undefined {
  const root = parseTree(file, report);
  if (root === undefined) return undefined;
  const [first, ...children] = root.children;
  if (first?.type !== 'yaml') {
    report(
      { file: file.file, line: 1, column: 1 },
      'front-matter',
      'The page has no front matter. Begin the file with "---", its keys, and "---" again.',
    );
    return undefined;
  }
  const front = parseYaml(first.value, file.file, report, 2);
  return front === undefined ? undefined : { file: file.file, front, children };
}

function parseTree(file: ContentFile, report: Report): Root | undefined {
  if (file.tree !== undefined) return file.tree;
  try {
    const tree = processor.parse(file.text);
    file.keep?.(tree);
    return tree;
  } catch (error) {
    if (!(error instanceof VFileMessage)) throw error;
    report(
      { file: file.file, ...placeIn(error) },
      'mdx-syntax',
      `MDX cannot be read from here on: ${plainReason(error.reason)}. In prose write "≤", "below", or \\< and \\{ instead of a bare < or {; close every tag that is opened.`,
    );
    return undefined;
  }
}

/** Where a message points; a tag left open is named by its place in the words alone. */
function placeIn({ line, column, reason }: VFileMessage): Pick<At, 'line' | 'column'> {
  const [, saidLine, saidColumn] = /\((\d+):(\d+)-/.exec(reason) ?? [];
  return { line: line ?? Number(saidLine ?? 1), column: column ?? Number(saidColumn ?? 1) };
}

/** Where a node starts. */
export function placeOf(node: Node, file: string): At {
  return { file, line: node.position?.start.line ?? 1, column: node.position?.start.column ?? 1 };
}

/** Whether a node is code that a page could run. */
export function isCode(node: Node): boolean {
  return ['mdxjsEsm', 'mdxFlowExpression', 'mdxTextExpression', 'html'].includes(node.type);
}

/** Files the fault for code in content. */
export function reportCode(node: Node, file: string, report: Report): void {
  report(
    placeOf(node, file),
    'code-in-content',
    'Code is not allowed in content: no import, export, {expression} or HTML. Write prose and the tags of the authoring format; a literal brace is \\{.',
  );
}

function plainReason(reason: string): string {
  return reason.replace(/\s*\((note:[^)]*|[\d:-]+)\)/g, '').replace(/[.\s]+$/, '');
}
