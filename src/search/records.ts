import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Protocol } from '../../schemas/protocol.ts';
import { plainText } from '../text/plain.ts';
import { instrumentLabels, mainPosition, positionLabels, scopeLabel } from './filter-labels.ts';
import { flagsText, manoeuvrePassages } from './manoeuvre-record.ts';
import type { PageKind, SearchRecord } from './record.ts';
import { americanSpelling } from './spelling.ts';
import { wordsOf } from './words.ts';

type Draft = Omit<SearchRecord, 'spellings'>;

/** Every page that look-up knows: systems with their manoeuvres in page order, then tools, guides, cards and forms. */
export function searchRecords(library: Library): SearchRecord[] {
  return [
    ...library.protocols.flatMap((protocol) => [
      systemRecord(protocol, library),
      ...protocol.manoeuvres.map((one) => manoeuvreRecord(one, protocol, library)),
    ]),
    ...library.tools.map(({ id, title, summary }) => plainRecord('Tool', `/measure/${id}/`, title, summary)),
    ...library.guides.map(({ id, title, summary }) => plainRecord('Guide', `/guides/${id}/`, title, summary)),
    ...library.cardSets.map(({ id, title, purpose }) => plainRecord('Cards', `/cards/${id}/`, title, purpose)),
    ...library.forms.map(({ id, title, purpose, mustNotMiss }) =>
      plainRecord('Form', `/forms/${id}/`, title, [purpose, ...mustNotMiss].join(' ')),
    ),
  ].map(withAmericanSpelling);
}

function manoeuvreRecord(one: Manoeuvre, protocol: Protocol, library: Library): Draft {
  const position = positionLabels(one, library);
  const instrument = instrumentLabels(one, library);
  const flags = flagsText(one.redFlags);
  return {
    url: `/protocols/${protocol.id}/${one.id}/`,
    kind: 'Manoeuvre',
    title: one.title,
    names: [one.id.replaceAll('-', ' '), ...one.synonyms],
    passages: manoeuvrePassages(one, library),
    filters: { kind: ['Manoeuvre'], system: [protocol.title], position, instrument, scope: [scopeLabel(one.scope)] },
    shown: { system: protocol.title, position: mainPosition(one, library), ...(flags === '' ? {} : { flags }) },
  };
}

function systemRecord({ id, title, summary, opening, manoeuvres }: Protocol, library: Library): Draft {
  const lines = opening.flatMap((block) => (block.type === 'paragraph' ? [block.line] : block.lines));
  return {
    url: `/protocols/${id}/`,
    kind: 'System',
    title,
    names: [`${title} examination`],
    passages: [
      { text: summary, weight: 1 },
      { text: lines.map((line) => plainText(line, library)).join(' '), weight: 0.25 },
      { text: manoeuvres.map((one) => `${one.title}.`).join(' '), weight: 0.25 },
      { text: `${title}.`, weight: 10 },
    ],
    filters: { kind: ['System'], system: [title] },
    shown: { system: title },
  };
}

function plainRecord(kind: PageKind, url: string, title: string, about: string): Draft {
  return { url, kind, title, names: [], passages: [{ text: about, weight: 1 }], filters: { kind: [kind] }, shown: {} };
}

function withAmericanSpelling(draft: Draft): SearchRecord {
  const respelled = [draft.title, ...draft.names].map(americanSpelling).filter((name) => name !== draft.title);
  const names = [...new Set([...draft.names, ...respelled])];
  const text = draft.passages.map((passage) => passage.text).join(' ');
  const there = new Set(wordsOf([text, draft.title, ...names].join(' ')));
  return { ...draft, names, spellings: wordsOf(americanSpelling(text)).filter((word) => !there.has(word)) };
}
