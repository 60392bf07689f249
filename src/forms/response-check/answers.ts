import type { QuestionnaireItem } from '@medplum/fhirtypes';
import { didYouMean } from '../../library/suggest.ts';
import { extensionUrls } from '../extension-urls.ts';
import { found, isGroup, type ResponseFault } from './fault.ts';

type Path = ResponseFault['path'];

/** Key that holds the answer to an item of a type. Source: HL7 FHIR R4 (4.0.1), QuestionnaireResponse.item.answer.value[x]. */
const valueKeys: { readonly [type: string]: string } = {
  choice: 'valueCoding',
  decimal: 'valueDecimal',
  text: 'valueString',
};

/** What is wrong with what was answered to a question. */
export function answerFaults(asked: QuestionnaireItem, path: Path, answers: unknown): ResponseFault[] {
  if (answers === undefined)
    return [{ path, message: `"${asked.linkId}" has no answer. Answer it or leave the item out.` }];
  if (!Array.isArray(answers) || answers.length === 0)
    return [
      {
        path,
        message: `Found ${Array.isArray(answers) ? 'an empty list' : found(answers)}, expected a list with one answer. Write "answer": [{…}].`,
      },
    ];
  const more =
    answers.length > 1
      ? [{ path, message: `Found ${answers.length} answers to "${asked.linkId}", which takes one. Keep one.` }]
      : [];
  return [...more, ...(answers as unknown[]).flatMap((answer, index) => oneAnswer(asked, [...path, index], answer))];
}

function oneAnswer(asked: QuestionnaireItem, path: Path, answer: unknown): ResponseFault[] {
  const expected = valueKeys[asked.type] ?? 'value';
  if (!isGroup(answer))
    return [{ path, message: `Found ${found(answer)}, expected an object with ${expected}. Write it so.` }];
  const other = Object.keys(answer).filter((key) => ![expected, 'id', 'extension'].includes(key));
  const strays = other.map((key) => ({
    path: [...path, key],
    message: `Found "${key}", but "${asked.linkId}" is answered in ${expected}. Write ${expected} alone.`,
  }));
  if (answer[expected] === undefined)
    return strays.length > 0
      ? strays
      : [{ path, message: `Found no value, expected ${expected}. Write the answer or leave the item out.` }];
  return [...strays, ...valueFaults(asked, [...path, expected], answer[expected])];
}

function valueFaults(asked: QuestionnaireItem, path: Path, value: unknown): ResponseFault[] {
  if (asked.type === 'choice') return codingFaults(asked, path, value);
  return asked.type === 'decimal' ? numberFaults(asked, path, value) : wordsFaults(path, value);
}

function wordsFaults(path: Path, value: unknown): ResponseFault[] {
  if (typeof value === 'string' && value.trim() !== '') return [];
  return [{ path, message: `Found ${found(value)}, expected words. Write them or leave the item out.` }];
}

function numberFaults({ extension = [], linkId }: QuestionnaireItem, path: Path, value: unknown): ResponseFault[] {
  if (typeof value !== 'number')
    return [{ path, message: `Found ${found(value)}, expected a number. Write it without quotation marks or unit.` }];
  const limit = (url: string): number | undefined => extension.find((each) => each.url === url)?.valueDecimal;
  const [min = -Infinity, max = Infinity] = [limit(extensionUrls.min), limit(extensionUrls.max)];
  const unit = extension.find(({ url }) => url === extensionUrls.unit)?.valueCoding?.code;
  if (value >= min && value <= max) return [];
  return [
    {
      path,
      message: `Found ${value}, but "${linkId}" accepts ${min} to ${max} (UCUM unit ${unit ?? 'none'}). Check the number and its unit.`,
    },
  ];
}

function codingFaults({ answerOption = [], linkId }: QuestionnaireItem, path: Path, value: unknown): ResponseFault[] {
  const options = answerOption.flatMap(({ valueCoding }) => valueCoding ?? []);
  const codes = options.map(({ code }) => code ?? '');
  if (!isGroup(value))
    return [{ path, message: `Found ${found(value)}, expected a Coding. Write system and code of one answer.` }];
  const { system, code, display } = value;
  const named = options.find((option) => option.code === code);
  if (named === undefined) {
    const near = typeof code === 'string' ? didYouMean(code, codes) : '';
    return [
      {
        path: [...path, 'code'],
        message: `Found the code ${found(code)}; "${linkId}" offers ${codes.join(', ')}.${near} Choose one of them.`,
      },
    ];
  }
  const option = options.find((each) => each.code === code && each.system === system);
  if (option === undefined)
    return [
      {
        path: [...path, 'system'],
        message: `Found the code system ${found(system)}, expected "${named.system ?? ''}". Write it with the code.`,
      },
    ];
  if (display === undefined || display === option.display) return [];
  return [
    {
      path: [...path, 'display'],
      message: `Found the display ${found(display)}, but the code "${option.code ?? ''}" means "${option.display ?? ''}". Check which was meant.`,
    },
  ];
}
