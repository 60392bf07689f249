/** Grades of the library's scales, their number and their order, against the publications that define them. */
import { describe, expect, it } from 'vitest';
import type { Scale } from '../../schemas/scale.ts';
import { requireLibrary } from '../../src/library/load.ts';

interface PublishedScale {
  id: string;
  /** What is written down, in the order of the source. */
  grades: string[];
  /** Those of them that are normal, where the source says so. */
  normal?: string[];
  source: string;
}

const published: PublishedScale[] = [
  {
    id: 'muscle-strength-mrc',
    grades: ['0', '1', '2', '3', '4', '5'],
    normal: ['5'],
    source: 'Medical Research Council, Memorandum 45, 1976, as in World J Orthop 2017;8:21–29, Table 10',
  },
  {
    id: 'tendon-reflex',
    grades: ['0', '1+', '2+', '3+', '4+'],
    normal: ['2+', '3+'],
    source:
      'Hallett M. NINDS myotatic reflex scale. Neurology 1993;43:2723 (0 to 4; both halves of normal are 2 and 3)',
  },
  {
    // The source grades the murmurs that are heard; 0 is ours for none.
    id: 'murmur-intensity',
    grades: ['0', '1', '2', '3', '4', '5', '6'],
    normal: ['0'],
    source: 'Freeman AR, Levine SA. Ann Intern Med 1933;6:1371–85 (1 to 6)',
  },
  {
    id: 'sensory-key-point',
    grades: ['0', '1', '2', 'NT'],
    normal: ['2'],
    source: 'International Standards for Neurological Classification of Spinal Cord Injury, revised 2019',
  },
  {
    id: 'bmi-who',
    grades: ['underweight', 'normal', 'pre-obese', 'obese I', 'obese II', 'obese III'],
    normal: ['normal'],
    source: 'World Health Organization, Technical Report Series 916, Table 8',
  },
  {
    id: 'blood-pressure-acc-aha',
    grades: ['normal', 'elevated', 'stage 1', 'stage 2'],
    normal: ['normal'],
    source: 'Whelton PK et al. 2017 ACC/AHA guideline, categories of blood pressure in adults',
  },
  {
    id: 'blood-pressure-esc',
    grades: ['non-elevated', 'elevated', 'hypertension'],
    normal: ['non-elevated'],
    source: 'McEvoy JW et al. 2024 ESC guidelines, Eur Heart J 2024;45:3912–4018',
  },
  {
    id: 'facial-nerve-house-brackmann',
    grades: ['I', 'II', 'III', 'IV', 'V', 'VI'],
    normal: ['I'],
    source: 'House JW, Brackmann DE. Otolaryngol Head Neck Surg 1985;93:146–7',
  },
  {
    id: 'mallampati-modified',
    grades: ['I', 'II', 'III', 'IV'],
    source: 'Samsoon GLT, Young JRB. Anaesthesia 1987;42:487–90',
  },
  { id: 'upper-lip-bite', grades: ['1', '2', '3'], source: 'Khan ZH et al. Anesth Analg 2003;96:595–9' },
  {
    id: 'tonsil-size',
    grades: ['0', '1', '2', '3', '4'],
    source: 'Brodsky L. Pediatr Clin North Am 1989;36:1551–69',
  },
  {
    id: 'tooth-mobility',
    grades: ['0', '1', '2', '3'],
    normal: ['0'],
    source: 'Miller SC. Textbook of Periodontia, 3rd edition 1950',
  },
  {
    id: 'goitre-who',
    grades: ['0', '1', '2'],
    normal: ['0'],
    source: 'World Health Organization, Assessment of iodine deficiency disorders, 3rd edition 2007',
  },
  {
    id: 'knee-effusion-stroke',
    grades: ['0', 'trace', '1+', '2+', '3+'],
    normal: ['0'],
    source: 'Sturgill LP et al. J Orthop Sports Phys Ther 2009;39:845–9',
  },
  {
    id: 'knee-ligament-laxity',
    grades: ['0', '1+', '2+', '3+'],
    normal: ['0'],
    source: 'American Medical Association, Standard Nomenclature of Athletic Injuries, 1968',
  },
  {
    id: 'acute-limb-ischaemia-rutherford',
    grades: ['I', 'IIa', 'IIb', 'III'],
    normal: [],
    source: 'Rutherford RB et al. J Vasc Surg 1997;26:517–38',
  },
  {
    id: 'venous-disease-ceap',
    grades: ['C0', 'C1', 'C2', 'C2r', 'C3', 'C4a', 'C4b', 'C4c', 'C5', 'C6', 'C6r'],
    source:
      'Lurie F et al. The 2020 update of the CEAP classification. J Vasc Surg Venous Lymphat Disord 2020;8:342–52',
  },
  {
    id: 'pressure-injury-stage',
    grades: ['0', '1', '2', '3', '4', 'U', 'D'],
    normal: ['0'],
    source: 'Edsberg LE et al. J Wound Ostomy Continence Nurs 2016;43:585–97 (1 to 4, unstageable, deep tissue)',
  },
  {
    id: 'vision-impairment-icd',
    grades: ['none', 'mild', 'moderate', 'severe', 'blind'],
    normal: ['none'],
    source: 'World Health Organization, ICD-11, 9D90, distance vision impairment',
  },
];

const library = requireLibrary('content');

function required(id: string): Scale {
  const found = library.scales.find((one) => one.id === id);
  if (found === undefined) throw new Error(`The library has no scale "${id}".`);
  return found;
}

/** The numbers in the words of each grade, grade by grade. */
function numbersIn(id: string): number[][] {
  return required(id).grades.map(({ meaning }) => (meaning.match(/\d+(?:\.\d+)?/g) ?? []).map(Number));
}

describe('grades of the scales', () => {
  it('are checked for every scale of the library', () => {
    expect(published.map(({ id }) => id).sort()).toEqual(library.scales.map(({ id }) => id).sort());
  });

  it.each(published)('$id has the grades of $source, in order', ({ id, grades, normal }) => {
    const scale = required(id);
    expect(scale.grades.map(({ code }) => code)).toEqual(grades);
    if (normal === undefined) return;
    expect(scale.grades.filter((grade) => grade.normal).map(({ code }) => code)).toEqual(normal);
  });
});

describe('limits between the grades', () => {
  // World Health Organization, Technical Report Series 916, Table 8, kg/m².
  it('of the body mass index are 18.5, 25, 30, 35 and 40 kg/m²', () => {
    expect(numbersIn('bmi-who')).toEqual([[18.5], [18.5, 24.9], [25, 29.9], [30, 34.9], [35, 39.9], [40]]);
  });

  // Whelton PK and others, 2017 ACC/AHA guideline: systolic then diastolic, mmHg.
  it('of blood pressure by ACC/AHA are 120/80, 130/80 and 140/90 mmHg', () => {
    expect(numbersIn('blood-pressure-acc-aha')).toEqual([
      [120, 80],
      [120, 129, 80],
      [130, 139, 80, 89],
      [140, 90],
    ]);
  });

  // McEvoy JW and others, 2024 ESC guidelines: systolic then diastolic, mmHg.
  it('of blood pressure by ESC are 120/70 and 140/90 mmHg', () => {
    expect(numbersIn('blood-pressure-esc')).toEqual([
      [120, 70],
      [120, 139, 70, 89],
      [140, 90],
    ]);
  });

  // Medical Research Council 1976: 0 none, 1 flicker, 2 gravity taken away, 3 against gravity, 4 resistance, 5 normal.
  it.each([
    ['0', /nothing/i],
    ['1', /flicker/i],
    ['2', /weight of the limb taken away/i],
    ['3', /against gravity.*any resistance/i],
    ['4', /gravity and some resistance/i],
    ['5', /as firmly as is expected/i],
  ])('of muscle strength: grade %s', (code, said) => {
    expect(required('muscle-strength-mrc').grades.find((grade) => grade.code === code)?.meaning).toMatch(said);
  });

  // Freeman and Levine, in the later usual wording: a thrill from grade 4 up.
  it('of a murmur: a thrill from grade 4 up, none below it', () => {
    const thrill = required('murmur-intensity').grades.map(({ meaning }) => /with a thrill/.test(meaning));
    expect(thrill).toEqual([false, false, false, false, true, true, true]);
  });
});

describe('parts of the coma scale on the page of the level of consciousness', () => {
  // Teasdale G, Jennett B. Lancet 1974;2:81–4, with the motor part of six: eye 4, verbal 5, motor 6, each down to 1.
  it.each([
    ['coma-eye-score', 4],
    ['coma-verbal-score', 5],
    ['coma-motor-score', 6],
  ])('%s runs from %d to 1', (id, highest) => {
    const fields = library.protocols.flatMap(({ manoeuvres }) => manoeuvres.flatMap(({ records }) => records));
    const field = fields.find((one) => one.id === id);
    const options = field?.kind === 'choice' ? field.options : [];
    const downwards = Array.from({ length: highest }, (_, step) => String(highest - step));
    expect(options).toEqual([...downwards, 'not testable']);
  });
});
