import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesBelow, siteFolder, type Edition } from '../site.ts';

/** A built page: its address below the base path and its kind, as the class of its body says it. */
export interface BuiltPage {
  kind: string;
  path: string;
  html: string;
}

/** Every built page of an edition, in the order of the addresses. */
export function builtPages(edition: Edition): BuiltPage[] {
  const folder = siteFolder(edition);
  const files = filesBelow(folder).filter((file) => file.endsWith('.html'));
  return files.map((file) => {
    const html = readFileSync(join(folder, file), 'utf8');
    return { kind: /<body class="([\w-]+)/.exec(html)?.[1] ?? 'none', path: file.replace(/index\.html$/, ''), html };
  });
}

/** A page that looks unlike the others of its kind: no position is filled at its edge. */
const inAnyPosition = 'protocols/preparation/unwell-first/';

/** Kinds whose pages differ in length alone, with hundreds of fields of a few sorts: the short one has every sort. */
const alike: Readonly<Record<string, string>> = {
  fill: 'forms/short-visit/fill/',
  watch: 'forms/short-visit/watch/',
};

/** Whether a page need not be looked at, since another of its kind shows all that it has. */
export const isAlike = ({ kind, path }: BuiltPage): boolean => (alike[kind] ?? path) !== path;

/** The longest page of each kind, in the order of the kinds: where most can go wrong; and one in any position. */
export function oneOfEachKind(edition: Edition): BuiltPage[] {
  const built = builtPages(edition).filter((page) => !isAlike(page));
  const longest = new Map<string, BuiltPage>();
  for (const page of built) {
    if (page.html.length > (longest.get(page.kind)?.html.length ?? 0)) longest.set(page.kind, page);
  }
  const others = built.filter(({ path }) => path === inAnyPosition).map((page) => ({ ...page, kind: 'any-position' }));
  return [...longest.values(), ...others].sort((a, b) => a.kind.localeCompare(b.kind));
}
