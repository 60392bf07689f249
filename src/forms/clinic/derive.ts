import type { Clinic, ClinicForm } from '../../../schemas/clinic.ts';
import type { Form, FormItem, FormOmission, FormSection, FormSource } from '../../../schemas/form.ts';
import type { Library } from '../../../schemas/library.ts';
import { nameBeside, titleOfOwn } from '../../library/clinic/names.ts';
import { formHash } from '../form-hash.ts';
import { fullCitation } from '../sources.ts';
import { withAdded } from './added-fields.ts';
import { misfits } from './fit.ts';
import { wholeOmission, withoutRecords } from './hidden-fields.ts';
import { reordered } from './reorder.ts';

/**
 * The draft of a clinic's form: the pinned release of the shared form, with what the clinic hides, adds, notes and
 * reorders, and with an identity of its own. Whole in itself. Throws, naming each, when something no longer fits.
 */
export function derivedForm(library: Library, clinic: Clinic, own: ClinicForm, pinned: Form): Form {
  const wrong = misfits(clinic, own, pinned);
  if (wrong.length > 0)
    throw new Error(
      `The form "${own.form}" of "${clinic.name}" does not fit its shared form:\n${wrong.map(({ message }) => message).join('\n')}`,
    );
  const { sections, notPart } = changedSections(library, clinic, own, pinned);
  const used = new Set(sections.flatMap(({ items }) => items.flatMap(({ positions }) => positions)));
  const { id, purpose, leavesOut, mustNotMiss } = pinned;
  const content: Omit<Form, 'hash'> = {
    ...{ id, purpose, leavesOut, mustNotMiss, sections, notPart },
    ...identityOf(clinic, own, pinned),
    positions: pinned.positions.filter((position) => used.has(position.id)),
  };
  return { ...content, hash: formHash(content), sources: sourcesWith(library, own, pinned) };
}

function identityOf(
  clinic: Clinic,
  own: ClinicForm,
  pinned: Form,
): Pick<Form, 'title' | 'url' | 'version' | 'status' | 'date' | 'publisher' | 'copyright' | 'derivedFrom'> {
  const { title, url, version, copyright } = pinned;
  const by = nameBeside(clinic);
  return {
    title: titleOfOwn(clinic, own, title),
    ...{ url: own.url, version: own.version, status: 'draft', date: own.drafted, publisher: clinic.name },
    copyright: `${copyright} Adapted by ${clinic.name} from “${title}” ${version}, ${url}; what is marked ${by} is its own.`,
    derivedFrom: { clinic: clinic.id, by, title, url, version },
  };
}

function changedSections(
  library: Library,
  clinic: Clinic,
  own: ClinicForm,
  pinned: Form,
): { sections: FormSection[]; notPart: FormOmission[] } {
  const hidden = new Set([...clinic.hidden, ...own.hidden]);
  const records = new Set(own.hiddenRecords);
  const notPart: FormOmission[] = [];
  const changed = (item: FormItem): FormItem[] => {
    if (hidden.has(item.manoeuvre)) {
      notPart.push(wholeOmission(item));
      return [];
    }
    const { item: left, omission } = withoutRecords(withAdded(library, clinic, item, own.added), records);
    if (omission !== undefined) notPart.push(omission);
    return [noted(left, clinic)];
  };
  const sections = pinned.sections.map((section) => ({ ...section, items: section.items.flatMap(changed) }));
  const held = sections.filter(({ items }) => items.length > 0);
  return { sections: reordered(held, library, clinic.order), notPart };
}

function noted(item: FormItem, clinic: Clinic): FormItem {
  const words = clinic.notes[item.manoeuvre];
  if (words === undefined) return item;
  const { fields, ...head } = item;
  return { ...head, localNote: { by: nameBeside(clinic), words }, fields };
}

/** The sources of the shared form, and those of the scales that the clinic adds. */
function sourcesWith(library: Library, { added }: ClinicForm, { sources = [] }: Form): FormSource[] {
  const scales = new Set(added.flatMap(({ record }) => (record.kind === 'scale' ? [record.scale] : [])));
  const ids = new Set(library.scales.filter(({ id }) => scales.has(id)).map(({ source }) => source));
  const more = library.sources
    .filter(({ id }) => ids.has(id) && !sources.some((each) => each.id === id))
    .map((source) => ({ id: source.id, citation: fullCitation(source), status: source.status }));
  return [...sources, ...more].sort((a, b) => (a.id < b.id ? -1 : 1));
}
