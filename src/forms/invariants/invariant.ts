import type { Questionnaire, QuestionnaireItem } from '@medplum/fhirtypes';

/** One thing that must hold of every Questionnaire of the project, beyond what the R4 definitions say. */
export interface Invariant {
  name: string;
  description: string;
  /** What is broken, one sentence each: where, what was found, what is expected. */
  check: (questionnaire: Questionnaire) => string[];
}

/** Every item of a Questionnaire, nested ones after their parent. */
export function itemsOf({ item }: Pick<Questionnaire | QuestionnaireItem, 'item'>): QuestionnaireItem[] {
  return (item ?? []).flatMap((each) => [each, ...itemsOf(each)]);
}

/** An invariant that looks at one item at a time; each sentence is put behind the item's linkId. */
export function itemInvariant(
  name: string,
  description: string,
  check: (item: QuestionnaireItem, questionnaire: Questionnaire) => string[],
): Invariant {
  const checkAll = (questionnaire: Questionnaire): string[] =>
    itemsOf(questionnaire).flatMap((item) => check(item, questionnaire).map((fault) => `${item.linkId}: ${fault}`));
  return { name, description, check: checkAll };
}

/** `found` in quotation marks, or "nothing". */
export function shown(found: string | number | undefined): string {
  return found === undefined ? 'nothing' : `"${found}"`;
}
