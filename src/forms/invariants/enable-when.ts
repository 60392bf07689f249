import type { Questionnaire, QuestionnaireItem, QuestionnaireItemEnableWhen } from '@medplum/fhirtypes';
import { itemInvariant, itemsOf, shown } from './invariant.ts';

/** Which answer type a condition on an item of this type must have. Source: HL7 FHIR R4 (4.0.1), Questionnaire.item.enableWhen. */
const answerKeys: { [type: string]: string } = {
  boolean: 'answerBoolean',
  decimal: 'answerDecimal',
  integer: 'answerInteger',
  date: 'answerDate',
  string: 'answerString',
  text: 'answerString',
  choice: 'answerCoding',
  quantity: 'answerQuantity',
};

/** A condition points at a question before it, of a matching type, and at an option that it really has. */
export const enableWhen = itemInvariant('enable-when', 'Conditions can come true.', (item, questionnaire) => {
  const conditions = item.enableWhen ?? [];
  const behaviour = conditions.length > 1 && item.enableBehavior === undefined;
  return [
    ...(behaviour ? [`found ${conditions.length} conditions without enableBehavior, expected "all" or "any"`] : []),
    ...conditions.flatMap((condition) => conditionFaults(item, condition, questionnaire)),
  ];
});

function conditionFaults(
  item: QuestionnaireItem,
  condition: QuestionnaireItemEnableWhen,
  questionnaire: Questionnaire,
): string[] {
  const { question } = condition;
  const ids = itemsOf(questionnaire).map(({ linkId }) => linkId);
  const target = itemsOf(questionnaire).find(({ linkId }) => linkId === question);
  if (target === undefined)
    return [`found a condition on ${shown(question)}, expected the linkId of an item of this form`];
  if (ids.indexOf(target.linkId) >= ids.indexOf(item.linkId))
    return [`found a condition on "${question}", expected an item that comes before`];
  return answerFaults(condition, target);
}

function answerFaults(condition: QuestionnaireItemEnableWhen, target: QuestionnaireItem): string[] {
  const expected = condition.operator === 'exists' ? 'answerBoolean' : answerKeys[target.type];
  const found = Object.keys(condition).filter((key) => key.startsWith('answer'));
  if (expected === undefined)
    return [`found a condition on the ${target.type} item "${target.linkId}", expected a question`];
  if (found.length !== 1 || found[0] !== expected)
    return [`found ${shown(found.join(', ') || undefined)} for "${target.linkId}", expected ${expected}`];
  return expected === 'answerCoding' ? optionFaults(condition, target) : [];
}

function optionFaults(
  { answerCoding }: QuestionnaireItemEnableWhen,
  { linkId, answerOption = [] }: QuestionnaireItem,
): string[] {
  const { system, code } = answerCoding ?? {};
  const real = answerOption.some(({ valueCoding }) => valueCoding?.system === system && valueCoding?.code === code);
  return real ? [] : [`found the answer "${system}|${code}", expected an option of "${linkId}"`];
}
