import type { Answer } from '../search/look-up.ts';
import { element } from './result-item.ts';

/**
 * What is said, and read out, about an answer to what was typed; `narrowed`, whether something was chosen beside it.
 * `accept` is called when the words that were put right are taken over.
 */
export function answerWords(
  typed: string,
  { hits, meant, partly }: Answer,
  narrowed: boolean,
  accept: () => void,
): (string | Node)[] {
  const count = hits.length === 1 ? '1 result' : `${hits.length} results`;
  if (meant !== undefined) {
    const button = element('button', meant);
    button.type = 'button';
    button.addEventListener('click', accept);
    return [`Nothing for “${typed}”. Did you mean `, button, `? ${count}.`];
  }
  if (hits.length === 0) return [typed && `Nothing for “${typed}”${narrowed ? ' with these choices' : ''}.`];
  return [partly ? `No page has all these words. Some of them: ${count}.` : `${count}.`];
}
