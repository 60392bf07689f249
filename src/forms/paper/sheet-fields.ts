import type { FieldOption, FieldSpec } from '../../pdf/form/field-spec.ts';

/** Names of the blanks that every sheet has beside the form's own begin so; no record may be called "sheet". */
const prefix = 'sheet_';

const text = (name: string, tooltip: string): FieldSpec => ({ kind: 'text', name: prefix + name, tooltip });
const onEverySide = (name: string, tooltip: string): FieldSpec => ({
  ...{ kind: 'text', name: prefix + name, tooltip },
  repeats: true,
});
const lines = (name: string, tooltip: string): FieldSpec => ({
  ...{ kind: 'text', name: prefix + name, tooltip },
  multiline: true,
});
const tick = (name: string, tooltip: string): FieldSpec => ({ kind: 'tick', name: prefix + name, tooltip });
const radio = (name: string, tooltip: string, options: readonly FieldOption[]): FieldSpec => ({
  ...{ kind: 'radio', name: prefix + name, tooltip, options },
});

/** Whose sheet it is: asked for on every side that is filled in. */
export const identityFields: readonly FieldSpec[] = [
  onEverySide('name', 'Patient’s name'),
  onEverySide('birth', 'Patient’s date of birth'),
  onEverySide('number', 'Patient’s number'),
];

const occasion: FieldSpec[] = [
  text('date', 'Date of the examination'),
  text('start', 'Time begun'),
  text('end', 'Time ended'),
  text('examiner', 'Examiner’s name'),
  text('examiner-role', 'Examiner’s role'),
  text('examiner-signature', 'Examiner’s signature'),
];

const company: FieldSpec[] = [
  radio('chaperone', 'Chaperone', [
    { code: 'present', display: 'present' },
    { code: 'declined', display: 'offered and declined' },
  ]),
  text('chaperone-name', 'Chaperone’s name'),
  text('chaperone-role', 'Chaperone’s role'),
  radio('interpreter', 'Interpreter', [
    { code: 'not-needed', display: 'not needed' },
    { code: 'used', display: 'used' },
  ]),
  text('interpreter-name', 'Interpreter’s name or number, and language'),
];

const state: FieldSpec[] = [
  radio('oxygen', 'Breathing', [
    { code: 'air', display: 'room air' },
    { code: 'oxygen', display: 'oxygen' },
  ]),
  text('oxygen-flow', 'Oxygen: flow and device'),
  text('positions', 'Positions that the patient cannot take'),
  tick('consent', 'Consent: purpose explained, agrees, knows that they may stop at any time'),
  text('consent-note', 'If not able to agree: how it was decided, and by whom'),
];

/** Drawn only where the form's last side is the front of a sheet. */
const more: FieldSpec = { kind: 'text', name: `${prefix}more`, tooltip: 'More room', multiline: true, optional: true };

/** Drawn only beside body charts: a form that only measures has none. */
const charts: FieldSpec = {
  kind: 'text',
  name: `${prefix}charts`,
  tooltip: 'What the marks on the body charts mean',
  multiline: true,
  optional: true,
};

const told = (row: number): FieldSpec[] => [
  text(`told-${row}-who`, `Told, line ${row}: who`),
  text(`told-${row}-what`, `Told, line ${row}: what`),
  text(`told-${row}-when`, `Told, line ${row}: when`),
];

/** Lines for who was told. */
export const toldRows = [1, 2, 3];

const closing: FieldSpec[] = [
  radio('change', 'Compared with before', [
    { code: 'first', display: 'first examination' },
    { code: 'same', display: 'no change' },
    { code: 'changed', display: 'changed' },
  ]),
  text('change-since', 'Compared with the examination or baseline of'),
  text('change-what', 'What changed'),
  lines('summary', 'Summary and what is to be done'),
  ...toldRows.flatMap(told),
  text('signed', 'Signature'),
  text('signed-time', 'Date and time of the signature'),
  text('reviewer', 'Reviewed by: name and role'),
  text('reviewer-signature', 'Reviewer’s signature'),
  text('reviewed-time', 'Date and time of the review'),
  charts,
  more,
];

/** The blanks at the head of the sheet: who, when, with whom, in what state. */
export const openingFields: readonly FieldSpec[] = [...identityFields, ...occasion, ...company, ...state];

/** The blanks at its end: what changed, what follows, who was told, who signs. */
export const closingFields: readonly FieldSpec[] = closing;

/** The blanks of every sheet beside the form's own: who, when, with whom, how it ended. No part of the form's data. */
export const sheetFields: readonly FieldSpec[] = [...openingFields, ...closingFields];
