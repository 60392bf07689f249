import type { Form, FormItem } from '../../../schemas/form.ts';
import type { PositionLabels } from '../positions.ts';

export type { PositionLabels } from '../positions.ts';

/** Position in words, and its marks: "supine", or "supine, then left side". */
export interface ItemPosition {
  words: string;
  marks: string[];
}

/** What an item is known by on paper. */
export interface Numbered {
  /** Numbers from 1 by manoeuvre; an item that is not printed has none. */
  numberOf: ReadonlyMap<string, number>;
  positionOf: (item: FormItem) => ItemPosition;
}

/** The system whose duties the head of the sheet asks for: its items are not printed where they ask for nothing more. */
const opensAndCloses = 'preparation';

/** Whether an item stands on the form itself; one that does not stands in the annex alone. */
export const isPrinted = ({ system }: Form['sections'][number], { fields }: FormItem): boolean =>
  fields.length > 0 || system !== opensAndCloses;

/** The items that stand on the form, in its order. */
export const printedItems = ({ sections }: Form): FormItem[] =>
  sections.flatMap((section) => section.items.filter((item) => isPrinted(section, item)));

/** The items that do not. */
export const unprintedItems = ({ sections }: Form): FormItem[] =>
  sections.flatMap((section) => section.items.filter((item) => !isPrinted(section, item)));

const positionWords = ({ positions }: PositionLabels, id: string): string =>
  id === 'any' ? 'any position' : (positions.find((each) => each.id === id)?.label ?? id).toLowerCase();

/** Numbers the printed items of a form, and names their positions in the form's own words unless told otherwise. */
export function numbered(form: Form, labels: PositionLabels = form): Numbered {
  return {
    numberOf: new Map(printedItems(form).map(({ manoeuvre }, index) => [manoeuvre, index + 1])),
    positionOf: ({ positions }) => ({
      words: positions.map((id) => positionWords(labels, id)).join(', then '),
      marks: positions,
    }),
  };
}
