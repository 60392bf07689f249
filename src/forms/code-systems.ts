/** Permanent root of the project's canonical addresses: a constant, never made from the address of a site. */
const canonicalRoot = 'https://fingerbreadth.example';

/** Canonical addresses of the code systems that a form uses. */
export const codeSystems = {
  /** HL7 ObservationInterpretation: `N` normal, `A` abnormal. */
  interpretation: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation',
  /** HL7 data-absent-reason: `not-performed`. */
  absent: 'http://terminology.hl7.org/CodeSystem/data-absent-reason',
  /** LOINC, used only with its official name and notice. */
  loinc: 'http://loinc.org',
  /** UCUM units. */
  ucum: 'http://unitsofmeasure.org',
  /** The project's reasons for not examining. */
  reason: `${canonicalRoot}/codes/reason-not-examined`,
  /** The project's codes for the side that was used. */
  side: `${canonicalRoot}/codes/side`,
  /** The project's codes for how a watched item was done. */
  watched: `${canonicalRoot}/codes/watched`,
  /** The project's codes for the judgement of a whole watched examination. */
  judgement: `${canonicalRoot}/codes/judgement-of-the-whole`,
} as const;

/** Code system of a graded scale. */
export const scaleSystem = (scale: string): string => `${canonicalRoot}/scales/${scale}`;

/** Code system of the fixed answers of one record. */
export const choiceSystem = (record: string): string => `${canonicalRoot}/choices/${record}`;
