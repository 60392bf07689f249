import type { Coding, Questionnaire, QuestionnaireItem } from '@medplum/fhirtypes';
import type { Form } from '../../schemas/form.ts';
import { ownOption } from './answer-options.ts';
import { codeSystems } from './code-systems.ts';
import { invariants } from './invariants.ts';
import { type Observation, observationOf, type WatchedItem, type WatchedSection } from './observation.ts';
import { criticalWords, headLines, judgement, prompted, ratings, remarks, watchNotice } from './observation-words.ts';

/**
 * The observation sheet of a form as a FHIR R4 (4.0.1) Questionnaire about the learner; it names no patient.
 * Its `url` is the form's with `/watch` behind it. Throws, naming each, when it breaks the project's invariants.
 */
export function observationQuestionnaire(form: Form): Questionnaire {
  const built = build(form, observationOf(form));
  const faults = invariants(built);
  if (faults.length > 0)
    throw new Error(`The observation Questionnaire of form "${form.id}" is not sound:\n${faults.join('\n')}`);
  return built;
}

function build(form: Form, observation: Observation): Questionnaire {
  const { id, url, version, title, status, date, publisher, copyright } = form;
  return {
    ...{ resourceType: 'Questionnaire', id: `${id}-watch`, language: 'en-GB', url: `${url}/watch`, version },
    name: 'WatchedExamination',
    title: `${title}, watched`,
    status,
    subjectType: ['Practitioner'],
    ...{ date, publisher },
    description: [observation.warning, watchNotice, criticalWords].filter((words) => words !== undefined).join('\n\n'),
    purpose: `To watch a learner at: ${form.purpose}`,
    copyright,
    item: [head(), ...observation.sheets.flatMap(({ sections }) => sections.map(groupItem)), whole()],
  };
}

const text = (linkId: string, words: string): QuestionnaireItem => ({ linkId, text: words, type: 'text' });

const coding = (system: string, { code, label }: { code: string; label: string }): Coding => {
  const { officialName: display } = ownOption(system, code, label);
  return { system, code, display };
};

function choice(
  linkId: string,
  words: string,
  system: string,
  options: readonly { code: string; label: string }[],
): QuestionnaireItem {
  const answerOption = options.map((option) => ({ valueCoding: coding(system, option) }));
  return { linkId, text: words, type: 'choice', answerOption };
}

function head(): QuestionnaireItem {
  // Observer and date are the record system's own; what is left is where.
  const place = headLines.filter(({ code }) => code === 'place');
  const item = [
    { linkId: 'watch.notice', text: watchNotice, type: 'display' as const },
    ...place.map(({ code, label }) => text(`watch.${code}`, label)),
  ];
  return { linkId: 'watch.head', text: 'Head of the sheet', type: 'group', item };
}

function groupItem({ linkId, title, items }: WatchedSection): QuestionnaireItem {
  return { linkId: `${linkId}.watched`, text: title, type: 'group', item: items.flatMap(watchedItems) };
}

function watchedItems({ manoeuvre, number, title, critical, forbids }: WatchedItem): QuestionnaireItem[] {
  const linkId = `${manoeuvre}.watched`;
  const words = `${number} ${title}${critical ? ' (safety-critical)' : ''}`;
  const cautions = forbids.map((caution, index) => ({
    ...{ linkId: `${linkId}.caution-${index + 1}`, text: `Caution: ${caution}`, type: 'display' as const },
  }));
  const enableWhen = ratings
    .filter(({ code }) => code === 'differs')
    .map((rating) => ({ question: linkId, operator: '=' as const, answerCoding: coding(codeSystems.watched, rating) }));
  return [
    ...cautions,
    choice(linkId, words, codeSystems.watched, ratings),
    { ...text(`${linkId}.how`, `${title}: how it differs`), enableWhen },
    { linkId: `${linkId}.prompted`, text: `${title}: ${prompted.label.toLowerCase()}`, type: 'boolean' },
  ];
}

function whole(): QuestionnaireItem {
  const item = [
    choice('watch.judgement', judgement.meaning, codeSystems.judgement, judgement.options),
    ...remarks.map(({ code, label }) => text(`watch.${code}`, label)),
  ];
  return { linkId: 'watch.whole', text: judgement.label, type: 'group', item };
}
