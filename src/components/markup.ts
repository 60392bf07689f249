import { escapeHtml } from '../text/html.ts';

/** HTML that may be put into a page as it is. */
export interface Markup {
  readonly html: string;
}

/** What may stand in a template: text is escaped, lists are joined, `false` and `undefined` are nothing. */
export type Part = Markup | string | number | false | undefined | readonly Part[];

/** HTML from a template whose words are safe by default. Pages and browser make the same sheet with it. */
export function markup(texts: TemplateStringsArray, ...parts: Part[]): Markup {
  return { html: texts.map((text, i) => text + htmlOf(parts[i])).join('') };
}

/** Takes HTML that was made safe elsewhere, such as a line of prose rendered from the library. */
export const trusted = (html: string): Markup => ({ html });

function htmlOf(part: Part): string {
  if (part === undefined || part === false) return '';
  if (typeof part === 'string' || typeof part === 'number') return escapeHtml(String(part));
  return 'html' in part ? part.html : part.map(htmlOf).join('');
}
