import type { Coding, Extension, QuestionnaireItem, QuestionnaireItemAnswerOption } from '@medplum/fhirtypes';
import type { FormField, FormItem, FormSection } from '../../schemas/form.ts';
import type { AnswerOption } from './answer-options.ts';
import { type Answer, answersOf } from './answers.ts';
import { codeSystems } from './code-systems.ts';
import { extensionUrls } from './extension-urls.ts';
import { normalLines } from './normal-words.ts';
import { safetyLines } from './safety-words.ts';

/** A system of the form: safety lines before the fields of each manoeuvre. */
export function groupItem(section: FormSection): QuestionnaireItem {
  const item = section.items.flatMap((each) => [...headItems(each), ...fieldItems(each)]);
  return { linkId: section.linkId, type: 'group', text: section.title, item };
}

function headItems(item: FormItem): QuestionnaireItem[] {
  const title = { linkId: `${item.manoeuvre}.title`, text: item.title };
  return [title, ...safetyLines(item)].map(displayItem);
}

function fieldItems({ fields }: FormItem): QuestionnaireItem[] {
  const records = [...new Set(fields.map(({ record }) => record))];
  return records.flatMap((record) => {
    const own = fields.filter((field) => field.record === record);
    return [...normalLines(own).map(displayItem), ...own.flatMap(answersOf).map(answerItem)];
  });
}

/** A line to read, not to fill. */
function displayItem({ linkId, text }: { linkId: string; text: string }): QuestionnaireItem {
  return { linkId, type: 'display', text };
}

/** A blank to fill. */
function answerItem(answer: Answer): QuestionnaireItem {
  return {
    ...extensions(answer),
    linkId: answer.linkId,
    ...(answer.part === undefined ? loincCode(answer.field) : {}),
    text: answer.label,
    type: itemTypes[answer.type],
    ...enabledWhen(answer),
    ...(answer.type === 'coded' ? { answerOption: answer.options.map(answerOption) } : {}),
  };
}

const itemTypes = { coded: 'choice', number: 'decimal', text: 'text' } as const;

function extensions(answer: Answer): { extension?: Extension[] } {
  if (answer.type !== 'number') return {};
  const { unit, unitLabel, min, max } = answer;
  return {
    extension: [
      { url: extensionUrls.min, valueDecimal: min },
      { url: extensionUrls.max, valueDecimal: max },
      { url: extensionUrls.unit, valueCoding: { system: codeSystems.ucum, code: unit, display: unitLabel } },
    ],
  };
}

function loincCode({ code, codeDisplay }: FormField): { code?: Coding[] } {
  if (code === undefined || codeDisplay === undefined) return {};
  return { code: [{ system: codeSystems.loinc, code, display: codeDisplay }] };
}

function enabledWhen({ when }: Answer): Pick<QuestionnaireItem, 'enableWhen'> {
  if (when === undefined) return {};
  return { enableWhen: [{ question: when.linkId, operator: '=', answerCoding: coding(when.option) }] };
}

function answerOption(option: AnswerOption): QuestionnaireItemAnswerOption {
  return { valueCoding: coding(option) };
}

function coding({ system, code, officialName }: AnswerOption): Coding {
  return { system, code, display: officialName };
}
