import { codeSystems } from './code-systems.ts';

/** One answer that can be chosen. */
export interface AnswerOption {
  /** Canonical address of the code system. */
  system: string;
  /** What is stored. */
  code: string;
  /** What a reader is shown. */
  label: string;
  /** Name that the owner of the code system gives the code; a FHIR display may be no other. */
  officialName: string;
}

const interpretation = (code: string, name: string): AnswerOption => ({
  system: codeSystems.interpretation,
  code,
  label: name,
  officialName: name,
});

/** The finding is normal. */
export const normalOption = interpretation('N', 'Normal');
/** The finding is abnormal; opens the line for detail. */
export const abnormalOption = interpretation('A', 'Abnormal');
/** Not examined; opens the reason. HL7 calls the code "Not Performed". */
export const notExaminedOption: AnswerOption = {
  system: codeSystems.absent,
  code: 'not-performed',
  label: 'Not examined',
  officialName: 'Not Performed',
};

/** The answers of every finding, in the order shown. No answer fills in more than its own item. */
export const findingOptions: readonly AnswerOption[] = [normalOption, abnormalOption, notExaminedOption];

/** An option of a code system that the project owns. */
export function ownOption(system: string, code: string, label: string): AnswerOption {
  return { system, code, label, officialName: label };
}

const reason = (code: string, label: string): AnswerOption => ownOption(codeSystems.reason, code, label);

/** Why a finding was not examined, in the order shown. */
export const reasonOptions: readonly AnswerOption[] = [
  reason('declined', 'Declined'),
  reason('unable', 'Unable'),
  reason('not-indicated', 'Not indicated'),
  reason('no-time', 'No time'),
  reason('part-absent', 'Part absent'),
];
