import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { StripRow } from './card.ts';
import { duration, listed, midSentence, sidesWords } from './words.ts';

/** The parts of the Library that a strip takes its labels from. */
export type Vocabulary = Pick<Library, 'positions' | 'exposures' | 'instruments' | 'examinerPlaces'>;

const labelOf = (entries: readonly { id: string; label: string }[], id: string): string => {
  const entry = entries.find((one) => one.id === id);
  if (!entry) throw new RangeError(`no label for the id "${id}"`);
  return entry.label;
};

/** True when a stage may be done in every position there is. */
const isAny = (stage: readonly string[], { positions }: Vocabulary): boolean =>
  stage.includes('any') || positions.every(({ id }) => stage.includes(id));

/** Positions that the thumb index marks: every alternative of every stage once, or `any`. */
export function marksOf(stages: readonly string[][], vocabulary: Vocabulary): string[] {
  return [...new Set(stages.flatMap((stage) => (isAny(stage, vocabulary) ? ['any'] : stage)))];
}

const stageText = (stage: readonly string[], vocabulary: Vocabulary): string =>
  isAny(stage, vocabulary)
    ? 'Any position'
    : stage.map((id, place) => (place === 0 ? '' : ' or ') + place0(labelOf(vocabulary.positions, id), place)).join('');

const place0 = (label: string, place: number): string => (place === 0 ? label : midSentence(label));

/** Stages in words: "Sitting or standing", "Supine, then standing". */
export function positionText(stages: readonly string[][], vocabulary: Vocabulary): string {
  return stages.map((stage, place) => place0(stageText(stage, vocabulary), place)).join(', then ');
}

/** The strip under the title: where the patient is, where the examiner stands, what is uncovered and laid out, how long. */
export function stripOf(manoeuvre: Manoeuvre, vocabulary: Vocabulary): StripRow[] {
  const { stages, sides, seconds, examiner, exposure, instruments } = manoeuvre;
  const facts = [positionText(stages, vocabulary), sidesWords[sides], duration(seconds)].filter(Boolean);
  const uncovered = exposure.filter((id) => id !== 'none');
  const rows: StripRow[] = [
    { label: 'Position', text: facts.join('; ') },
    { label: 'Examiner', text: labelOf(vocabulary.examinerPlaces, examiner) },
    {
      label: 'Uncover',
      text: uncovered.length > 0 ? listed(uncovered.map((id) => labelOf(vocabulary.exposures, id))) : 'Nothing',
    },
    { label: 'Lay out', text: listed(instruments.map((id) => labelOf(vocabulary.instruments, id))) },
  ];
  return rows.filter(({ text }) => text !== '');
}
