import type { Clinic } from '../../../schemas/clinic.ts';
import type { Content, Entry } from '../content.ts';
import { manoeuvresOf } from '../rules/rule.ts';
import type { ClinicCheck } from './clinic-check.ts';

/** What opens and closes every examination, and what is kept however little time there is, cannot be hidden. */
export const hidden: ClinicCheck = (entry, content, report) => {
  const { value, at } = entry;
  const kept = keptAlways(content);
  for (const { id, path } of hiddenManoeuvres(entry)) {
    const why = kept.get(id);
    if (why !== undefined) report(at(path), `"${id}" cannot be hidden: ${why}. Take it out of "hidden".`);
  }
  if (value.hidden.length > 0 && value.forms.length === 0)
    report(
      at(['hidden']),
      'Nothing is hidden by this: the clinic has no form of its own. Write the form under "forms", or take "hidden" out.',
    );
};

/** Every manoeuvre that an edition hides, with the place where it does. */
function hiddenManoeuvres({ value }: Entry<Clinic>): { id: string; path: PropertyKey[] }[] {
  return [
    ...value.hidden.map((id, index) => ({ id, path: ['hidden', index] })),
    ...value.forms.flatMap((form, number) =>
      form.hidden.map((id, index) => ({ id, path: ['forms', number, 'hidden', index] })),
    ),
  ];
}

function keptAlways(content: Content): Map<string, string> {
  const preparation = manoeuvresOf(content).filter(({ value }) => value.scope === 'preparation');
  const rungs = content.tables.priorities.filter(({ value }) => value.keep === 'always');
  return new Map([
    ...rungs.flatMap(({ value }) =>
      value.manoeuvres.map((id): [string, string] => [id, `it is kept always (${value.title})`]),
    ),
    ...preparation.map(({ value }): [string, string] => [
      value.id,
      'it belongs to the preparation, which keeps the patient safe',
    ]),
  ]);
}
