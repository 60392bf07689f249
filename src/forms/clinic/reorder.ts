import type { Clinic } from '../../../schemas/clinic.ts';
import type { FormItem, FormSection } from '../../../schemas/form.ts';
import type { Library } from '../../../schemas/library.ts';

interface Placed {
  item: FormItem;
  system: string;
  title: string;
}

/**
 * The sections with the clinic's orders kept: an item that must come later moves behind what it waits for, with all that
 * waits for it by the library's orders; everything else stays where the release has it.
 */
export function reordered(sections: readonly FormSection[], library: Library, order: Clinic['order']): FormSection[] {
  const placed = sections.flatMap(({ system, title, items }) =>
    items.map((item): Placed => ({ item, system, title: title.replace(/ \(part \d+\)$/, '') })),
  );
  const place = new Map(placed.map(({ item }, index) => [item.manoeuvre, index]));
  const kept = order.every(({ manoeuvre, after }) => (place.get(manoeuvre) ?? Infinity) > (place.get(after) ?? -1));
  return kept ? [...sections] : sectioned(sorted(placed, waitsFor(library, order, place)));
}

/** What each item comes after: by the library, where the release keeps it, and by the clinic. */
function waitsFor(library: Library, order: Clinic['order'], place: ReadonlyMap<string, number>): Map<string, string[]> {
  const before = (one: string, other: string): boolean => (place.get(one) ?? Infinity) < (place.get(other) ?? -1);
  const manoeuvres = library.protocols.flatMap((protocol) => protocol.manoeuvres);
  return new Map(
    [...place.keys()].map((id) => {
      const written = manoeuvres.find((each) => each.id === id);
      const shared = [...(written?.after ?? []), ...(written?.derivedAfter ?? [])].filter((each) => before(each, id));
      const local = order.filter(({ manoeuvre, after }) => manoeuvre === id && place.has(after));
      return [id, [...shared, ...local.map(({ after }) => after)]];
    }),
  );
}

/** The first item in the old order of all that wait for nothing any more, again and again. Throws when the orders go round. */
function sorted(placed: readonly Placed[], waits: ReadonlyMap<string, readonly string[]>): Placed[] {
  const left = [...placed];
  const done = new Set<string>();
  const result: Placed[] = [];
  while (left.length > 0) {
    const index = left.findIndex(({ item }) => (waits.get(item.manoeuvre) ?? []).every((id) => done.has(id)));
    const [next] = left.splice(index, index < 0 ? 0 : 1);
    if (next === undefined) throw new Error('The orders of the clinic go round in a circle.');
    done.add(next.item.manoeuvre);
    result.push(next);
  }
  return result;
}

function sectioned(placed: readonly Placed[]): FormSection[] {
  const sections: FormSection[] = [];
  for (const { item, system, title } of placed) {
    const last = sections.at(-1);
    if (last?.system === system) last.items.push(item);
    else
      sections.push({
        ...namedPart(system, title, sections),
        system,
        position: item.positions[0] ?? 'any',
        items: [item],
      });
  }
  return sections;
}

function namedPart(
  system: string,
  title: string,
  earlier: readonly FormSection[],
): Pick<FormSection, 'linkId' | 'title'> {
  const times = earlier.filter((section) => section.system === system).length + 1;
  return times === 1 ? { linkId: system, title } : { linkId: `${system}-${times}`, title: `${title} (part ${times})` };
}
