import type { Line } from '../../schemas/inline.ts';
import type { References } from '../text/references.ts';
import { setQuotes, setRuns } from '../text/set-runs.ts';
import type { TypstRun } from '../text/typst.ts';
import type { Card, FlagGroup } from './card.ts';

/** Parts of a card in reading order. */
export type PartName = 'flags' | 'cautions' | 'steps' | 'say' | 'normal' | 'abnormal' | 'errors' | 'record';

interface TypesetFlags {
  urgency: FlagGroup['urgency'];
  words: string;
  items: { finding: TypstRun[]; action: TypstRun[] }[];
}

/** One part as the templates take it: a head and what hangs under it. */
export type Part = { name: PartName; head: string } & (
  { kind: 'flags'; groups: TypesetFlags[] } | { kind: 'list' | 'steps' | 'said' | 'fields'; items: TypstRun[][] }
);

const heads: Readonly<Record<PartName, string>> = {
  flags: 'Red flags',
  cautions: 'Cautions',
  steps: 'Do',
  say: 'Say',
  normal: 'Normal',
  abnormal: 'Not normal',
  errors: 'Errors',
  record: 'Record',
};

/** The parts of a card that hold anything, in reading order: red flags and cautions before the hands move. */
export function partsOf(card: Card, references: References): Part[] {
  const runs = (lines: readonly Line[]) => lines.map((line) => setRuns(line, references));
  const part = (name: PartName, kind: 'list' | 'steps' | 'said' | 'fields', items: TypstRun[][]): Part => ({
    name,
    head: heads[name],
    kind,
    items,
  });
  const parts: Part[] = [
    {
      name: 'flags',
      head: heads.flags,
      kind: 'flags',
      groups: card.redFlags.map((group) => typesetFlags(group, references)),
    },
    part('cautions', 'list', runs(card.cautions)),
    part('steps', 'steps', runs(card.steps)),
    part('say', 'said', runs(card.say)),
    part('normal', 'list', runs(card.normal)),
    part('abnormal', 'list', runs(card.abnormal)),
    part('errors', 'list', runs(card.errors)),
    part(
      'record',
      'fields',
      card.record.map((text) => [{ text: setQuotes(text) }]),
    ),
  ];
  return parts.filter((one) => (one.kind === 'flags' ? one.groups.length : one.items.length) > 0);
}

const typesetFlags = ({ urgency, words, flags }: FlagGroup, references: References): TypesetFlags => ({
  urgency,
  words,
  items: flags.map(({ finding, action }) => ({
    finding: setRuns(finding, references),
    action: setRuns(action, references),
  })),
});
