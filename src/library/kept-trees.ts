import type { Root } from 'mdast';
import { sha256 } from './hash.ts';
import { keptFolder } from './kept-folder.ts';
import type { ContentFile } from './read.ts';

/** The parsers' versions and the way they are called decide what a text parses to. */
const makers = ['package-lock.json', 'src/library/mdx/parse.ts'];

/**
 * Pages with the trees that the same texts gave in an earlier run; the others hand theirs over for the next. Parsing is
 * the longest part of a check, and an author changes one page at a time.
 */
export function withKeptTrees(files: readonly ContentFile[]): ContentFile[] {
  const kept = keptFolder('.cache/pages', makers);
  return files.map((file) => {
    if (!file.path.endsWith('.mdx')) return file;
    const name = `${sha256(file.text)}.json`;
    const tree = kept.read(name);
    if (tree !== undefined) return { ...file, tree: JSON.parse(new TextDecoder().decode(tree)) as Root };
    return { ...file, keep: (root) => kept.write(name, JSON.stringify(root)) };
  });
}
