import type { Library } from '../../schemas/library.ts';
import type { Source } from '../../schemas/source.ts';

/** The source of a scale or value in words, with the place in it; nothing when the library has no such source. */
export function citation(
  library: Library,
  { source: id, where }: { source: string; where: string },
): { source?: string } {
  const source = library.sources.find((each) => each.id === id);
  return source === undefined ? {} : { source: sourceWords(source, where) };
}

function sourceWords({ kind, authors, title, year }: Source, where: string): string {
  if (kind === 'practice') return 'Common practice';
  return `${[authors, title, year].filter((part) => part !== undefined).join('. ')}; ${where}`;
}
