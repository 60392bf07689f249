import { describe, expect, it } from 'vitest';
import { answersOfForm } from '../../../../src/forms/answers.ts';
import { questionnaire } from '../../../../src/forms/questionnaire.ts';
import { questionnaireResponse } from '../../../../src/forms/response.ts';
import { checkResponse } from '../../../../src/forms/response-check/check-response.ts';
import { pathText } from '../../../../src/forms/response-check/fault.ts';
import { present } from '../../../fixtures/present.ts';
import { fixtureForm } from '../fixtures.ts';

const form = fixtureForm();
const asked = questionnaire(form);

/** An answer to every blank that may be answered beside the others: findings are abnormal, so that details are open. */
const answers = new Map(
  answersOfForm(form).flatMap(({ answer }): [string, string][] => {
    if (answer.type === 'coded') {
      if (answer.when !== undefined) return [];
      const code = answer.options.some(({ code: each }) => each === 'A') ? 'A' : present(answer.options[0]).code;
      return [[answer.linkId, code]];
    }
    return [[answer.linkId, answer.type === 'number' ? String(answer.max) : 'Words.']];
  }),
);

interface Item {
  linkId: string;
  text?: unknown;
  answer?: Record<string, unknown>[];
  item?: Item[];
  [key: string]: unknown;
}
interface Response {
  item: Item[];
  [key: string]: unknown;
}

/** A filled form without a fault, new each time. */
const sound = (): Response =>
  structuredClone(questionnaireResponse(form, answers, '2026-11-25T09:30:00Z')) as unknown as Response;

const all = ({ item = [] }: { item?: Item[] }): Item[] => item.flatMap((each) => [each, ...all(each)]);
const itemWith = (response: Response, key: string): Item =>
  present(all(response).find(({ answer }) => answer?.[0]?.[key] !== undefined));
const answerOf = (response: Response, key: string): Record<string, unknown> =>
  present(itemWith(response, key).answer?.[0]);
const finding = (response: Response): Item =>
  present(
    all(response).find(({ answer }) => (answer?.[0]?.['valueCoding'] as { code?: string } | undefined)?.code === 'A'),
  );
const coding = (response: Response): Record<string, unknown> =>
  present(finding(response).answer?.[0])['valueCoding'] as Record<string, unknown>;

const at = '\\bitem\\[\\d+\\]\\.item\\[\\d+\\]';

/** What is broken, where the fault must point, what it must say, and how it is broken. */
const broken: [string, string, string, (response: Response) => void][] = [
  [
    'another resource',
    '^QuestionnaireResponse\\.resourceType$',
    'expected "QuestionnaireResponse"',
    (r) => void (r['resourceType'] = 'Observation'),
  ],
  ['no status', '\\.status$', 'expected one of in-progress, completed', (r) => void delete r['status']],
  ['an unknown status', '\\.status$', 'Found "done"', (r) => void (r['status'] = 'done')],
  ['no form', '\\.questionnaire$', 'Name the form and its version.', (r) => void delete r['questionnaire']],
  [
    'another form',
    '\\.questionnaire$',
    'Found the form "https://x.example/f"',
    (r) => void (r['questionnaire'] = 'https://x.example/f|0.1.0'),
  ],
  ['no version', '\\.questionnaire$', 'Found no version', (r) => void (r['questionnaire'] = form.url)],
  [
    'another version',
    '\\.questionnaire$',
    'Found version "9.9.9"',
    (r) => void (r['questionnaire'] = `${form.url}|9.9.9`),
  ],
  ['a date in words', '\\.authored$', 'expected a FHIR dateTime', (r) => void (r['authored'] = 'yesterday')],
  ['a misspelt key', '\\.autor$', 'Did you mean "author"?', (r) => void (r['autor'] = {})],
  ['items that are no list', '\\.item$', 'expected a list of items', (r) => void (r['item'] = {} as never)],
  ['an empty list of items', '\\.item$', 'Found an empty list', (r) => void (r.item = [])],
  ['an item that is a word', '\\.item\\[0\\]$', 'Found "x", expected an item', (r) => void (r.item[0] = 'x' as never)],
  [
    'an item without linkId',
    '\\.linkId$',
    'expected the linkId',
    (r) => void delete (present(r.item[0]) as Partial<Item>).linkId,
  ],
  [
    'a misspelt linkId',
    `${at}\\.linkId$`,
    'Did you mean "',
    (r) => {
      const one = itemWith(r, 'valueDecimal');
      one.linkId = `${one.linkId}x`;
    },
  ],
  [
    'a misspelt key of an item',
    '\\.answers$',
    'Did you mean "answer"?',
    (r) => void (itemWith(r, 'valueString')['answers'] = []),
  ],
  [
    'a blank outside its group',
    '\\.item\\[\\d+\\]$',
    'Move it in the group',
    (r) => void r.item.push(present(present(r.item[0]).item?.pop())),
  ],
  [
    'a group inside a group',
    '\\.item\\[\\d+\\]$',
    'Move it at the top.',
    (r) => {
      const last = present(r.item.pop());
      present(present(r.item[0]).item).push(last);
    },
  ],
  ['an answered group', '\\.answer$', 'is a group', (r) => void (present(r.item[0]).answer = [{ valueString: 'x' }])],
  [
    'an answered line to read',
    '\\.answer$',
    'is a line to read',
    (r) => void present(present(r.item[0]).item).push({ linkId: 'look.title', answer: [{ valueString: 'x' }] }),
  ],
  [
    'an item twice',
    `${at}$`,
    'is given twice',
    (r) => {
      const { item } = present(r.item[0]);
      present(item).push(structuredClone(present(item?.[0])));
    },
  ],
  ['items in a blank', '\\.item$', 'holds no items', (r) => void (itemWith(r, 'valueString').item = [{ linkId: 'x' }])],
  ['no answer', '\\.answer$', 'has no answer', (r) => void delete itemWith(r, 'valueString').answer],
  [
    'an answer that is no list',
    '\\.answer$',
    'expected a list with one answer',
    (r) => void (itemWith(r, 'valueString').answer = {} as never),
  ],
  [
    'an empty list of answers',
    '\\.answer$',
    'Found an empty list',
    (r) => void (itemWith(r, 'valueString').answer = []),
  ],
  [
    'two answers',
    '\\.answer$',
    'Found 2 answers',
    (r) => void itemWith(r, 'valueDecimal').answer?.push({ valueDecimal: 1 }),
  ],
  [
    'an answer without a value',
    '\\.answer\\[0\\]$',
    'Found no value',
    (r) => void (itemWith(r, 'valueDecimal').answer = [{}]),
  ],
  [
    'words for a number',
    '\\.valueString$',
    'is answered in valueDecimal',
    (r) => void (itemWith(r, 'valueDecimal').answer = [{ valueString: '3' }]),
  ],
  [
    'a number in quotation marks',
    '\\.valueDecimal$',
    'without quotation marks',
    (r) => void (answerOf(r, 'valueDecimal')['valueDecimal'] = '3'),
  ],
  [
    'two values in one answer',
    '\\.valueInteger$',
    'Write valueDecimal alone.',
    (r) => void (answerOf(r, 'valueDecimal')['valueInteger'] = 3),
  ],
  [
    'a number above its range',
    '\\.valueDecimal$',
    'accepts ',
    (r) => void (answerOf(r, 'valueDecimal')['valueDecimal'] = 1e6),
  ],
  [
    'a number below its range',
    '\\.valueDecimal$',
    'Check the number and its unit.',
    (r) => void (answerOf(r, 'valueDecimal')['valueDecimal'] = -1e6),
  ],
  ['empty words', '\\.valueString$', 'expected words', (r) => void (answerOf(r, 'valueString')['valueString'] = '  ')],
  ['a code that is not offered', '\\.code$', 'Choose one of them.', (r) => void (coding(r)['code'] = 'Z')],
  [
    'a code of another system',
    '\\.system$',
    'Write it with the code.',
    (r) => void (coding(r)['system'] = 'http://snomed.example'),
  ],
  ['a code without its system', '\\.system$', 'Found the code system nothing', (r) => void delete coding(r)['system']],
  [
    'a display that means another code',
    '\\.display$',
    'Check which was meant.',
    (r) => void (coding(r)['display'] = 'Normal'),
  ],
  [
    'a code as a word',
    '\\.valueCoding$',
    'expected a Coding',
    (r) => void (present(finding(r).answer?.[0])['valueCoding'] = 'A'),
  ],
  [
    'a detail of what is normal',
    `${at}$`,
    'Delete it, or correct',
    (r) => void Object.assign(coding(r), { code: 'N', display: 'Normal' }),
  ],
  [
    'a reason though it was examined',
    `${at}$`,
    'is not "not-performed"',
    (r) => {
      const { linkId } = finding(r);
      const group = present(r.item.find(({ item }) => item?.some((each) => each.linkId === linkId)));
      const reason = present(answersOfForm(form).find(({ answer }) => answer.linkId === `${linkId}.reason`)).answer;
      if (reason.type !== 'coded') throw new Error('no options');
      const { system, code, officialName } = present(reason.options[0]);
      group.item?.push({ linkId: reason.linkId, answer: [{ valueCoding: { system, code, display: officialName } }] });
    },
  ],
  [
    'words that the form does not ask',
    '\\.text$',
    'but the form asks',
    (r) => void (itemWith(r, 'valueDecimal').text = 'Something else'),
  ],
];

describe('a filled form', () => {
  it('is without fault as the project writes it, with every blank answered', () => {
    expect(all(sound()).length).toBeGreaterThan(15);
    expect(checkResponse(asked, sound())).toEqual([]);
  });

  it('may be empty, and may carry patient, author and a narrative', () => {
    const head = {
      resourceType: 'QuestionnaireResponse',
      status: 'completed',
      questionnaire: `${form.url}|${form.version}`,
    };
    expect(checkResponse(asked, head)).toEqual([]);
    const more = { id: 'a', subject: { reference: 'Patient/x' }, author: {}, text: {}, _status: {} };
    expect(checkResponse(asked, { ...head, ...more })).toEqual([]);
  });

  it.each(broken)('with %s has that one fault, at its place', (_, path, words, breakIt) => {
    const response = sound();
    breakIt(response);
    const faults = checkResponse(asked, response);
    const places = faults.map((fault) => `${pathText(fault.path)}  ${fault.message}`);
    expect(
      places.filter((line) => new RegExp(path).test(line.split('  ')[0] ?? '') && line.includes(words)),
    ).toHaveLength(1);
  });

  it.each([undefined, null, 5, 'x', [], true])('that is %s is refused in words', (value) => {
    expect(checkResponse(asked, value)).toHaveLength(1);
  });

  it('has all its faults told in one run', () => {
    const response = sound();
    response['status'] = 'done';
    answerOf(response, 'valueDecimal')['valueDecimal'] = 1e6;
    coding(response)['code'] = 'Z';
    expect(checkResponse(asked, response).length).toBeGreaterThanOrEqual(3);
  });
});
