import type { Form, FormField } from '../../../schemas/form.ts';
import type { Library } from '../../../schemas/library.ts';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import type { PlanStep } from '../../../schemas/plan.ts';
import type { Record } from '../../../schemas/record.ts';
import { buildForm } from '../../../src/forms/form.ts';

/** Every way in which a record asks for sides. */
export const allSides = ['none', 'both', 'left', 'right', 'either'] as const;
/** Every kind of record. */
export const allKinds = ['finding', 'scale', 'choice', 'quantity', 'text'] as const;

const text = (words: string) => [{ type: 'text' as const, text: words }];
const place = { file: 'fixture.mdx', line: 1, column: 1 };

function recordOf(kind: (typeof allKinds)[number], sides: (typeof allSides)[number]): Record {
  const common = { id: `${kind}-${sides}`, label: `Fixture ${kind}, asked ${sides}`, sides };
  switch (kind) {
    case 'finding':
      return { kind, ...common, normal: [...text('Smooth, up to '), { type: 'value', id: 'fixture-limit' }] };
    case 'scale':
      return { kind, ...common, scale: 'fixture-grades' };
    case 'choice':
      return { kind, ...common, options: ['seen', 'above the jaw', 'not identified'], normal: 'seen' };
    case 'quantity':
      return { kind, ...common, unit: 'cm', min: -5, max: 20, value: 'fixture-limit' };
    case 'text':
      return { kind, ...common };
  }
}

/** One record of every kind with every way of asking for sides. */
export const everyRecord: readonly Record[] = allKinds.flatMap((kind) =>
  allSides.map((sides) => recordOf(kind, sides)),
);

/** A count with a LOINC code. Code and official name: LOINC 8867-4, as HL7 FHIR R4 uses it in its vital-signs profiles. */
const coded: Record = {
  ...{ kind: 'quantity', id: 'pulse-rate', label: 'Pulse rate', sides: 'none', unit: '/min', min: 0, max: 300 },
  ...{ code: '8867-4', codeDisplay: 'Heart rate' },
};
const unitless: Record = {
  kind: 'quantity',
  id: 'beat-count',
  label: 'Beats',
  sides: 'none',
  unit: '1',
  min: 0,
  max: 99,
};

function manoeuvreOf(id: string, system: string, more: Partial<Manoeuvre>): Manoeuvre {
  return {
    ...{ id, system, title: `Do ${id}`, synonyms: [], scope: 'screening', sensitive: false, stages: [['sitting']] },
    ...{ exposure: [], examiner: 'right', instruments: [], seconds: 10, sides: 'both', after: [], derivedAfter: [] },
    ...{ sources: ['fixture-source'], aim: text('An aim.'), tell: [text('Sit still.')], technique: [text('Look.')] },
    ...{ normal: [], abnormal: [], redFlags: [], cautions: [text('Gently.')], errors: [], adaptations: [], card: [] },
    ...{ records: [], place, ...more },
  };
}

const redFlags: Manoeuvre['redFlags'] = [
  { urgency: 'now', finding: text('It stops'), action: text('Call for help.') },
  { urgency: 'today', finding: text('It slows.'), action: text('Ask a senior.') },
  { urgency: 'soon', finding: text('It wanders'), action: text('Book a visit.') },
];

const manoeuvres = [
  manoeuvreOf('greet', 'preparation', { scope: 'preparation', cautions: [text('Ask about pain first.')] }),
  manoeuvreOf('look', 'neck', { records: [...everyRecord], redFlags }),
  manoeuvreOf('count', 'heart', { records: [coded, unitless], sensitive: true, stages: [['sitting'], ['supine']] }),
  manoeuvreOf('feel', 'neck', {
    records: [{ kind: 'text', id: 'feel-notes', label: 'What was felt', sides: 'none' }],
    cautions: [[...text('Not above '), { type: 'value', id: 'fixture-limit' }], text('Never both sides at once.')],
  }),
];

const definition: Library['forms'][number] = {
  ...{
    id: 'fixture-form',
    title: 'Fixture examination',
    purpose: 'To try the formats.',
    leavesOut: 'Everything real.',
  },
  ...{
    mustNotMiss: ['A pulseless hand', 'A silent chest'],
    scopes: ['preparation', 'screening'],
    manoeuvres: [],
    version: '0.1.0',
  },
  ...{ url: 'https://fingerbreadth.example/forms/fixture-form', publisher: 'Fingerbreadth', author: 'Editors' },
  ...{ copyright: 'CC BY 4.0.', drafted: '2026-11-25' },
};

const systems: Library['systems'] = [
  { id: 'preparation', title: 'Preparation', region: 'whole' },
  { id: 'neck', title: 'Neck', region: 'neck-and-chest' },
  { id: 'heart', title: 'Heart', region: 'neck-and-chest' },
];

function protocolOf({ id, title }: Library['systems'][number], order: number): Library['protocols'][number] {
  return {
    ...{ id, system: id, title, order, summary: 'A page.', author: 'Editors', reviewer: 'A second reader' },
    ...{ reviewed: '2026-11-25', reviewDue: '2027-11-25', sources: ['fixture-source'], place },
    opening: [{ type: 'paragraph', line: text('Why.') }],
    manoeuvres: manoeuvres.filter(({ system }) => system === id),
  };
}

/** A small library, invented for tests, that holds every kind of record with every way of asking for sides. */
export const library: Library = {
  ...{ version: '0.1.0', hash: '0'.repeat(64), systems, protocols: systems.map(protocolOf) },
  ...{ positions: [], exposures: [], instruments: [], examinerPlaces: [], landmarks: [], tools: [], evidence: [] },
  ...{ guides: [], cardSets: [], clinics: [], priorities: [], forms: [definition] },
  values: [
    {
      ...{ kind: 'limit', id: 'fixture-limit', label: 'Fixture limit', unit: 'cm', appliesTo: 'fixtures', others: [] },
      ...{ source: 'fixture-source', where: 'table 1', normal: 'at-most', value: 3 },
    },
  ],
  scales: [
    {
      ...{ id: 'fixture-grades', title: 'Fixture grades', source: 'fixture-source', where: 'table 2' },
      grades: [
        { code: '0', meaning: 'nothing', normal: false },
        { code: '4+', meaning: 'nearly all', normal: false },
        { code: '5', meaning: 'all', normal: true },
      ],
    },
  ],
  sources: [
    {
      ...{ id: 'fixture-source', kind: 'published', authors: 'Nobody N', title: 'On fixtures', year: 2020 },
      ...{ where: 'throughout', status: 'seen' },
    },
  ],
};

const step = (manoeuvre: string, stage: number, position: string): PlanStep => ({
  ...{ manoeuvre, stage, position, exposure: [], examiner: 'right', instruments: [], start: 0, seconds: 10 },
});

/** A run sheet that comes back to the neck after the heart. */
export const steps: readonly PlanStep[] = [
  step('greet', 1, 'chair'),
  step('look', 1, 'sitting'),
  step('count', 1, 'sitting'),
  step('count', 2, 'supine'),
  step('feel', 1, 'supine'),
];

/** The fixture form, new each time. */
export const fixtureForm = (): Form => buildForm(library, 'fixture-form', () => steps);

/** The fields of a form in order. */
export const fieldsOf = (form: Form): FormField[] =>
  form.sections.flatMap(({ items }) => items.flatMap(({ fields }) => fields));
