import type { Line } from '../../schemas/inline.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { BlockStep } from '../plan/blocks.ts';
import { setRuns } from '../text/set-runs.ts';
import type { TypstRun } from '../text/typst.ts';
import { durationText, labelOf, midSentence } from '../text/words.ts';
import type { NowFinding, SheetStep } from './run-sheet.ts';
import { labelsOf, minuteOf, set } from './words.ts';

/** What a step has from its place on the sheet. */
export interface StepPlace {
  /** From 1. */
  number: number;
  /** Examiner place to move to, where the examiner has to. */
  moveTo: string | undefined;
  /** Whether the position was changed just before: then what had to be covered is covered already. */
  afterMove: boolean;
}

/** Said at every sensitive examination. */
export const sensitiveWords = 'Explicit consent, a chaperone offered, the right to stop.';

/** A step in the words that are printed. Throws RangeError for an id that the library does not hold. */
export function sheetStep(library: Library, manoeuvre: Manoeuvre, entry: BlockStep, place: StepPlace): SheetStep {
  const { step, uncover, cover } = entry;
  return {
    id: manoeuvre.id,
    number: place.number,
    title: set(manoeuvre.title),
    minute: minuteOf(step.start),
    facts: factsOf(manoeuvre, step),
    ...optional('instruments', instrumentsOf(library, step.instruments)),
    ...optional('cover', place.afterMove ? '' : labelsOf(library.exposures, cover)),
    uncover: uncover.map((id) => midSentence(labelOf(library.exposures, id))),
    ...optional('stand', place.moveTo === undefined ? '' : labelsOf(library.examinerPlaces, [place.moveTo])),
    ...(step.stage === 1 ? safetyOf(library, manoeuvre) : { now: [], asAt: place.number - step.stage + 1 }),
  };
}

/** Apart by semicolons: some labels have commas of their own. */
const instrumentsOf = ({ instruments }: Library, ids: readonly string[]): string =>
  ids.map((id) => set(midSentence(labelOf(instruments, id)))).join('; ');

function factsOf({ sides, stages }: Manoeuvre, { seconds, stage }: BlockStep['step']): string[] {
  return [
    durationText(Math.round(seconds)),
    ...(sides === 'none' ? [] : [sides === 'both' ? 'both sides' : `${sides} side`]),
    ...(stages.length > 1 ? [`stage ${stage} of ${stages.length}`] : []),
  ];
}

function safetyOf(
  library: Library,
  { sensitive, cautions, redFlags }: Manoeuvre,
): Pick<SheetStep, 'sensitive' | 'caution' | 'now'> {
  const [caution] = cautions;
  return {
    ...(sensitive ? { sensitive: sensitiveWords } : {}),
    ...(caution === undefined ? {} : { caution: setRuns(caution, library) }),
    now: redFlags.filter(({ urgency }) => urgency === 'now').map((flag) => nowFinding(library, flag)),
  };
}

function nowFinding(library: Library, { finding, action }: { finding: Line; action: Line }): NowFinding {
  return { finding: opened(setRuns(finding, library)), action: setRuns(action, library) };
}

/** A finding without a stop at its end: the arrow to its action follows. */
const opened = (runs: TypstRun[]): TypstRun[] =>
  runs.map((run, place) => (place === runs.length - 1 ? { ...run, text: run.text.replace(/\.$/, '') } : run));

const optional = <Key extends string>(key: Key, words: string): { [K in Key]?: string } =>
  (words === '' ? {} : { [key]: words }) as { [K in Key]?: string };
