/** What a form is made of, and what it says of itself. */
export interface MakeChoice {
  /** Stock examination that it begins with; none when it is made of single manoeuvres alone. */
  exam?: string | undefined;
  /** Manoeuvres of the examination that are taken off. */
  without: string[];
  /** Single manoeuvres beside it. */
  added: string[];
  /** Position that the patient is in at first. */
  start?: string | undefined;
  words: MakeWords;
}

/** The fields that are written in, in the order asked. */
export const wordFields = ['title', 'purpose', 'leavesOut', 'publisher', 'url'] as const;
export type WordField = (typeof wordFields)[number];
export type MakeWords = Record<WordField, string>;

/** Most signs that each may hold. */
export const longest: Readonly<MakeLimits> = { title: 120, purpose: 1000, leavesOut: 1500, publisher: 120, url: 300 };
type MakeLimits = Record<WordField, number>;

/** A stock examination as the choice needs it. */
export interface MakeExam {
  id: string;
  title: string;
  purpose: string;
  leavesOut: string;
  start?: string | undefined;
  /** Its manoeuvres but for the preparation, which every form has. */
  manoeuvres: string[];
}

/** What a choice can name. */
export interface MakeKnown {
  exams: readonly MakeExam[];
  /** Manoeuvres that can be chosen, in page order. */
  manoeuvres: readonly string[];
  positions: readonly string[];
}

/** Said of a form of single manoeuvres unless its maker says otherwise. */
const allElse = 'Everything that is not listed on it. A normal form does not rule out disease.';

/** What the fields hold before anybody writes in them. */
export function wordsOf(exam: MakeExam | undefined): MakeWords {
  const { title = '', purpose = '', leavesOut = allElse } = exam ?? {};
  return { title, purpose, leavesOut, publisher: '', url: '' };
}

/** An examination as it stands, or nothing yet. */
export function startingChoice(exam?: MakeExam): MakeChoice {
  return { exam: exam?.id, without: [], added: [], start: exam?.start, words: wordsOf(exam) };
}

/** The examination that a choice begins with. */
export const examOf = ({ exams }: Pick<MakeKnown, 'exams'>, { exam }: MakeChoice): MakeExam | undefined =>
  exams.find(({ id }) => id === exam);

/** Ids of the manoeuvres that a choice comes to, without the preparation, in page order. */
export function chosenManoeuvres(known: Pick<MakeKnown, 'exams' | 'manoeuvres'>, choice: MakeChoice): string[] {
  const own = examOf(known, choice)?.manoeuvres ?? [];
  const all = new Set([...own.filter((id) => !choice.without.includes(id)), ...choice.added]);
  return known.manoeuvres.filter((id) => all.has(id));
}

/** The choice that has just these manoeuvres ticked. */
export function withTicked(known: MakeKnown, choice: MakeChoice, ticked: readonly string[]): MakeChoice {
  const own = examOf(known, choice)?.manoeuvres ?? [];
  return {
    ...choice,
    without: own.filter((id) => !ticked.includes(id)),
    added: ticked.filter((id) => !own.includes(id)),
  };
}
