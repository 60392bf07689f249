import type { Questionnaire, QuestionnaireItem } from '@medplum/fhirtypes';
import { describe, expect, it } from 'vitest';
import { allInvariants, invariants } from '../../../src/forms/invariants.ts';
import { itemsOf } from '../../../src/forms/invariants/invariant.ts';
import { questionnaire } from '../../../src/forms/questionnaire.ts';
import { fixtureForm } from './fixtures.ts';

const sound = questionnaire(fixtureForm());
const unitUrl = 'http://hl7.org/fhir/StructureDefinition/questionnaire-unit';

type Break = (broken: Questionnaire, item: (linkId: string) => QuestionnaireItem) => void;

/** A value that no well-typed program would write, as a file from elsewhere might. */
const wrong = (value: unknown) => value as never;

/** A sound Questionnaire, broken in one way. */
function brokenBy(change: Break): Questionnaire {
  const broken = structuredClone(sound);
  const item = (linkId: string): QuestionnaireItem => itemsOf(broken).find((each) => each.linkId === linkId)!;
  change(broken, item);
  return broken;
}

/** One way to break a Questionnaire, the invariant that sees it, and what it says. */
const breaks: [string, string, string, Break][] = [
  ['a site address as url', 'identity', 'url: found "http://localhost/f"', (q) => (q.url = 'http://localhost/f')],
  ['a version in words', 'identity', 'version: found "next"', (q) => (q.version = 'next')],
  ['no publisher', 'identity', 'publisher: found nothing', (q) => delete q.publisher],
  ['no copyright line', 'identity', 'copyright: found nothing', (q) => delete q.copyright],
  ['a date with a time', 'identity', 'date: found "2026-11-25T10:00"', (q) => (q.date = '2026-11-25T10:00')],
  ['a name with a hyphen', 'identity', 'name: found "fixture-form"', (q) => (q.name = 'fixture-form')],
  [
    'a claim to a profile',
    'identity',
    'expected no claim to a profile',
    (q) => (q.meta = { profile: ['http://hl7.org/fhir/uv/sdc/StructureDefinition/sdc-questionnaire'] }),
  ],
  ['an unknown status', 'codes', 'status: found "final"', (q) => (q.status = wrong('final'))],
  [
    'an unknown type',
    'codes',
    'text-none.type: found "free-text"',
    (_, item) => (item('text-none').type = wrong('free-text')),
  ],
  [
    'the abstract type',
    'codes',
    'text-none.type: found "question"',
    (_, item) => (item('text-none').type = wrong('question')),
  ],
  [
    'an unknown operator',
    'codes',
    'operator: found "equals"',
    (_, item) => (item('finding-none.detail').enableWhen![0]!.operator = wrong('equals')),
  ],
  [
    'an unknown behaviour',
    'codes',
    'enableBehavior: found "some"',
    (_, item) => (item('finding-none.detail').enableBehavior = wrong('some')),
  ],
  [
    'the same linkId twice',
    'link-ids',
    'linkId "text-left.left" is used more than once',
    (_, item) => (item('text-none').linkId = 'text-left.left'),
  ],
  [
    'a linkId with a capital',
    'link-ids',
    'linkId "Text_none" is not well formed',
    (_, item) => (item('text-none').linkId = 'Text_none'),
  ],
  [
    'no linkId',
    'link-ids',
    'linkId nothing is not well formed',
    (_, item) => (item('text-none').linkId = wrong(undefined)),
  ],
  ['an empty group', 'shape', 'heart: found an empty group', (_, item) => (item('heart').item = [])],
  ['an item without words', 'shape', 'text-none: found no text', (_, item) => delete item('text-none').text],
  [
    'a display item that must be answered',
    'shape',
    'found "required" on a display item',
    (_, item) => (item('look.title').required = true),
  ],
  [
    'an answer filled in beforehand',
    'shape',
    'finding-none: found an answer filled in beforehand',
    (_, item) => (item('finding-none').answerOption![0]!.initialSelected = true),
  ],
  [
    'an initial value',
    'shape',
    'pulse-rate: found an answer filled in beforehand',
    (_, item) => (item('pulse-rate').initial = [{ valueDecimal: 72 }]),
  ],
  [
    'a choice of one',
    'options',
    'choice-none: found 1 options',
    (_, item) => item('choice-none').answerOption!.splice(1),
  ],
  [
    'an option in words only',
    'options',
    'found an option of type "valueString"',
    (_, item) => (item('choice-none').answerOption![0] = { valueString: 'seen' }),
  ],
  [
    'two options with one code',
    'options',
    'found two options with code "https://fingerbreadth.example/choices/choice-none|seen"',
    (_, item) => (item('choice-none').answerOption![1]!.valueCoding!.code = 'seen'),
  ],
  [
    'two options with the same words',
    'options',
    'found two options with display "seen"',
    (_, item) => (item('choice-none').answerOption![1]!.valueCoding!.display = 'seen'),
  ],
  [
    'an option without words',
    'options',
    'found an option without display',
    (_, item) => delete item('choice-none').answerOption![1]!.valueCoding!.display,
  ],
  [
    'options on words',
    'options',
    'found options on a "text" item',
    (_, item) => (item('text-none').answerOption = [{ valueString: 'x' }]),
  ],
  [
    'a condition on nothing',
    'enable-when',
    'finding-none.detail: found a condition on "finding-nowhere"',
    (_, item) => (item('finding-none.detail').enableWhen![0]!.question = 'finding-nowhere'),
  ],
  [
    'a condition on a later item',
    'enable-when',
    'found a condition on "choice-none", expected an item that comes before',
    (_, item) => (item('finding-none.detail').enableWhen![0]!.question = 'choice-none'),
  ],
  [
    'a condition of another type',
    'enable-when',
    'found "answerBoolean" for "finding-none", expected answerCoding',
    (_, item) =>
      (item('finding-none.detail').enableWhen = [{ question: 'finding-none', operator: '=', answerBoolean: true }]),
  ],
  [
    'a condition on an answer that is not offered',
    'enable-when',
    'ObservationInterpretation|B", expected an option of "finding-none"',
    (_, item) => (item('finding-none.detail').enableWhen![0]!.answerCoding!.code = 'B'),
  ],
  [
    'a condition on a display item',
    'enable-when',
    'found a condition on the display item "look.title"',
    (_, item) => (item('finding-none.detail').enableWhen![0]!.question = 'look.title'),
  ],
  [
    'two conditions without saying how they join',
    'enable-when',
    'found 2 conditions without enableBehavior',
    (_, item) => item('finding-none.detail').enableWhen!.push(item('finding-none.reason').enableWhen![0]!),
  ],
  [
    'an extension that readers do not know',
    'extensions',
    'found the extension "https://fingerbreadth.example/colour"',
    (_, item) =>
      item('pulse-rate').extension!.push({ url: 'https://fingerbreadth.example/colour', valueString: 'red' }),
  ],
  [
    'a unit on words',
    'extensions',
    'on a "text" item',
    (_, item) => (item('text-none').extension = [{ url: unitUrl, valueCoding: {} }]),
  ],
  [
    'a limit in words',
    'extensions',
    'without valueDecimal',
    (_, item) => (item('pulse-rate').extension![0] = { url: item('pulse-rate').extension![0]!.url, valueString: '0' }),
  ],
  [
    'a decimal without a unit',
    'extensions',
    `found "${unitUrl}" 0 times`,
    (_, item) => item('pulse-rate').extension!.pop(),
  ],
  [
    'a range the wrong way round',
    'ranges',
    'pulse-rate: found the range 400 to 300',
    (_, item) => (item('pulse-rate').extension![0]!.valueDecimal = 400),
  ],
  [
    'a unit that is not UCUM',
    'units',
    'found the unit "mmHg"',
    (_, item) => (item('pulse-rate').extension![2]!.valueCoding!.code = 'mmHg'),
  ],
  [
    'a unit of another system',
    'units',
    'found the unit system nothing',
    (_, item) => delete item('pulse-rate').extension![2]!.valueCoding!.system,
  ],
  [
    'a LOINC code with a wrong check digit',
    'loinc',
    'found the LOINC code "8867-5"',
    (_, item) => (item('pulse-rate').code![0]!.code = '8867-5'),
  ],
  [
    'a LOINC code without its name',
    'loinc',
    '"8867-4" without display',
    (_, item) => delete item('pulse-rate').code![0]!.display,
  ],
  [
    'a code of another system',
    'loinc',
    'found the code system "http://snomed.info/sct"',
    (_, item) => (item('pulse-rate').code![0]!.system = 'http://snomed.info/sct'),
  ],
  ["a LOINC code without LOINC's notice", 'loinc', "without LOINC's notice", (q) => (q.copyright = 'CC BY 4.0.')],
];

describe('the invariants', () => {
  it('find nothing in a sound Questionnaire', () => {
    expect(invariants(sound)).toEqual([]);
  });

  it.each(breaks)('see %s (%s)', (_, name, message, change) => {
    const faults = invariants(brokenBy(change));
    const seen = faults.filter((fault) => fault.endsWith(`(${name})`) && fault.includes(message));
    expect(seen, faults.join('\n')).toHaveLength(1);
  });

  it('are each proven by at least one broken Questionnaire', () => {
    const proven = new Set(breaks.map(([, name]) => name));
    expect(allInvariants.map(({ name }) => name).filter((name) => !proven.has(name))).toEqual([]);
  });

  it('report several faults in one run', () => {
    const faults = invariants(
      brokenBy((q, item) => {
        q.version = 'next';
        item('pulse-rate').extension![0]!.valueDecimal = 400;
      }),
    );
    expect(faults).toHaveLength(2);
  });
});
