import type { Ratio } from '../../schemas/evidence.ts';

/** A likelihood ratio as a source prints it, under the library's id for it. */
export interface PublishedRatio {
  id: string;
  present?: Ratio;
  absent?: Ratio;
  /** The source as published, named here and not taken from the content. */
  source: string;
}

/** Sensitivity and specificity as a source prints them, from which the library computes its ratios. */
export interface PublishedAccuracy {
  id: string;
  sensitivity: number;
  specificity: number;
  source: string;
}

const ratio = (value: number, low?: number, high?: number): Ratio =>
  low === undefined || high === undefined ? { value } : { value, low, high };

const wong = 'Wong CL, Holroyd-Leduc J, Straus SE. JAMA 2009;301:309–17, abstract';
const walsh = 'Ultrasound J 2021;13:40, PMC8421481, Table 3';
const leidi = 'Systematic-review figures tabulated in Intern Emerg Med 2021, PMC8214715, Table 2';
const ebell = 'Ebell MH et al. Acad Emerg Med 2020;27:541–53, abstract';
const wang = 'Wang CS et al. JAMA 2005;294:1944–56, abstract';
const khan =
  'Khan NA et al. JAMA 2006;295:536–46, abstract and its record in the Database of Abstracts of Reviews of Effects';
const bagai = 'Bagai A et al. JAMA 2006;295:416–28, abstract';
const perkins = 'Perkins BA et al. Diabetes Care 2001;24:250–6, abstract';
const suri = 'Suri P et al. JAMA 2010;304:2628–36, abstract';
const etchells = 'Etchells E et al. J Gen Intern Med 1998;13:699–704, abstract';
const smetana = 'Smetana GW, Shmerling RH. JAMA 2002;287:92–101, abstract';
const straus = 'Straus SE et al. JAMA 2000;283:1853–7, abstract';
const simel = 'Simel DL et al. J Gen Intern Med 1988;3:423–8, abstract';
const barkun = 'Barkun AN et al. Am J Med 1991;91:512–8, abstract';
const bloodLoss = 'McGee S, Abernethy WB, Simel DL. JAMA 1999;281:1022–9, abstract';

const neckAndAbdomen: PublishedRatio[] = [
  {
    id: 'neck-veins-for-cvp-8',
    present: { value: 9.7 },
    absent: { value: 0.3 },
    source: 'Shellenberger RA et al. Cleve Clin J Med 2017;84:943–50, section on the jugular venous pressure',
  },
  {
    id: 'neck-veins-for-cvp-12',
    present: { value: 10.4 },
    absent: { value: 0.1 },
    source: 'Shellenberger RA et al. Cleve Clin J Med 2017;84:943–50, section on the jugular venous pressure',
  },
  {
    id: 'carotid-bruit-for-stenosis-50',
    present: { value: 3.65 },
    absent: { value: 0.36 },
    source: 'BMC Neurology 2008;8:23, abstract',
  },
  {
    id: 'aneurysm-palpated',
    present: { value: 12, low: 7.4, high: 19.5 },
    absent: { value: 0.72, low: 0.65, high: 0.81 },
    source: 'Lederle FA, Simel DL. JAMA 1999;281:77–82, abstract',
  },
  {
    id: 'aneurysm-palpated-4-cm',
    present: { value: 15.6, low: 8.6, high: 28.5 },
    absent: { value: 0.51, low: 0.38, high: 0.67 },
    source: 'Lederle FA, Simel DL. JAMA 1999;281:77–82, abstract',
  },
  {
    id: 'aneurysm-palpated-blinded',
    present: { value: 2.7, low: 2, high: 3.6 },
    absent: { value: 0.43, low: 0.33, high: 0.56 },
    source: 'Fink HA et al. Arch Intern Med 2000;160:833–6, abstract',
  },
  {
    id: 'splenomegaly-palpated-eight-examiners',
    present: { value: 2.66, low: 1.52, high: 4.64 },
    source: 'Tamayo SG et al. J Gen Intern Med 1993;8:69–75, abstract',
  },
  {
    id: 'cirrhosis-hepatomegaly',
    absent: { value: 0.37, low: 0.24, high: 0.51 },
    source: 'Udell JA et al. JAMA 2012;307:832–42, abstract',
  },
  {
    id: 'ascites-bulging-flanks',
    absent: { value: 0.12 },
    source: 'Simel DL et al. J Gen Intern Med 1988;3:423–8, abstract',
  },
  {
    id: 'ascites-flank-dullness',
    present: { value: 2, low: 1.5, high: 2.9 },
    absent: { value: 0.3, low: 0.1, high: 0.7 },
    source: 'Systematic-review figures tabulated in Intern Emerg Med 2021, PMC8214715, Table 2',
  },
  // The table prints these two signs in displaced cells; the test below shows whose they are by arithmetic.
  { id: 'ascites-fluid-wave', present: ratio(6, 3.3, 11.1), absent: ratio(0.4, 0.3, 0.6), source: leidi },
  { id: 'ascites-shifting-dullness', present: ratio(2.7, 1.9, 3.9), absent: ratio(0.3, 0.2, 0.6), source: leidi },
  { id: 'ascites-fluid-wave-inpatients', present: ratio(9.6), source: simel },
  { id: 'ascites-shifting-dullness-inpatients', present: ratio(5.76), source: simel },
  {
    id: 'splenomegaly-castell-eight-examiners',
    present: ratio(1.97, 1.22, 3.19),
    source: 'Tamayo SG et al. J Gen Intern Med 1993;8:69–75, abstract',
  },
  { id: 'splenomegaly-percussion-sign-inpatients', present: ratio(1.48), absent: ratio(0.45), source: barkun },
];

const chest: PublishedRatio[] = [
  { id: 'effusion-dullness-wong', present: ratio(8.7, 2.2, 33.8), source: wong },
  { id: 'effusion-fremitus-wong', absent: ratio(0.21, 0.12, 0.37), source: wong },
  {
    id: 'effusion-dullness-walsh',
    present: ratio(1.13, 0.91, 1.4),
    absent: ratio(0.36, 0.08, 1.62),
    source: walsh,
  },
  {
    id: 'effusion-expansion-walsh',
    present: ratio(3.24, 0.44, 23.81),
    absent: ratio(0.87, 0.73, 1.03),
    source: walsh,
  },
  { id: 'effusion-egophony', present: ratio(3.49, 0.9, 13.5), absent: ratio(0.69, 0.52, 0.91), source: walsh },
  { id: 'effusion-fremitus-review', present: ratio(5.7, 4, 8), source: leidi },
  { id: 'effusion-rub', present: ratio(3.9, 0.8, 18.7), absent: ratio(1, 0.9, 1), source: leidi },
  { id: 'pneumonia-egophony', present: ratio(6.17, 1.34, 18), source: ebell },
  { id: 'pneumonia-clinical-impression', present: ratio(6.32, 3.58, 10.5), source: ebell },
  {
    id: 'pneumonia-fast-breathing',
    present: ratio(3.47, 1.46, 7.23),
    source: 'Htun TP et al. Sci Rep 2019;9:7600, abstract',
  },
  { id: 'obstruction-wheeze-straus', present: ratio(2.7, 1.7, 4.2), source: straus },
  { id: 'laryngeal-height-straus', present: ratio(2.8), source: straus },
  {
    id: 'obstruction-wheeze-holleman',
    present: ratio(12),
    absent: ratio(0.87),
    source: 'Holleman DR et al. J Gen Intern Med 1993;8:63–8, abstract',
  },
];

const heartAndVessels: PublishedRatio[] = [
  { id: 'third-sound-for-heart-failure', present: ratio(11, 4.9, 25), source: wang },
  { id: 'heart-failure-crackles', absent: ratio(0.51, 0.37, 0.7), source: wang },
  { id: 'clavicle-murmur-for-aortic-stenosis', absent: ratio(0.1, 0.01, 0.44), source: etchells },
  { id: 'aortic-stenosis-with-few-signs', present: ratio(1.8, 0.93, 2.9), source: etchells },
  { id: 'limb-cool-skin-symptoms', present: ratio(5.9, 4.1, 8.6), source: khan },
  { id: 'limb-wounds-symptoms', present: ratio(5.9, 2.6, 13.4), source: khan },
  { id: 'limb-discoloured-symptoms', present: ratio(2.8, 2.4, 3.3), source: khan },
  { id: 'leg-bruit-symptomatic', present: ratio(5.6, 4.7, 6.7), absent: ratio(0.39, 0.34, 0.45), source: khan },
  { id: 'limb-pulses-symptoms', present: ratio(4.7, 2.2, 9.9), absent: ratio(0.38, 0.23, 0.64), source: khan },
  { id: 'limb-pulses-no-symptoms', present: ratio(3.1, 1.4, 6.6), source: khan },
  { id: 'hypovolaemia-dry-mouth', absent: ratio(0.3, 0.1, 0.6), source: bloodLoss },
];

const headAndNerves: PublishedRatio[] = [
  { id: 'giant-cell-any-artery-sign', absent: ratio(0.53, 0.38, 0.75), source: smetana },
  { id: 'giant-cell-jaw-claudication-smetana', present: ratio(4.2, 2.8, 6.2), source: smetana },
  { id: 'giant-cell-double-vision', present: ratio(3.4, 1.3, 8.6), source: smetana },
  { id: 'whisper-not-heard', present: ratio(6.1), absent: ratio(0.03), source: bagai },
  { id: 'weber-abnormal', present: ratio(1.6, 1, 2.3), absent: ratio(0.7, 0.48, 1), source: bagai },
  { id: 'hearing-own-report', present: ratio(2.5, 1.7, 3.6), absent: ratio(0.13, 0.09, 0.19), source: bagai },
  { id: 'vibration-on-off-perkins', present: ratio(26.6), absent: ratio(0.33), source: perkins },
  { id: 'vibration-timed-perkins', present: ratio(18.5), absent: ratio(0.51), source: perkins },
  { id: 'monofilament-perkins', present: ratio(10.2), absent: ratio(0.34), source: perkins },
  { id: 'pinprick-perkins', present: ratio(9.2), absent: ratio(0.5), source: perkins },
  { id: 'no-pain-seated-for-stenosis', present: ratio(7.4, 1.9, 30), source: suri },
  { id: 'relief-bending-for-stenosis', present: ratio(6.4, 4.1, 9.9), source: suri },
  { id: 'romberg-for-spinal-stenosis', present: ratio(4.2, 1.4, 13), source: suri },
];

/** Likelihood ratios as the named sources give them. */
export const publishedRatios: PublishedRatio[] = [...neckAndAbdomen, ...chest, ...heartAndVessels, ...headAndNerves];

/** Sensitivity and specificity of the named sources; the library gives the ratios and says how they were computed. */
export const publishedAccuracies: PublishedAccuracy[] = [
  {
    id: 'carotid-bruit-for-stenosis-70',
    sensitivity: 0.53,
    specificity: 0.83,
    source: 'McColgan P et al. QJM 2012;105:1171–7, abstract',
  },
  {
    id: 'carotid-bruit-in-symptomatic',
    sensitivity: 0.63,
    specificity: 0.61,
    source: 'Sauvé JS et al. Ann Intern Med 1994;120:633–7, abstract',
  },
  {
    id: 'cirrhosis-firm-liver',
    sensitivity: 0.68,
    specificity: 0.75,
    source: 'de Bruyn G, Graviss EA. BMC Med Inform Decis Mak 2001;1:6, pooled results',
  },
  { id: 'splenomegaly-traube-dullness', sensitivity: 0.62, specificity: 0.72, source: barkun },
  {
    id: 'field-red-target',
    sensitivity: 0.744,
    specificity: 0.93,
    source: 'Kerr NM et al. Neurology 2010;74:1184–90, abstract',
  },
  { id: 'postural-pulse-large-blood-loss', sensitivity: 0.97, specificity: 0.98, source: bloodLoss },
  { id: 'postural-pulse-moderate-blood-loss', sensitivity: 0.22, specificity: 0.98, source: bloodLoss },
];
