import type { FormSection } from '../../schemas/form.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { PlanStep } from '../../schemas/plan.ts';
import { formItem } from './form-item.ts';

/** A manoeuvre with the position of each of its stages, as planned. */
interface Planned {
  manoeuvre: Manoeuvre;
  positions: [string, ...string[]];
}

/** The systems of a form in run-sheet order; one that the run sheet comes back to gets another section, numbered. */
export function sectionsOf(library: Library, steps: readonly PlanStep[]): FormSection[] {
  const sections: FormSection[] = [];
  for (const { manoeuvre, positions } of plannedOf(library, steps)) {
    const { system } = manoeuvre;
    const last = sections.at(-1);
    const section = last?.system === system ? last : newSection(library, system, positions[0], sections);
    if (section !== last) sections.push(section);
    section.items.push(formItem(library, manoeuvre, positions));
  }
  return sections;
}

function newSection(library: Library, system: string, position: string, earlier: readonly FormSection[]): FormSection {
  const times = earlier.filter((section) => section.system === system).length + 1;
  const title = library.systems.find(({ id }) => id === system)?.title ?? system;
  const named =
    times === 1 ? { linkId: system, title } : { linkId: `${system}-${times}`, title: `${title} (part ${times})` };
  return { ...named, system, position, items: [] };
}

/** The manoeuvres in the order in which each is begun. */
function plannedOf(library: Library, steps: readonly PlanStep[]): Planned[] {
  const planned = new Map<string, Planned>();
  for (const { manoeuvre: id, position } of steps) {
    const begun = planned.get(id);
    if (begun === undefined) planned.set(id, { manoeuvre: manoeuvreOf(library, id), positions: [position] });
    else begun.positions.push(position);
  }
  return [...planned.values()];
}

function manoeuvreOf(library: Library, id: string): Manoeuvre {
  const manoeuvre = library.protocols.flatMap(({ manoeuvres }) => manoeuvres).find((each) => each.id === id);
  if (manoeuvre !== undefined) return manoeuvre;
  throw new Error(`The run sheet names the manoeuvre "${id}", which the library does not have.`);
}
