import type { Questionnaire, QuestionnaireItem } from '@medplum/fhirtypes';
import { itemsOf } from '../invariants/invariant.ts';
import { isGroup, type ResponseFault } from './fault.ts';

/** An item of a response that was found, with its place. */
interface Placed {
  path: ResponseFault['path'];
  item: Record<string, unknown>;
}

/** Answers whose condition is not met: a detail of what is not abnormal, a reason though it was examined. */
export function conditionFaults(form: Questionnaire, response: Record<string, unknown>): ResponseFault[] {
  const given = placedItems(response['item'], ['item']);
  return given.flatMap(({ path, item }) => {
    const asked = itemsOf(form).find(({ linkId }) => linkId === item['linkId']);
    return (asked?.enableWhen ?? [])
      .filter((condition) => !isMet(condition, given))
      .map(({ question, answerCoding }) => ({
        path,
        message: `"${asked?.linkId ?? ''}" is answered although "${question}" is not "${answerCoding?.code ?? ''}". Delete it, or correct "${question}".`,
      }));
  });
}

function placedItems(items: unknown, path: ResponseFault['path']): Placed[] {
  if (!Array.isArray(items)) return [];
  return (items as unknown[]).flatMap((item, index) =>
    isGroup(item) ? [{ item, path: [...path, index] }, ...placedItems(item['item'], [...path, index, 'item'])] : [],
  );
}

function isMet(
  { question, answerCoding }: NonNullable<QuestionnaireItem['enableWhen']>[number],
  given: readonly Placed[],
): boolean {
  return given.some(({ item: { linkId, answer } }) => {
    if (linkId !== question || !Array.isArray(answer)) return false;
    return (answer as unknown[]).some(
      (one) => isGroup(one) && isGroup(one['valueCoding']) && one['valueCoding']['code'] === answerCoding?.code,
    );
  });
}
