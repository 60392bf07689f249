import type { Library } from '../../schemas/library.ts';
import type { Line } from '../../schemas/inline.ts';
import type { Manoeuvre, RedFlag } from '../../schemas/manoeuvre.ts';
import type { Card, FlagGroup } from './card.ts';
import { fieldText } from './fields.ts';
import type { Selection } from './select.ts';
import { marksOf, stripOf } from './strip.ts';
import { midSentence, urgencies, urgencyWords } from '../text/words.ts';
import { printedDay } from './words.ts';

/** Red flags by urgency, most urgent first; within one urgency in the order of the page. */
export function flagGroups(redFlags: readonly RedFlag[]): FlagGroup[] {
  return urgencies
    .map((urgency) => ({
      urgency,
      words: `${urgencyWords[urgency].label}: ${urgencyWords[urgency].meaning}`,
      flags: redFlags.filter((flag) => flag.urgency === urgency).map(({ finding, action }) => ({ finding, action })),
    }))
    .filter(({ flags }) => flags.length > 0);
}

const consent: Line = [{ type: 'text', text: 'Sensitive: explicit consent, chaperone offered, stop when asked.' }];

const bodyOf = (manoeuvre: Manoeuvre, library: Library) => ({
  redFlags: flagGroups(manoeuvre.redFlags),
  cautions: manoeuvre.sensitive ? [consent, ...manoeuvre.cautions] : manoeuvre.cautions,
  steps: manoeuvre.card.length > 0 ? manoeuvre.card : manoeuvre.technique,
  say: manoeuvre.tell,
  normal: manoeuvre.normal,
  abnormal: manoeuvre.abnormal,
  errors: manoeuvre.errors,
  record: manoeuvre.records.map((record) => fieldText(record, library.scales)),
});

const ownerOf = ({ clinic }: Library): Pick<Card, 'owner'> =>
  clinic === undefined ? {} : { owner: clinic.short ?? clinic.name };

/** Makes the cards of a selection, numbered in page order, with safety first on each. */
export function orderCards({ set, protocol, manoeuvres }: Selection, library: Library): Card[] {
  return manoeuvres.map((manoeuvre, place) => ({
    id: manoeuvre.id,
    system: protocol.system,
    title: manoeuvre.title,
    set: set.title,
    number: place + 1,
    count: manoeuvres.length,
    marks: marksOf(manoeuvre.stages, library),
    strip: stripOf(manoeuvre, library),
    ...bodyOf(manoeuvre, library),
    ...ownerOf(library),
    edition: `v${library.version} · ${library.hash.slice(0, 8)}`,
    review: `Review: ${midSentence(protocol.reviewer)}, ${printedDay(protocol.reviewed)}`,
  }));
}
