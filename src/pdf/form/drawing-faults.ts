import type { DrawnField } from './drawn-fields.ts';
import type { FieldSpec } from './field-spec.ts';

const where = (drawn: readonly DrawnField[]): string =>
  `page ${[...new Set(drawn.map(({ page }) => page))].join(' and ')}`;

const unknownFaults = (names: ReadonlySet<string>, drawn: readonly DrawnField[]): string[] =>
  drawn
    .filter(({ name }) => !names.has(name))
    .map((place) => `${where([place])} draws a field "${place.name}" that the form does not have`);

const onceFaults = (what: string, places: readonly DrawnField[]): string[] => {
  if (places.length === 0) return [`${what} is not drawn on any page`];
  return places.length > 1 ? [`${what} is drawn ${places.length} times, ${where(places)}; draw it once`] : [];
};

function groupFaults(spec: Extract<FieldSpec, { kind: 'radio' }>, places: readonly DrawnField[]): string[] {
  const stray = places.filter(({ option }) => option === undefined || option >= spec.options.length);
  return [
    ...stray.map(
      (place) => `field "${spec.name}" is drawn with the answer ${place.option ?? 'missing'}, which it lacks`,
    ),
    ...spec.options.flatMap(({ code }, index) =>
      onceFaults(
        `answer "${code}" of field "${spec.name}"`,
        places.filter(({ option }) => option === index),
      ),
    ),
  ];
}

function fieldFaults(spec: FieldSpec, places: readonly DrawnField[]): string[] {
  if (spec.kind === 'radio') return groupFaults(spec, places);
  const boxes = places.filter(({ option }) => option !== undefined);
  if (boxes.length > 0) return [`field "${spec.name}" is drawn as a radio group, but is a ${spec.kind} field`];
  if (spec.kind === 'text' && spec.optional === true && places.length === 0) return [];
  const repeats = spec.kind === 'text' && spec.repeats === true && places.length > 0;
  return repeats ? [] : onceFaults(`field "${spec.name}"`, places);
}

/** Where the fields and the drawing disagree: each field, and each answer of a radio group, is drawn once. */
export function drawingFaults(specs: readonly FieldSpec[], drawn: readonly DrawnField[]): string[] {
  const places = Map.groupBy(drawn, ({ name }) => name);
  const names = new Set(specs.map(({ name }) => name));
  return [...unknownFaults(names, drawn), ...specs.flatMap((spec) => fieldFaults(spec, places.get(spec.name) ?? []))];
}
