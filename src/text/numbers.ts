/** Thin space that does not break, between a number and its unit. */
export const thin = '\u202f';

const unitLabels: Readonly<Record<string, string>> = {
  '1': '',
  'mm[Hg]': 'mmHg',
  'cm[H2O]': 'cmH₂O',
  Cel: '°C',
  '[degF]': '°F',
  '[in_i]': 'in',
  '[lb_av]': 'lb',
  deg: '°',
  mo: 'months',
  'kg/m2': 'kg/m²',
  a: 'years',
  d: 'days',
  wk: 'weeks',
};

/** A UCUM unit code as people write it: `mm[Hg]` is "mmHg", `deg` is "°", `1` is nothing. */
export function unitLabel(ucum: string): string {
  return unitLabels[ucum] ?? ucum;
}

/** A number for reading: a true minus sign, no thousands mark. */
export function numberText(value: number): string {
  return String(value).replace('-', '−');
}

/** A number with its unit: "3 cm", "45°", "12 /min"; a count has none. */
export function quantityText(value: number, ucum: string): string {
  return withUnit(numberText(value), ucum);
}

/** Text of a number or range followed by its unit. */
export function withUnit(text: string, ucum: string): string {
  const label = unitLabel(ucum);
  if (label === '') return text;
  return label === '°' || label === '%' ? `${text}${label}` : `${text}${thin}${label}`;
}

/** A range with its unit: "12–18 /min"; "−5 to 20 cm" when an end is negative. */
export function rangeText(low: number, high: number, ucum: string): string {
  const join = low < 0 || high < 0 ? ' to ' : '–';
  return withUnit(`${numberText(low)}${join}${numberText(high)}`, ucum);
}
