import type { Value } from '../../schemas/value.ts';
import { quantityText, rangeText } from './numbers.ts';

/** A value inside a sentence: "3 cm (elsewhere 4 cm)", "12–18 /min", "5.4 cm supine; 8 cm at 30°". */
export function valueText(value: Value): string {
  const others = value.others.map(({ value: other }) =>
    typeof other === 'number' ? quantityText(other, value.unit) : rangeText(other.low, other.high, value.unit),
  );
  const figure = figureText(value);
  return others.length === 0 ? figure : `${figure} (elsewhere ${others.join(', ')})`;
}

/** The figure that the project uses, alone. */
export function figureText(value: Value): string {
  switch (value.kind) {
    case 'limit':
    case 'number':
      return quantityText(value.value, value.unit);
    case 'range':
      return rangeText(value.low, value.high, value.unit);
    case 'series':
      return value.points.map(({ at, value: point }) => `${quantityText(point, value.unit)} ${at}`).join('; ');
  }
}

const limitWords = { 'at-most': 'at most', 'at-least': 'at least', below: 'below', above: 'above' } as const;

/** What is normal, for a form or a table: "at most 3 cm", "12–18 /min". */
export function normalText(value: Value): string {
  return value.kind === 'limit' ? `${limitWords[value.normal]} ${valueText(value)}` : valueText(value);
}
