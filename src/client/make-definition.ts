import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Library } from '../../schemas/library.ts';
import { inPageOrder, manoeuvresOf } from '../plan/manoeuvres-of.ts';
import { chosenManoeuvres, type MakeChoice, type MakeExam, type MakeKnown } from './make-choice.ts';

/** Version that a made form begins with. */
const firstVersion = '0.1.0';

/** Stands for the name that a form gets once its content is known. */
export const unnamed = 'urn:uuid:00000000-0000-0000-0000-000000000000';

/** What a choice can name, from the Library. */
export function knownOf(library: Library): MakeKnown {
  const offered = inPageOrder(library).filter(({ scope }) => scope !== 'preparation');
  const ids = new Set(offered.map(({ id }) => id));
  return {
    exams: library.forms.map((form): MakeExam => {
      const { id, title, purpose, leavesOut, start } = form;
      const manoeuvres = manoeuvresOf(library, form).filter((one) => ids.has(one));
      return { id, title, purpose, leavesOut, start, manoeuvres };
    }),
    manoeuvres: [...ids],
    positions: library.positions.map(({ id }) => id),
  };
}

/**
 * The definition of a form, as a file of `content/forms/` holds it.
 * @param day of the draft, YYYY-MM-DD
 */
export function definitionOfChoice(library: Library, choice: MakeChoice, day: string): FormDefinition {
  const { title, purpose, leavesOut, publisher, url } = tidied(choice.words);
  const exam = library.forms.find(({ id }) => id === choice.exam);
  return {
    id: formId(title, library),
    ...{ title, purpose, leavesOut: [leavesOut, ...takenOff(library, choice)].join(' ') },
    mustNotMiss: exam?.mustNotMiss ?? [],
    ...contentOf(library, exam, choice),
    ...(choice.start !== undefined && { start: choice.start }),
    ...{ url: url === '' ? unnamed : url, version: firstVersion, publisher },
    copyright: `Made from Fingerbreadth ${library.version}, not reviewed by Fingerbreadth. ${licence}`,
    ...{ author: publisher, drafted: day },
  };
}

const licence =
  'CC BY 4.0 for the words and order of this form: share and adapt it with credit to Fingerbreadth. Codes, units and published scales belong to their owners.';

/** One space between words, none at the ends: a definition is a few lines of prose. */
function tidied(words: MakeChoice['words']): MakeChoice['words'] {
  const entries = Object.entries(words).map(([field, text]) => [field, text.trim().replace(/\s+/g, ' ')]);
  return Object.fromEntries(entries) as MakeChoice['words'];
}

/** An examination as it stands keeps its own words for what it holds; anything else is listed one by one. */
function contentOf(
  library: Library,
  exam: FormDefinition | undefined,
  choice: MakeChoice,
): Pick<FormDefinition, 'scopes' | 'manoeuvres'> {
  if (exam !== undefined && choice.without.length === 0)
    return { scopes: exam.scopes, manoeuvres: [...exam.manoeuvres, ...choice.added] };
  return { scopes: ['preparation'], manoeuvres: chosenManoeuvres(knownOf(library), choice) };
}

/** What was taken off an examination is said on the form, whatever its maker wrote. */
function takenOff(library: Library, { without }: MakeChoice): string[] {
  if (without.length === 0) return [];
  const titles = inPageOrder(library).filter(({ id }) => without.includes(id));
  return [`Taken off the examination that it was made from: ${titles.map(({ title }) => title).join('; ')}.`];
}

/** Letters of an id at most: it stands at the foot of every sheet beside the safety line. */
const longestId = 32;

/** An id from the title, in the letters that ids have, cut between words; never that of a stock examination. */
function formId(title: string, { forms }: Library): string {
  const ascii = title
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();
  const whole = ascii.replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'made-form';
  const id =
    whole.length > longestId
      ? whole
          .slice(0, longestId + 1)
          .replace(/-[^-]*$/, '')
          .slice(0, longestId)
      : whole;
  return forms.some((form) => form.id === id) ? `${id}-own` : id;
}
