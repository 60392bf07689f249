/** A figure in the shape of the library's values: a limit, a range, one number, or several under their conditions. */
export type Figure =
  | { normal: 'at-most' | 'at-least' | 'below' | 'above'; limit: number }
  | { low: number; high: number }
  | { number: number }
  | { points: (readonly [at: string, value: number])[] };

/** What a source publishes about one value of the library. */
export interface PublishedValue {
  id: string;
  /** UCUM unit of the figures. */
  unit: string;
  /** The figure that the library must lead with; absent where only the other figure is checked. */
  figure?: Figure;
  /** A second source whose other figure must stand beside it. */
  beside?: { figure: number | { low: number; high: number }; source: string };
  /** Author, year, place: named here and not taken from the content. */
  source: string;
}

const atMost = (limit: number): Figure => ({ normal: 'at-most', limit });
const atLeast = (limit: number): Figure => ({ normal: 'at-least', limit });
const below = (limit: number): Figure => ({ normal: 'below', limit });
const above = (limit: number): Figure => ({ normal: 'above', limit });
const range = (low: number, high: number): Figure => ({ low, high });
const number = (figure: number): Figure => ({ number: figure });
const points = (...all: (readonly [string, number])[]): Figure => ({ points: all });

const seth = 'Seth R et al. J Gen Intern Med 2002;17:861–5, abstract';
const accAha = 'Whelton PK et al. 2017 ACC/AHA guideline, categories of blood pressure in adults';
const freeman = 'Freeman R et al. Auton Neurosci 2011;161:46–8, definition of orthostatic hypotension';
const legArteries = 'Gerhard-Herman MD et al. Circulation 2017;135:e726–79, resting ankle–brachial index';
const medlinePlus = 'MedlinePlus (US National Library of Medicine) 002341, Vital signs, 2021-01-16';
const whoBmi = 'World Health Organization, Technical Report Series 916, Table 8';
const whoWaist = 'World Health Organization, Waist circumference and waist–hip ratio, 2011, table of cut-off points';
const plate = 'US 38 CFR 4.71, plates I and II, as on the federal worksheet of joint motion';
const merck = 'Merck Manual, Normal values for range of motion of joints, print of 2014-06-24';
const news2 = 'Royal College of Physicians, National Early Warning Score 2, 2017, chart 1, score 3';
const schriger = 'Schriger DL, Baraff L. Ann Emerg Med 1988;17:932–5, abstract';
const uspstf = 'US Preventive Services Task Force, abdominal aortic aneurysm screening, 2019-12-10';

const pressuresAndPulse: PublishedValue[] = [
  { id: 'bp-systolic-normal', unit: 'mm[Hg]', figure: below(120), source: accAha },
  {
    id: 'bp-diastolic-normal',
    unit: 'mm[Hg]',
    figure: below(80),
    beside: { figure: 70, source: 'McEvoy JW et al. 2024 ESC guidelines, Eur Heart J 2024;45:3912–4018' },
    source: accAha,
  },
  { id: 'bp-severe', unit: 'mm[Hg]', figure: points(['systolic', 180], ['diastolic', 120]), source: accAha },
  { id: 'bp-danger-low', unit: 'mm[Hg]', figure: number(90), source: news2 },
  { id: 'postural-fall-systolic', unit: 'mm[Hg]', figure: below(20), source: freeman },
  { id: 'postural-fall-diastolic', unit: 'mm[Hg]', figure: below(10), source: freeman },
  { id: 'postural-fall-hypertension', unit: 'mm[Hg]', figure: below(30), source: freeman },
  { id: 'postural-window', unit: 'min', figure: number(3), source: freeman },
  {
    id: 'postural-fall-from-sitting',
    unit: 'mm[Hg]',
    figure: points(['systolic', 15], ['diastolic', 7]),
    source: 'Shaw BH et al. J Hypertens 2017;35:1019–25, abstract',
  },
  {
    id: 'postural-pulse-rise',
    unit: '/min',
    figure: number(30),
    source: 'McGee S, Abernethy WB, Simel DL. JAMA 1999;281:1022–9, abstract',
  },
  { id: 'pulse-rate-resting', unit: '/min', figure: range(60, 100), source: medlinePlus },
  { id: 'pulse-rate-danger-low', unit: '/min', figure: number(40), source: news2 },
  { id: 'pulse-rate-danger-high', unit: '/min', figure: number(131), source: news2 },
  { id: 'abi-abnormal', unit: '1', figure: above(0.9), source: legArteries },
  { id: 'abi-borderline', unit: '1', figure: range(0.91, 0.99), source: legArteries },
  { id: 'abi-stiff', unit: '1', figure: atMost(1.4), source: legArteries },
];

const otherVitalSigns: PublishedValue[] = [
  {
    id: 'respiratory-rate-resting',
    unit: '/min',
    figure: range(12, 18),
    beside: { figure: { low: 12, high: 20 }, source: 'National Early Warning Score 2, 2017, chart 1, score 0' },
    source: medlinePlus,
  },
  { id: 'respiratory-rate-danger-low', unit: '/min', figure: number(8), source: news2 },
  { id: 'respiratory-rate-danger-high', unit: '/min', figure: number(25), source: news2 },
  { id: 'spo2-danger', unit: '%', figure: number(91), source: news2 },
  { id: 'temperature-danger-low', unit: 'Cel', figure: number(35), source: news2 },
  {
    id: 'temperature-mouth',
    unit: 'Cel',
    beside: { figure: { low: 36.5, high: 37.3 }, source: medlinePlus },
    source: medlinePlus,
  },
  { id: 'bmi-normal', unit: 'kg/m2', figure: range(18.5, 24.9), source: whoBmi },
  { id: 'waist-raised', unit: 'cm', figure: points(['in men', 94], ['in women', 80]), source: whoWaist },
  { id: 'waist-high', unit: 'cm', figure: points(['in men', 102], ['in women', 88]), source: whoWaist },
];

const jointRanges: PublishedValue[] = [
  { id: 'hip-flexion-full', unit: 'deg', figure: atLeast(125), source: `${plate}; ${merck}` },
  { id: 'hip-extension-full', unit: 'deg', figure: atLeast(30), source: plate },
  { id: 'hip-abduction-full', unit: 'deg', figure: atLeast(45), source: merck },
  { id: 'hip-external-rotation-full', unit: 'deg', figure: atLeast(45), source: merck },
  { id: 'knee-flexion-full', unit: 'deg', figure: atLeast(140), source: plate },
  { id: 'ankle-dorsiflexion-full', unit: 'deg', figure: atLeast(20), source: plate },
  {
    id: 'ankle-plantarflexion-full',
    unit: 'deg',
    figure: atLeast(45),
    beside: { figure: 50, source: merck },
    source: plate,
  },
  { id: 'foot-inversion-full', unit: 'deg', figure: atLeast(35), source: merck },
  { id: 'shoulder-elevation-full', unit: 'deg', figure: atLeast(180), source: plate },
  { id: 'shoulder-external-rotation-full', unit: 'deg', figure: atLeast(90), source: plate },
  { id: 'forearm-pronation-full', unit: 'deg', figure: atLeast(80), source: plate },
  { id: 'wrist-extension-full', unit: 'deg', figure: atLeast(70), source: `${plate}; ${merck}` },
  { id: 'wrist-flexion-full', unit: 'deg', figure: atLeast(80), source: plate },
];

const neckAndChest: PublishedValue[] = [
  {
    id: 'jvp-upper-limit',
    unit: 'cm',
    figure: atMost(3),
    source: 'McGee SR. Am Heart J 1998;136:10–18, abstract, conclusions (after Lewis)',
  },
  {
    id: 'sternal-angle-to-atrium',
    unit: 'cm',
    figure: points(['supine', 5.4], ['at 30°', 8], ['at 45°', 9.7]),
    source: seth,
  },
  { id: 'sternal-angle-to-atrium-taught', unit: 'cm', figure: number(5), source: seth },
  {
    id: 'laryngeal-height-short',
    unit: 'cm',
    figure: above(4),
    source: 'Straus SE et al. JAMA 2000;283:1853–7, abstract (short at 4 cm or less)',
  },
  {
    id: 'chest-expansion-healthy',
    unit: 'cm',
    figure: points(['upper chest', 5.4], ['lower chest', 6.4]),
    source: 'Debouche S et al. J Manipulative Physiol Ther 2016, abstract',
  },
  {
    id: 'chest-sign-agreement',
    unit: '1',
    figure: points(['for wheeze', 0.51], ['for tactile fremitus', 0.01]),
    source: 'Metlay JP et al. 1997, as given in Viera AJ, Garrett JM. Fam Med 2005;37:360–3',
  },
];

const abdomenSkinAndEyes: PublishedValue[] = [
  {
    id: 'liver-span-between-examiners',
    unit: 'cm',
    figure: number(8),
    source: 'McGee S. Evidence-Based Physical Diagnosis, 4th edition 2018, page 434',
  },
  { id: 'aortic-diameter-limit', unit: 'cm', figure: below(3), source: uspstf },
  { id: 'aortic-repair-diameter', unit: 'cm', figure: number(5.5), source: `${uspstf}, clinical summary` },
  { id: 'crt-convention', unit: 's', figure: atMost(2), source: schriger },
  { id: 'crt-limit-women', unit: 's', figure: atMost(2.9), source: schriger },
  { id: 'crt-limit-older', unit: 's', figure: atMost(4.5), source: schriger },
  {
    id: 'crt-medians',
    unit: 's',
    figure: points(['in men', 1], ['in women', 1.2], ['in older women', 1.5], ['in older men', 1.8]),
    source: schriger,
  },
  { id: 'crt-cold-hand', unit: 's', figure: points(['before', 1.3], ['after', 2.9]), source: schriger },
  {
    id: 'pupil-bright',
    unit: 'mm',
    figure: range(2, 4),
    source: 'Spector RH. The pupils. In: Clinical Methods, 3rd edition 1990, chapter 58',
  },
  {
    id: 'anisocoria-prevalence',
    unit: '%',
    figure: number(19),
    source: 'Lam BL et al. Am J Ophthalmol 1987;104:69–73, abstract (24 of 128)',
  },
  {
    id: 'acuity-logmar',
    unit: '1',
    figure: points(
      ['at 6/6 (20/20)', 0],
      ['at 6/7.5 (20/25)', 0.1],
      ['at 6/12 (20/40)', 0.3],
      ['at 6/15 (20/50)', 0.4],
      ['at 6/24 (20/80)', 0.6],
      ['at 6/30 (20/100)', 0.7],
      ['at 6/60 (20/200)', 1],
    ),
    source: 'American Journal of Ophthalmology, table of equivalent visual acuity measurements',
  },
];

/** Every published figure that a value of the library is checked against. */
export const publishedValues: PublishedValue[] = [
  ...pressuresAndPulse,
  ...otherVitalSigns,
  ...jointRanges,
  ...neckAndChest,
  ...abdomenSkinAndEyes,
];
