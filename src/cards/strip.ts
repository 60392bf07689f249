import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import { stageMarks } from '../figures/stage-marks.ts';
import type { StripRow } from './card.ts';
import { durationText, labelOf, midSentence } from '../text/words.ts';
import { listed, sidesWords } from './words.ts';

/** The parts of the Library that a strip takes its labels from. */
export type Vocabulary = Pick<Library, 'positions' | 'exposures' | 'instruments' | 'examinerPlaces'>;

/** Positions that the thumb index marks, each once: every alternative of every stage, or `any` where all serve. */
export function marksOf(stages: readonly string[][], { positions }: Pick<Vocabulary, 'positions'>): string[] {
  return [...new Set(stages.flatMap((stage) => stageMarks(stage, positions)))];
}

const alternatives = new Intl.ListFormat('en-GB', { type: 'disjunction' });

const stageText = (stage: readonly string[], { positions }: Vocabulary): string =>
  alternatives.format(
    stageMarks(stage, positions)
      .map((id) => (id === 'any' ? 'Any position' : labelOf(positions, id)))
      .map((label, place) => (place === 0 ? label : midSentence(label))),
  );

/** Stages in words: "Sitting or standing", "Supine, then standing". */
export function positionText(stages: readonly string[][], vocabulary: Vocabulary): string {
  const texts = stages.map((stage) => stageText(stage, vocabulary));
  return texts.map((text, place) => (place === 0 ? text : midSentence(text))).join(', then ');
}

/** The strip under the title: where the patient is, where the examiner stands, what is uncovered and laid out, how long. */
export function stripOf(manoeuvre: Manoeuvre, vocabulary: Vocabulary): StripRow[] {
  const { stages, sides, seconds, examiner, exposure, instruments } = manoeuvre;
  const facts = [positionText(stages, vocabulary), sidesWords[sides], durationText(seconds)].filter(Boolean);
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
