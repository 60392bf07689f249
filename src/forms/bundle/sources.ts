import type { Form, FormSource } from '../../../schemas/form.ts';
import { statusWords } from '../../text/source-status.ts';
import { editionWords } from '../edition.ts';
import { wrapped } from '../plain/wrap.ts';

const statuses = ['seen', 'abstract', 'memory', 'none'] as const;

function group(sources: readonly FormSource[], status: (typeof statuses)[number]): string[][] {
  const own = sources.filter((source) => source.status === status);
  if (own.length === 0) return [];
  const { label, meaning } = statusWords[status];
  const head = wrapped(`${label} (${own.length}): ${meaning}.`);
  return [head, ...own.map(({ citation }) => wrapped(`${citation}.`, '- ', 2))];
}

/** What a form rests on and how each source was read, as plain text; says so where none were kept with it. */
export function sourceList(form: Form): string {
  const sources = form.sources ?? [];
  const blocks = [
    [`Sources of ${editionWords(form)}, ${form.date}`],
    ...(sources.length === 0
      ? [['No list of sources was kept with this form.']]
      : statuses.flatMap((status) => group(sources, status))),
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}
