import type { Clinic, ClinicForm } from '../../../schemas/clinic.ts';
import type { Form, FormItem } from '../../../schemas/form.ts';
import { didYouMean } from '../../library/suggest.ts';

/** Something in an edition that has no place in the shared form it is pinned to. */
export interface Misfit {
  /** Where it is written: below the entry of the form, or below the clinic. */
  of: 'form' | 'clinic';
  path: PropertyKey[];
  message: string;
}

/** Everything of a clinic's form that does not fit the release that it is pinned to; after an upgrade, what the change lost. */
export function misfits(clinic: Clinic, own: ClinicForm, pinned: Form): Misfit[] {
  const on = `${pinned.id} ${pinned.version}`;
  const items = pinned.sections.flatMap((section) => section.items);
  return [
    ...hiddenMisfits(own, items, on),
    ...recordMisfits(own, items, on),
    ...additionMisfits(clinic, own, items, on),
    ...emptied(clinic, own, items, on),
  ];
}

const misfit = (path: PropertyKey[], message: string): Misfit => ({ of: 'form', path, message });

function hiddenMisfits({ hidden }: ClinicForm, items: readonly FormItem[], on: string): Misfit[] {
  const known = items.map(({ manoeuvre }) => manoeuvre);
  return hidden.flatMap((id, index) =>
    known.includes(id)
      ? []
      : [
          misfit(
            ['hidden', index],
            `The hidden manoeuvre "${id}" is not on ${on}.${didYouMean(id, known)} Take it out of "hidden".`,
          ),
        ],
  );
}

function recordMisfits({ hiddenRecords }: ClinicForm, items: readonly FormItem[], on: string): Misfit[] {
  const known = items.flatMap(({ fields }) => fields.map(({ record }) => record));
  return hiddenRecords.flatMap((id, index) =>
    known.includes(id)
      ? []
      : [
          misfit(
            ['hiddenRecords', index],
            `The hidden record "${id}" is not on ${on}.${didYouMean(id, known)} Take it out of "hiddenRecords".`,
          ),
        ],
  );
}

function additionMisfits(clinic: Clinic, own: ClinicForm, items: readonly FormItem[], on: string): Misfit[] {
  const hidden = new Set([...clinic.hidden, ...own.hidden]);
  const taken = new Set(items.flatMap(({ fields }) => fields.map(({ record }) => record)));
  return own.added.flatMap(({ manoeuvre, after, record: { id } }, index) => {
    const at = (key: string, message: string): Misfit => misfit(['added', index, ...key.split('.')], message);
    const item = items.find((each) => each.manoeuvre === manoeuvre);
    const reuse = taken.has(id)
      ? [at('record.id', `The added record "${id}" is on ${on} already. Give it another id.`)]
      : [];
    if (item === undefined) {
      const near = didYouMean(
        manoeuvre,
        items.map((each) => each.manoeuvre),
      );
      return [
        ...reuse,
        at(
          'manoeuvre',
          `The added record "${id}" stands with "${manoeuvre}", which is not on ${on}.${near} Give it another place, or take it out.`,
        ),
      ];
    }
    if (hidden.has(manoeuvre))
      return [
        ...reuse,
        at(
          'manoeuvre',
          `The added record "${id}" stands with "${manoeuvre}", which this form hides. Give it another place, or show that manoeuvre.`,
        ),
      ];
    return [
      ...reuse,
      ...anchorMisfits(own.added.slice(0, index), item, { id, after }, (message) => at('after', message), on),
    ];
  });
}

function anchorMisfits(
  before: ClinicForm['added'],
  item: FormItem,
  { id, after }: { id: string; after: string | undefined },
  at: (message: string) => Misfit,
  on: string,
): Misfit[] {
  const earlier = before.filter(({ manoeuvre }) => manoeuvre === item.manoeuvre).map(({ record }) => record.id);
  const known = [...item.fields.map(({ record }) => record), ...earlier];
  if (after === undefined || known.includes(after)) return [];
  return [
    at(
      `The added record "${id}" stands behind "${after}", which "${item.manoeuvre}" on ${on} does not ask for.${didYouMean(after, known)} Name another record, or leave "after" out.`,
    ),
  ];
}

function emptied(clinic: Clinic, own: ClinicForm, items: readonly FormItem[], on: string): Misfit[] {
  const hidden = new Set([...clinic.hidden, ...own.hidden]);
  const asking = items.filter(({ manoeuvre, fields }) => !hidden.has(manoeuvre) && fields.length > 0);
  if (asking.length > 0) return [];
  return [
    misfit(['form'], `Everything that ${on} asks for is hidden. Keep at least one manoeuvre, or take this form out.`),
  ];
}
