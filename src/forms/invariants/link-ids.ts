import { linkId as linkIdSchema } from '../../../schemas/form.ts';
import { type Invariant, itemsOf, shown } from './invariant.ts';

/** linkIds are well formed, and no two are alike. */
export const linkIds: Invariant = {
  name: 'link-ids',
  description: 'Every item has a well-formed linkId of its own.',
  check: (questionnaire) => {
    const ids = itemsOf(questionnaire).map(({ linkId }) => linkId as string | undefined);
    return [...malformed(ids), ...repeated(ids)];
  },
};

function malformed(ids: (string | undefined)[]): string[] {
  return ids
    .filter((linkId) => !linkIdSchema.safeParse(linkId).success)
    .map(
      (linkId) =>
        `linkId ${shown(linkId)} is not well formed; expected lower-case letters and digits joined by single "." or "-"`,
    );
}

function repeated(ids: (string | undefined)[]): string[] {
  const again = ids.filter((linkId, index) => linkId !== undefined && ids.indexOf(linkId) < index);
  return [...new Set(again)].map((linkId) => `linkId "${linkId}" is used more than once; expected one item for each`);
}
