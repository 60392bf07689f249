import type { Inline, Line, Target } from '../../schemas/inline.ts';
import { referenceText } from './plain.ts';
import type { References } from './references.ts';

/** What an address is asked for: a link's target, or a reference to data. */
export type Addressable = Target | { kind: 'value' | 'scale' | 'evidence' | 'measure'; id: string };

/** A line as HTML; every link's address comes from `address`, so that the base path is added only here. */
export function htmlText(line: Line, library: References, address: (to: Addressable) => string): string {
  return line.map((part) => htmlPart(part, library, address)).join('');
}

function htmlPart(part: Inline, library: References, address: (to: Addressable) => string): string {
  switch (part.type) {
    case 'text':
      return escapeHtml(part.text);
    case 'strong':
      return `<strong>${htmlText(part.children, library, address)}</strong>`;
    case 'emphasis':
      return `<em>${htmlText(part.children, library, address)}</em>`;
    case 'link':
      return anchor(address(part.to), htmlText(part.children, library, address), part.to.kind === 'web' ? 'web' : '');
    default:
      return anchor(address({ kind: part.type, id: part.id }), escapeHtml(referenceText(part, library)), part.type);
  }
}

function anchor(address: string, html: string, kind: string): string {
  const rel = kind === 'web' ? ' rel="external noreferrer"' : '';
  const name = kind === '' || kind === 'web' ? '' : ` class="ref-${kind}"`;
  return `<a href="${escapeHtml(address)}"${name}${rel}>${html}</a>`;
}

/** Text made safe for HTML content and quoted attributes. */
export function escapeHtml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
