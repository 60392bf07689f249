import type { QuestionnaireItem, QuestionnaireItemAnswerOption } from '@medplum/fhirtypes';
import { itemInvariant, shown } from './invariant.ts';

/** Choices have at least two options, each a full Coding, no two with the same code or the same words; nothing else has any. */
export const options = itemInvariant('options', 'Choices offer distinct, fully coded options.', (item) =>
  item.type === 'choice' ? choiceFaults(item) : otherFaults(item),
);

function choiceFaults({ answerOption = [], answerValueSet }: QuestionnaireItem): string[] {
  const codings = answerOption.flatMap(({ valueCoding }) => valueCoding ?? []);
  return [
    ...(answerValueSet === undefined
      ? []
      : ['found answerValueSet, expected the options themselves so that the form stands alone']),
    ...(answerOption.length < 2 ? [`found ${answerOption.length} options, expected at least two`] : []),
    ...answerOption.flatMap(codingFaults),
    ...repeats(
      'code',
      codings.map(({ system, code }) => `${system}|${code}`),
    ),
    ...repeats(
      'display',
      codings.map(({ display }) => display ?? ''),
    ),
  ];
}

function codingFaults({ valueCoding, ...other }: QuestionnaireItemAnswerOption): string[] {
  if (valueCoding === undefined)
    return [`found an option of type ${shown(Object.keys(other)[0])}, expected valueCoding`];
  const missing = (['system', 'code', 'display'] as const).filter((key) => !valueCoding[key]?.trim());
  return missing.map((key) => `found an option without ${key}, expected system, code and display`);
}

function otherFaults({ type, answerOption }: QuestionnaireItem): string[] {
  return answerOption?.length ? [`found options on a "${type}" item, expected them on "choice" alone`] : [];
}

function repeats(part: string, values: string[]): string[] {
  const again = values.filter((value, index) => values.indexOf(value) < index);
  return [...new Set(again)].map((value) => `found two options with ${part} "${value}", expected each once`);
}
