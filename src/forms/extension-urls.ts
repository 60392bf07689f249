/** FHIR extensions that the items of a form carry. Source: HL7 FHIR R4 (4.0.1) extension definitions. */
export const extensionUrls = {
  /** UCUM unit of a decimal. */
  unit: 'http://hl7.org/fhir/StructureDefinition/questionnaire-unit',
  /** Smallest number accepted. */
  min: 'http://hl7.org/fhir/StructureDefinition/minValue',
  /** Largest number accepted. */
  max: 'http://hl7.org/fhir/StructureDefinition/maxValue',
} as const;
