import type { FormItem, FormSection } from '../../schemas/form.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { PlanStep } from '../../schemas/plan.ts';
import { formItem } from './form-item.ts';

/** A manoeuvre with the position of each of its stages, as planned. */
interface Planned {
  manoeuvre: Manoeuvre;
  positions: string[];
}

/** The systems of a form in run-sheet order; one that the run sheet comes back to gets another section, numbered. */
export function sectionsOf(library: Library, steps: readonly PlanStep[]): FormSection[] {
  const sections: FormSection[] = [];
  for (const { manoeuvre, positions } of plannedOf(library, steps)) {
    const section = sections.at(-1);
    const item = formItem(library, manoeuvre, positions);
    if (section?.system === manoeuvre.system) section.items.push(item);
    else sections.push(newSection(library, manoeuvre.system, item, sections));
  }
  return sections;
}

function newSection(library: Library, system: string, first: FormItem, earlier: readonly FormSection[]): FormSection {
  const times = earlier.filter((section) => section.system === system).length + 1;
  const title = library.systems.find(({ id }) => id === system)?.title ?? system;
  const linkId = times === 1 ? system : `${system}-${times}`;
  const named = times === 1 ? title : `${title} (part ${times})`;
  return { linkId, system, title: named, position: first.positions[0]!, items: [first] };
}

function plannedOf(library: Library, steps: readonly PlanStep[]): Planned[] {
  const manoeuvres = new Map(
    library.protocols.flatMap((protocol) => protocol.manoeuvres.map((each) => [each.id, each])),
  );
  return [...Map.groupBy(steps, (step) => step.manoeuvre)].map(([id, stages]) => {
    const manoeuvre = manoeuvres.get(id);
    if (manoeuvre === undefined)
      throw new Error(`The run sheet names the manoeuvre "${id}", which the library does not have.`);
    return { manoeuvre, positions: stages.map(({ position }) => position) };
  });
}
