import type { Questionnaire, QuestionnaireItem } from '@medplum/fhirtypes';
import { didYouMean } from '../../library/suggest.ts';
import { itemsOf } from '../invariants/invariant.ts';
import { answerFaults } from './answers.ts';
import { found, isGroup, type ResponseFault, unknownKeys } from './fault.ts';

type Path = ResponseFault['path'];
type Group = Record<string, unknown>;

/** Keys of an item of a response. Source: HL7 FHIR R4 (4.0.1), QuestionnaireResponse.item. */
const itemKeys = ['id', 'extension', 'modifierExtension', 'linkId', 'definition', 'text', 'answer', 'item'];

/** What is wrong with the items of a response, or of one of its groups: `parent` is the form, or the group answered. */
export function itemFaults(
  form: Questionnaire,
  parent: Pick<QuestionnaireItem, 'item'>,
  path: Path,
  items: unknown,
): ResponseFault[] {
  if (items === undefined) return [];
  if (!Array.isArray(items))
    return [{ path, message: `Found ${found(items)}, expected a list of items. Put the items in square brackets.` }];
  if (items.length === 0)
    return [{ path, message: 'Found an empty list, expected at least one item. Leave "item" out.' }];
  return (items as unknown[]).flatMap((item, index) => [
    ...oneItem(form, parent, [...path, index], item),
    ...repeated(items as unknown[], index, [...path, index]),
  ]);
}

function oneItem(
  form: Questionnaire,
  parent: Pick<QuestionnaireItem, 'item'>,
  path: Path,
  item: unknown,
): ResponseFault[] {
  if (!isGroup(item))
    return [{ path, message: `Found ${found(item)}, expected an item. Write an object with linkId.` }];
  const { linkId } = item;
  if (typeof linkId !== 'string')
    return [
      {
        path: [...path, 'linkId'],
        message: `Found ${found(linkId)}, expected the linkId of a blank of the form. Add it.`,
      },
    ];
  const asked = itemsOf(form).find((each) => each.linkId === linkId);
  if (asked === undefined) return [unknownItem(form, path, linkId)];
  return [
    ...unknownKeys(item, itemKeys, path),
    ...placeFaults(form, parent, path, linkId),
    ...textFaults(asked, path, item),
    ...contentFaults(form, asked, path, item),
  ];
}

function unknownItem(form: Questionnaire, path: Path, linkId: string): ResponseFault {
  const near = didYouMean(
    linkId,
    itemsOf(form).map((each) => each.linkId),
  );
  return {
    path: [...path, 'linkId'],
    message: `The form has no item "${linkId}".${near} Use a linkId of this version, or delete the item.`,
  };
}

function placeFaults(
  form: Questionnaire,
  parent: Pick<QuestionnaireItem, 'item'>,
  path: Path,
  linkId: string,
): ResponseFault[] {
  if (parent.item?.some((each) => each.linkId === linkId)) return [];
  const home = itemsOf(form).find(({ item }) => item?.some((each) => each.linkId === linkId));
  const where = home === undefined ? 'at the top' : `in the group "${home.linkId}"`;
  return [{ path, message: `The item "${linkId}" stands where the form does not have it. Move it ${where}.` }];
}

function textFaults({ text, linkId }: QuestionnaireItem, path: Path, item: Group): ResponseFault[] {
  if (item['text'] === undefined || item['text'] === text) return [];
  const message = `Found the text ${found(item['text'])}, but the form asks "${text ?? ''}" at "${linkId}". Write the form's text or leave it out.`;
  return [{ path: [...path, 'text'], message }];
}

function contentFaults(form: Questionnaire, asked: QuestionnaireItem, path: Path, item: Group): ResponseFault[] {
  const fault = (key: string, message: string): ResponseFault => ({ path: [...path, key], message });
  const { answer } = item;
  if (asked.type === 'display')
    return answer === undefined && item['item'] === undefined
      ? []
      : [fault('answer', `"${asked.linkId}" is a line to read. Delete what is answered there.`)];
  if (asked.type === 'group')
    return [
      ...(answer === undefined
        ? []
        : [fault('answer', `"${asked.linkId}" is a group. Answer the blanks in it, not the group.`)]),
      ...itemFaults(form, asked, [...path, 'item'], item['item']),
    ];
  const nested =
    item['item'] === undefined
      ? []
      : [fault('item', `The blank "${asked.linkId}" holds no items. Move them to their group.`)];
  return [...nested, ...answerFaults(asked, [...path, 'answer'], answer)];
}

function repeated(items: readonly unknown[], index: number, path: Path): ResponseFault[] {
  const linkIdOf = (item: unknown): unknown => (isGroup(item) ? item['linkId'] : undefined);
  const linkId = linkIdOf(items[index]);
  if (typeof linkId !== 'string' || items.findIndex((item) => linkIdOf(item) === linkId) >= index) return [];
  return [{ path, message: `The item "${linkId}" is given twice. Keep one.` }];
}
