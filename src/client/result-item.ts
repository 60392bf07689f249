import type { FoundPage } from '../search/search-index.ts';

/** A found page as an item of the list of results; `mark` draws its position. */
export function resultItem({ url, excerpt, meta }: FoundPage, mark: Node | undefined): HTMLLIElement {
  const link = element('a', meta['title'] ?? '');
  link.href = url;
  const item = element('li');
  if (mark !== undefined) item.append(mark);
  item.append(link, element('p', placeOf(meta), 'place'), quotation(excerpt));
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

/** The index quotes in HTML; here its words and marks alone are taken over. */
function quotation(excerpt: string): HTMLParagraphElement {
  const paragraph = element('p');
  for (const [i, part] of excerpt.split(/<\/?mark>/).entries()) {
    const text = part.replaceAll('&lt;', '<').replaceAll('&gt;', '>');
    paragraph.append(i % 2 === 1 ? element('mark', text) : text);
  }
  return paragraph;
}
