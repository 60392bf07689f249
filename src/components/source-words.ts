import type { Source } from '../../schemas/source.ts';

/** Returns a source's short name: "McGee 1998", "Lederle and Simel 1999", "Seth and others 2002", "Common practice". */
export function shortSource(source: Source): string {
  if (source.kind === 'practice') return source.title;
  const authors = source.authors.replace(/ \(editors?\)$/, '').split(/, /);
  const surnames = authors.map(surname);
  const who =
    surnames[0] === undefined ? (authors[0] ?? source.authors) : people(surnames[0], surnames[1], authors.length);
  return source.year === undefined ? who : `${who} ${source.year}`;
}

/** Returns the surname of an author written as "Surname AB", or undefined for a body, which may end in its country. */
function surname(author: string): string | undefined {
  return /^(.*\p{Ll}.*) (?!UK$|USA?$|EU$)\p{Lu}{1,6}$/u.exec(author)?.[1];
}

function people(first: string, second: string | undefined, count: number): string {
  if (count === 1) return first;
  return count === 2 && second !== undefined ? `${first} and ${second}` : `${first} and others`;
}

/** Returns where a source was published, in one line without a final stop, for example a journal with volume and pages. */
export function publishedIn({ container, year }: Source): string {
  return [container, year].filter((part) => part !== undefined).join(', ');
}
