import { escapeHtml } from '../text/html.ts';
import type { SearchRecord } from './record.ts';

/**
 * Pagefind's own ranking gives a match in the title five times the weight of one in any other field and adds the
 * fields up, whatever field it is. A name that people type must count as much as the title and a little more (who
 * types "neck veins" wants them measured, not the page whose title happens to say so), so the names fill six fields.
 */
const nameFields = ['names', 'names-2', 'names-3', 'names-4', 'names-5', 'names-6'] as const;

/**
 * Every word typed must be on a page for it to be found. These are typed round a name and tell no page from another, so
 * each page has them; a word that is everywhere weighs nothing.
 */
export const smallWords: readonly string[] = (
  'a abnormal an and at by can check do does exam examination examine examining finding findings for from how i in is ' +
  'it my normal of on or sign signs technique test tests the to what when with you'
).split(' ');

/** A record as the HTML page that Pagefind reads: fields and filters first, then the passages that it may quote. */
export function recordHtml(record: SearchRecord, order: number): string {
  const parts = [...fields(record).map(fieldHtml), ...filters(record), ...passages(record)];
  const sort = `data-pagefind-sort="order:${String(order).padStart(4, '0')}"`;
  return `<html lang="en"><body><main data-pagefind-body ${sort}>${parts.join('')}</main></body></html>`;
}

type Field = readonly [name: string, text: string | undefined];

function fields({
  title,
  names,
  spellings,
  filters: { position = [], instrument = [], scope = [] },
  kind,
  shown,
}: SearchRecord): Field[] {
  return [
    ['title', title],
    ...nameFields.map((name): Field => [name, names.join('; ')]),
    ['spellings', [...spellings, ...smallWords].join(' ')],
    ['circumstances', [...position, ...instrument, ...scope].join('; ')],
    ['kind', kind],
    ...Object.entries(shown),
  ];
}

const fieldHtml = ([name, text = '']: Field): string =>
  text === '' ? '' : `<p data-pagefind-ignore data-pagefind-meta="${name}">${escapeHtml(text)}</p>`;

function filters(record: SearchRecord): string[] {
  return Object.entries(record.filters).flatMap(([name, values]) =>
    values.map((value) => `<p data-pagefind-ignore data-pagefind-filter="${name}">${escapeHtml(value)}</p>`),
  );
}

function passages(record: SearchRecord): string[] {
  return record.passages.map(({ text, weight }) => `<p data-pagefind-weight="${weight}">${escapeHtml(text)}</p>`);
}
