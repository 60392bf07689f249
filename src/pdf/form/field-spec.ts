/** One answer of a radio group or a list: what is stored, and what a reader sees. */
export interface FieldOption {
  code: string;
  display: string;
}

interface Common {
  /** Unique in the document: letters, digits, `_` and `-`. A dot would make a hierarchy. */
  name: string;
  /** What a screen reader says and a pointer shows: label, side and unit. */
  tooltip: string;
}

/** A field that a form is to hold. The template draws its place; see `fieldAddress`. */
export type FieldSpec =
  | (Common & {
      kind: 'text';
      /** Several lines; default one, whose type shrinks to fit. */
      multiline?: true;
      /** May be drawn on several pages: typed once, shown on each. */
      repeats?: true;
      /** Size in points in which it is typed, whatever its height; default 10 over several lines, else fitted. */
      size?: number;
      /** May be left undrawn, where the sheet has no room for it; then the document has no such field. */
      optional?: true;
    })
  | (Common & { kind: 'tick' })
  /** One box for each answer. */
  | (Common & { kind: 'radio'; options: readonly FieldOption[] })
  /** One line that opens a list; on paper it is written on. */
  | (Common & { kind: 'list'; options: readonly FieldOption[] });

/** Thrown when fields and drawing disagree, or a field is unsound. One line for each fault. */
export class FormFieldError extends Error {
  override name = 'FormFieldError';
}

/** Throws FormFieldError with every fault at once, none when there are none. */
export function refuse(faults: readonly string[]): void {
  if (faults.length > 0) throw new FormFieldError(faults.join('\n'));
}

/** Field names that every reader takes. */
const wellFormed = /^[A-Za-z0-9_-]+$/;
/** A code becomes a PDF name: printable ASCII; `#` would be read as an escape, and `Off` means "not chosen". */
const wellFormedCode = /^(?!Off$)[\x20-\x22\x24-\x7e]+$/;

const nameFaults = ({ name }: FieldSpec): string[] =>
  wellFormed.test(name)
    ? []
    : [`field name "${name}" has a character outside A–Z, a–z, 0–9, "_" and "-"; write "_" for each "."`];

const tooltipFaults = ({ name, tooltip }: FieldSpec): string[] =>
  tooltip.trim() === '' ? [`field "${name}" has no tooltip; give its label with side and unit`] : [];

const repeated = (words: readonly string[]): string[] => [
  ...new Set(words.filter((word, index) => words.indexOf(word) < index)),
];

function optionFaults(spec: FieldSpec): string[] {
  if (!('options' in spec)) return [];
  const { name, options } = spec;
  const codes = options.map(({ code }) => code);
  return [
    ...(options.length < 2 ? [`field "${name}" offers ${options.length} answers; give at least two`] : []),
    ...repeated(codes).map((code) => `field "${name}" offers the answer "${code}" twice; each code once`),
    ...codes
      .filter((code) => !wellFormedCode.test(code))
      .map((code) => `field "${name}" has the code "${code}"; a code is printable ASCII without "#", and not "Off"`),
  ];
}

/** What is wrong with the fields themselves, before any is drawn. */
export function specFaults(specs: readonly FieldSpec[]): string[] {
  return [
    ...repeated(specs.map(({ name }) => name)).map((name) => `field name "${name}" is used twice; each name once`),
    ...specs.flatMap((spec) => [...nameFaults(spec), ...tooltipFaults(spec), ...optionFaults(spec)]),
  ];
}
