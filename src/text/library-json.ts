import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Line } from '../../schemas/inline.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Record as FormRecord } from '../../schemas/record.ts';
import { plainText } from './plain.ts';

/** The whole library for machines, as served at /library.json; text is plain, orders by rule are included. */
export function libraryJson(library: Library, manoeuvresOf: (form: FormDefinition) => string[]): object {
  return {
    version: library.version,
    hash: library.hash,
    protocols: library.protocols.map(({ id, title, system, order, manoeuvres }) => ({
      id,
      title,
      system,
      order,
      manoeuvres: manoeuvres.map((one) => manoeuvreJson(one, library)),
    })),
    positions: library.positions.map(({ id, label, changeSeconds }) => ({ id, label, changeSeconds })),
    exposures: library.exposures,
    instruments: library.instruments,
    values: library.values,
    scales: library.scales,
    evidence: library.evidence,
    sources: library.sources,
    forms: library.forms.map((form) => ({
      id: form.id,
      title: form.title,
      version: form.version,
      manoeuvres: manoeuvresOf(form),
    })),
  };
}

function manoeuvreJson(one: Manoeuvre, library: Library): object {
  const text = (line: Line): string => plainText(line, library);
  return {
    ...{
      id: one.id,
      title: one.title,
      synonyms: one.synonyms,
      aim: text(one.aim),
      scope: one.scope,
      sensitive: one.sensitive,
    },
    ...{ stages: one.stages, exposure: one.exposure, examiner: one.examiner, instruments: one.instruments },
    ...{ seconds: one.seconds, sides: one.sides, after: [...one.after, ...one.derivedAfter] },
    tell: one.tell.map(text),
    technique: one.technique.map(text),
    normal: one.normal.map(text),
    abnormal: one.abnormal.map(text),
    redFlags: one.redFlags.map(({ urgency, finding, action }) => ({
      urgency,
      finding: text(finding),
      action: text(action),
    })),
    ...(one.noRedFlag ? { noRedFlag: text(one.noRedFlag) } : {}),
    cautions: one.cautions.map(text),
    errors: one.errors.map(text),
    adaptations: one.adaptations.map(text),
    records: one.records.map((record) => recordJson(record, text)),
    evidence: evidenceIn(one),
    sources: one.sources,
  };
}

function recordJson(record: FormRecord, text: (line: Line) => string): object {
  return record.kind === 'finding' ? { ...record, normal: text(record.normal) } : record;
}

/** Ids of the evidence that a manoeuvre refers to, in the order of reading. */
export function evidenceIn(one: Manoeuvre): string[] {
  const lines = [...one.normal, ...one.abnormal, ...one.cautions, ...one.errors, ...one.technique, ...one.adaptations];
  return [...new Set(lines.flat().flatMap((part) => (part.type === 'evidence' ? [part.id] : [])))];
}
