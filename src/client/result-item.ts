import { quotation } from '../search/quotation.ts';
import type { FoundPage } from '../search/search-index.ts';

/** A found page as an item of the list of results, for the words looked up; `mark` draws its position. */
export function resultItem(page: FoundPage, typed: string, mark: Node | undefined): HTMLLIElement {
  const { url, meta } = page;
  const link = element('a', meta['title'] ?? '');
  link.href = url;
  const item = element('li');
  if (mark !== undefined) item.append(mark);
  item.append(link, element('p', placeOf(meta), 'place'), quoted(page, typed));
  if (meta['flags'] !== undefined) item.append(element('p', `Red flags: ${meta['flags']}`, 'flags'));
  return item;
}

/** An element with text and, where given, a class. */
export function element<Tag extends 'a' | 'button' | 'li' | 'mark' | 'p'>(
  tag: Tag,
  text = '',
  name = '',
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  made.textContent = text;
  if (name !== '') made.className = name;
  return made;
}

function placeOf({ kind, system, position }: FoundPage['meta']): string {
  const words = kind === 'Manoeuvre' ? [system, position] : [kind];
  return words.filter((word) => word !== undefined).join(' · ');
}

function quoted(page: FoundPage, typed: string): HTMLParagraphElement {
  const paragraph = element('p');
  paragraph.append(...quotation(page, typed).map(({ text, marked }) => (marked ? element('mark', text) : text)));
  return paragraph;
}
