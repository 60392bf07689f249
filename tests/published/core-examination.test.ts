/**
 * Source of the items: Gowda D, Blatt B, Fink MJ, and others. A core physical exam for medical students: results of a
 * national survey. Academic Medicine 2014;89:436–442, as tabulated in BMC Medical Education 2024,
 * doi 10.1186/s12909-024-05191-x, Table 1, column of the original core examination. The table was read as far as the
 * arteries of the foot: 27 rows. The survey's abstract counts 37 items, so ten rows, which stand after these, are not
 * checked here.
 */
import { describe, expect, it } from 'vitest';
import type { Scope } from '../../schemas/common.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { manoeuvresOf } from '../../src/plan/manoeuvres-of.ts';
import { plainText } from '../../src/text/plain.ts';

/** Rows read in the table, in its order. */
const items = [
  'general appearance',
  'level of consciousness',
  'orientation',
  'temperature',
  'weight, height, body mass index',
  'blood pressure',
  'heart rate',
  'respiratory rate',
  'external inspection of eye and lid',
  'pupillary light reflex',
  'inspection of oropharynx and dentition',
  'neck lymph nodes',
  'thyroid palpation',
  'thorax inspection',
  'chest auscultation front and back',
  'chest percussion back',
  'carotid palpation',
  'jugular venous pulse',
  'point of maximal impulse',
  'cardiac auscultation with the diaphragm in six areas',
  'cardiac auscultation with the bell at the apex',
  'abdominal inspection',
  'abdominal auscultation',
  'abdominal palpation in six areas',
  'liver palpation',
  'inguinal lymph nodes',
  'posterior tibial or dorsalis pedis pulses',
] as const;
type Item = (typeof items)[number];

/** Where the manoeuvre is done: before the examination, on the screening form, or on the complete form alone. */
type Home = 'intake' | 'adult-screening' | 'adult-complete';

interface Cover {
  id: string;
  home: Home;
  /** What its steps or its fields must say, so that the name alone is not enough. */
  says: RegExp[];
}

const intake = (id: string, ...says: RegExp[]): Cover => ({ id, home: 'intake', says });
const screening = (id: string, ...says: RegExp[]): Cover => ({ id, home: 'adult-screening', says });
const completeOnly = (id: string, ...says: RegExp[]): Cover => ({ id, home: 'adult-complete', says });

/** The manoeuvres that together do what an item asks. */
const covers: Record<Item, readonly [Cover, ...Cover[]]> = {
  'general appearance': [screening('general-impression', /colour|skin/i, /build|weight|clothes/i)],
  'level of consciousness': [screening('consciousness-level', /eye, verbal and best motor response/)],
  orientation: [completeOnly('orientation-and-memory', /person/i, /place/i, /time/i)],
  temperature: [intake('temperature', /ear/i, /mouth/i)],
  'weight, height, body mass index': [intake('height-weight-waist', /height/i, /weight/i, /body mass index/i)],
  'blood pressure': [intake('blood-pressure', /systolic/i, /diastolic/i)],
  'heart rate': [intake('radial-pulse', /count/i)],
  'respiratory rate': [intake('respiratory-rate', /count/i)],
  'external inspection of eye and lid': [screening('lids-and-conjunctiva', /lid/i, /conjunctiva/i)],
  'pupillary light reflex': [screening('pupil-light-response', /light/i, /pupil/i)],
  'inspection of oropharynx and dentition': [
    screening('throat-and-palate', /tonsil/i, /back wall/i),
    completeOnly('teeth-and-gums', /missing/i, /decayed/i),
  ],
  'neck lymph nodes': [screening('neck-nodes', /chin/i, /clavicle/i)],
  'thyroid palpation': [screening('thyroid', /swallow/i, /fingers/i)],
  'thorax inspection': [screening('chest-inspection', /front/i, /back/i)],
  'chest auscultation front and back': [
    screening('lung-auscultation-back', /diaphragm/i),
    screening('lung-auscultation-front', /clavicle/i),
  ],
  'chest percussion back': [screening('chest-percussion-back', /strike/i, /right and left|side/i)],
  'carotid palpation': [completeOnly('carotid-pulse', /carotid/i, /one side at a time/i)],
  'jugular venous pulse': [screening('jugular-venous-pressure', /sternal angle/i)],
  'point of maximal impulse': [screening('apex-beat', /lowest and outermost/i, /mid-clavicular line/i)],
  'cardiac auscultation with the diaphragm in six areas': [
    screening(
      'heart-auscultation',
      /Diaphragm/,
      /second right interspace/i,
      /second left interspace/i,
      /third left interspace/i,
      /fourth, then fifth left interspace/i,
      /apex/i,
    ),
  ],
  'cardiac auscultation with the bell at the apex': [screening('heart-auscultation', /\bBell\b[^.]*: apex/)],
  'abdominal inspection': [screening('abdomen-inspection', /scar/i)],
  'abdominal auscultation': [screening('bowel-sounds', /diaphragm/i)],
  'abdominal palpation in six areas': [
    screening('abdomen-light-palpation', /nine regions/),
    screening('abdomen-deep-palpation', /nine regions/),
  ],
  'liver palpation': [screening('liver-edge', /breath/i, /costal margin|rib/i)],
  'inguinal lymph nodes': [screening('inguinal-nodes', /inguinal ligament|groin/i)],
  'posterior tibial or dorsalis pedis pulses': [screening('foot-pulses', /dorsalis pedis/i, /posterior tibial/i)],
};

/** Core items that nobody examined with the screening form alone has had. */
const onlyInTheCompleteExamination: Item[] = [
  'orientation',
  'inspection of oropharynx and dentition', // the teeth; the throat is on the screening form
  'carotid palpation',
];

const library = requireLibrary('content');
const manoeuvres = new Map(library.protocols.flatMap((protocol) => protocol.manoeuvres).map((one) => [one.id, one]));

const scopeOf: Record<Home, Scope> = {
  intake: 'intake',
  'adult-screening': 'screening',
  'adult-complete': 'complete',
};

function idsOn(formId: string): Set<string> {
  const definition = library.forms.find(({ id }) => id === formId);
  if (definition === undefined) throw new Error(`The library has no form "${formId}".`);
  return new Set(manoeuvresOf(library, definition));
}

const onScreening = idsOn('adult-screening');
const onComplete = idsOn('adult-complete');

function required(id: string): Manoeuvre {
  const found = manoeuvres.get(id);
  if (found === undefined) throw new Error(`The library has no manoeuvre "${id}".`);
  return found;
}

function wordsOf(one: Manoeuvre): string {
  return [one.title, ...one.technique.map((line) => plainText(line, library)), ...one.records.map(({ label }) => label)]
    .join('\n')
    .trim();
}

const rows = items.flatMap((item) => covers[item].map((cover) => ({ item, ...cover })));

describe('the published core examination (Gowda 2014, tabulated 2024)', () => {
  it('is mapped row by row: 27 items, none twice, none left out', () => {
    expect(items).toHaveLength(27);
    expect(new Set(items).size).toBe(items.length);
    expect(Object.keys(covers).sort()).toEqual([...items].sort());
  });

  it.each(rows)('$item: $id exists, in the scope of $home', ({ id, home }) => {
    expect(required(id).scope).toBe(scopeOf[home]);
  });

  it.each(rows.filter(({ home }) => home !== 'intake'))('$item: $id stands on $home', ({ id, home }) => {
    expect(onComplete).toContain(id);
    expect(onScreening.has(id)).toBe(home === 'adult-screening');
  });

  it.each(rows)('$item: $id does what the item asks', ({ id, says }) => {
    expect(says.length).toBeGreaterThan(0);
    const words = wordsOf(required(id));
    for (const said of says) expect(words).toMatch(said);
  });

  it('is all on the screening form or taken before it, but for the items named', () => {
    const lacking = items.filter((item) => covers[item].some(({ home }) => home === 'adult-complete'));
    expect(lacking).toEqual(onlyInTheCompleteExamination);
  });

  it('takes the vital signs of both forms before them, and says so on each', () => {
    const before = rows.filter(({ home }) => home === 'intake').map(({ id }) => id);
    expect(before.filter((id) => onScreening.has(id) || onComplete.has(id))).toEqual([]);
    for (const { id, leavesOut } of library.forms.filter((form) => form.id.startsWith('adult-'))) {
      expect(leavesOut, id).toMatch(/^Vital signs and other measurements taken before the examination/);
    }
  });
});
