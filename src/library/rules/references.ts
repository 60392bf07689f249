import type { Content, Reference } from '../content.ts';
import { didYouMean } from '../suggest.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

const homes: Record<Reference['kind'], string> = {
  value: 'content/values/',
  scale: 'content/scales/',
  evidence: 'content/evidence/',
  measure: 'content/vocabulary/tools.yaml',
  manoeuvre: 'content/protocols/',
  system: 'content/protocols/, a file each',
  guide: 'content/guides/, a file each',
  source: 'content/sources.yaml',
};

/** What prose refers to exists. */
export const references: Rule = {
  name: 'unknown-reference',
  description:
    'Every <Value>, <Scale>, <Evidence>, <Measure>, [[value]] and link in prose leads to an entry that exists.',
  check(content, report) {
    for (const { kind, id, at } of content.references) {
      const known = knownFor(kind, content);
      if (!known.includes(id) && !content.unread.has(id))
        report(at, `${kind} "${id}" is not known.${didYouMean(id, known)} It would be written in ${homes[kind]}.`);
    }
  },
};

function knownFor(kind: Reference['kind'], content: Content): string[] {
  const ids = (name: 'values' | 'scales' | 'evidence' | 'tools' | 'sources'): string[] =>
    content.tables[name].map((entry) => entry.value.id);
  switch (kind) {
    case 'value':
      return ids('values');
    case 'scale':
      return ids('scales');
    case 'evidence':
      return ids('evidence');
    case 'measure':
      return ids('tools');
    case 'source':
      return ids('sources');
    case 'manoeuvre':
      return manoeuvresOf(content).map((one) => one.value.id);
    case 'system':
      return content.protocols.map((protocol) => protocol.value.id);
    case 'guide':
      return content.guides.map((guide) => guide.value.id);
  }
}
