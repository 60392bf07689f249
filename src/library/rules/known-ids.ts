import type { Content, ManoeuvreDraft, TableName } from '../content.ts';
import type { At } from '../faults.ts';
import { didYouMean } from '../suggest.ts';
import { tableKinds } from '../tables.ts';
import { lookClinic } from '../clinic/known-ids.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

type Tell = (at: At, message: string) => void;
/** Checks ids of one noun against what is known; says where they are listed. */
export type Lookup = (
  noun: TableName | 'manoeuvres',
  ids: readonly string[],
  at: (index: number) => At,
  label?: string,
) => void;

/** Whatever is named by id exists. */
export const knownIds: Rule = {
  name: 'unknown-id',
  description: 'Every id that an attribute, a front-matter key or a table names belongs to an entry that exists.',
  check(content, report) {
    const look = lookupIn(content, report);
    content.protocols.forEach((protocol) => {
      look('sources', protocol.value.sources, (index) => protocol.key(['sources', index]));
      look('systems', [protocol.value.system], () => protocol.key(['system']));
    });
    manoeuvresOf(content).forEach((one) => checkManoeuvre(one, look));
    checkTables(content, look);
  },
};

function lookupIn(content: Content, report: Tell): Lookup {
  return (noun, ids, at, label) => {
    const known =
      noun === 'manoeuvres'
        ? manoeuvresOf(content).map((one) => one.value.id)
        : content.tables[noun].map((entry) => entry.value.id);
    const name = label ?? (noun === 'manoeuvres' ? 'manoeuvre' : tableKinds[noun].noun);
    const home =
      noun === 'manoeuvres'
        ? 'Manoeuvres are written in content/protocols/.'
        : `${plural(tableKinds[noun].noun)} are listed in ${tableKinds[noun].home}.`;
    ids.forEach((id, index) => {
      if (!known.includes(id) && !content.unread.has(id))
        report(at(index), `${name} "${id}" is not known.${didYouMean(id, known)} ${home}`);
    });
  };
}

function checkManoeuvre(one: ManoeuvreDraft, look: Lookup): void {
  const { value, attribute } = one;
  look('positions', [...new Set(value.stages.flat())], () => attribute('position'));
  look('exposures', value.exposure, () => attribute('exposure'));
  look('examinerPlaces', [value.examiner], () => attribute('examiner'));
  look('instruments', value.instruments, () => attribute('instruments'));
  look('manoeuvres', value.after, () => attribute('after'));
  look('sources', value.sources, () => attribute('sources'));
  value.records.forEach((record, index) => {
    if (record.kind === 'scale') look('scales', [record.scale], () => one.recordAttribute(index, 'scale'));
    if (record.kind === 'quantity' && record.value)
      look('values', [record.value], () => one.recordAttribute(index, 'value'));
  });
}

function checkTables({ tables }: Content, look: Lookup): void {
  const sourced = [...tables.values, ...tables.scales, ...tables.evidence];
  sourced.forEach((entry) => look('sources', [entry.value.source], () => entry.at(['source'])));
  tables.values.forEach((entry) =>
    look(
      'sources',
      entry.value.others.map((other) => other.source),
      (index) => entry.at(['others', index, 'source']),
    ),
  );
  tables.evidence.forEach((entry) =>
    look('evidence', entry.value.disagreesWith, (index) => entry.at(['disagreesWith', index])),
  );
  tables.tools.forEach((entry) => {
    look('values', entry.value.values, (index) => entry.at(['values', index]));
    look('sources', entry.value.sources, (index) => entry.at(['sources', index]));
  });
  tables.priorities.forEach((entry) =>
    look('manoeuvres', entry.value.manoeuvres, (index) => entry.at(['manoeuvres', index])),
  );
  tables.cardSets.forEach((entry) => look('systems', [entry.value.system], () => entry.at(['system'])));
  tables.forms.forEach((entry) => {
    look('positions', entry.value.start === undefined ? [] : [entry.value.start], () => entry.at(['start']));
  });
  tables.forms.forEach((entry) =>
    look('manoeuvres', entry.value.manoeuvres, (index) => entry.at(['manoeuvres', index])),
  );
  tables.clinics.forEach((entry) => lookClinic(entry, look));
}

function plural(noun: string): string {
  const words = noun === 'evidence entry' ? 'evidence entries' : noun === 'priority' ? 'priorities' : `${noun}s`;
  return words.charAt(0).toUpperCase() + words.slice(1);
}
