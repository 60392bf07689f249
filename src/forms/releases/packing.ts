import type { Form, FormField, FormItem } from '../../../schemas/form.ts';

/** A form as it lies in a release's file: what goes without saying is left out, and what is the same is said once. */
export interface PackedForm extends Omit<Form, 'sections'> {
  /** Scales, options and sources, each once; fields name them by their place in this list. */
  shared: unknown[];
  sections: (Omit<Form['sections'][number], 'items'> & { items: PackedItem[] })[];
}

type Packed = Record<string, unknown>;
type PackedItem = Pick<FormItem, 'manoeuvre'> & { fields?: Packed[] };

/** What an item says unless it says otherwise. */
const usualItem = { sides: 'none', sensitive: false, cautions: [], redFlags: [], fields: [] };

/** Parts of a field that many fields have in the same words. */
const sharedKeys = ['scale', 'scaleTitle', 'source', 'options'] as const;

const sideWords = { none: '', right: ', right', left: ', left' } as const;
const sideSuffix = { none: '', right: '.right', left: '.left' } as const;

/** What the other parts of a field say already, unless it says otherwise. */
function usual({ record, base, side }: Pick<FormField, 'record' | 'base' | 'side'>, manoeuvre: string): Packed {
  const linkId = `${record}${sideSuffix[side]}`;
  const label = `${base}${sideWords[side]}`;
  return { linkId, label, manoeuvre, detail: `${linkId}.detail`, reason: `${linkId}.reason` };
}

/** Packs a form; `unpackForm` gives the very same form back. */
export function packForm(form: Form): PackedForm {
  const shared = new Map<string, number>();
  const share = (part: Packed): number => {
    const key = JSON.stringify(part);
    const index = shared.get(key) ?? shared.size;
    shared.set(key, index);
    return index;
  };
  const sections = form.sections.map((section) => ({
    ...section,
    items: section.items.map((item) => packItem(item, share)),
  }));
  return { ...form, shared: [...shared.keys()].map((key) => JSON.parse(key) as unknown), sections };
}

type Share = (part: Packed) => number;

function packItem(item: FormItem, share: Share): PackedItem {
  const fields = bothSides(item.fields.map((field) => packField(field, item.manoeuvre, share)));
  const same = (key: string, value: unknown): boolean =>
    key in usualItem && JSON.stringify(value) === JSON.stringify(usualItem[key as keyof typeof usualItem]);
  const entries = Object.entries({ ...item, fields }).filter(([key, value]) => !same(key, value));
  return Object.fromEntries(entries) as PackedItem;
}

function packField(field: FormField, manoeuvre: string, share: Share): Packed {
  const known = usual(field, manoeuvre);
  const entries = Object.entries(field);
  const common = entries
    .filter(([key]) => (sharedKeys as readonly string[]).includes(key))
    .map(([key, value]) => [key, key === 'options' ? packOptions(value as PackedOption[]) : value] as const);
  const own = entries.filter(([key, value]) => known[key] !== value && !common.some(([name]) => name === key));
  return { ...Object.fromEntries(own), ...(common.length > 0 && { shared: share(Object.fromEntries(common)) }) };
}

interface PackedOption {
  code: string;
  display: string;
  normal?: boolean;
}

const packOptions = (options: readonly PackedOption[]): PackedOption[] =>
  options.map(({ code, display, normal }) => ({ code, display, ...(normal === true && { normal }) }));

const unpackOptions = (options: readonly PackedOption[]): PackedOption[] =>
  options.map((option) => ({ normal: false, ...option }));

/** A right and a left that differ in nothing but the side become one. */
function bothSides(fields: Packed[]): Packed[] {
  const out: Packed[] = [];
  for (const field of fields) {
    const before = out.at(-1);
    const pair = before?.['side'] === 'right' && field['side'] === 'left';
    if (pair && JSON.stringify({ ...before, side: '' }) === JSON.stringify({ ...field, side: '' }))
      out[out.length - 1] = { ...field, side: 'both' };
    else out.push(field);
  }
  return out;
}

/** The form of a packed one. What it gives back must still be checked: the file may have been edited. */
export function unpackForm({ shared, ...packed }: PackedForm): unknown {
  const sections = packed.sections.map((section) => ({
    ...section,
    items: section.items.map((item) => ({
      ...usualItem,
      ...item,
      fields: (item.fields ?? []).flatMap((field) => unpackField(field, item.manoeuvre, shared)),
    })),
  }));
  return { ...packed, sections };
}

function unpackField({ shared: index, ...own }: Packed, manoeuvre: string, shared: readonly unknown[]): Packed[] {
  const common: Packed = index === undefined ? {} : { ...(shared[index as number] as Packed) };
  if (common['options'] !== undefined) common['options'] = unpackOptions(common['options'] as PackedOption[]);
  const sides = own['side'] === 'both' ? ['right', 'left'] : [own['side']];
  return sides.map((side) => {
    const { detail, reason, ...names } = usual({ ...own, side } as never, manoeuvre);
    const lines = own['kind'] === 'finding' ? { detail, reason } : {};
    return { ...names, ...lines, ...common, ...own, side };
  });
}
