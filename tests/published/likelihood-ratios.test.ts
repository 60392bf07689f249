import { describe, expect, it } from 'vitest';
import type { Ratio } from '../../schemas/evidence.ts';
import { requireLibrary } from '../../src/library/load.ts';

const library = requireLibrary('content');

interface Published {
  id: string;
  present?: Ratio;
  absent?: Ratio;
  /** The source as published, named here and not taken from the content. */
  source: string;
}

/** Likelihood ratios as the named sources give them. */
const published: Published[] = [
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
];

/** Ratios computed here, with the sensitivity and specificity that the named sources give. */
const derived = [
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
];

function entry(id: string): (typeof library.evidence)[number] {
  const found = library.evidence.find((one) => one.id === id);
  if (found === undefined) throw new Error(`The library has no evidence "${id}".`);
  return found;
}

describe('likelihood ratios in the library', () => {
  it.each(published)('$id is as published in $source', ({ id, present, absent }) => {
    expect(entry(id).present).toEqual(present);
    expect(entry(id).absent).toEqual(absent);
  });

  it.each(derived)('$id follows from sensitivity and specificity in $source', ({ id, sensitivity, specificity }) => {
    const { present, absent, derivation } = entry(id);
    expect(derivation).toBeDefined();
    expect(present?.value).toBeCloseTo(sensitivity / (1 - specificity), 1);
    expect(absent?.value).toBeCloseTo((1 - sensitivity) / specificity, 2);
  });

  // Sauvé JS et al. 1994, abstract: without a bruit the probability falls from 52 % to 40 %.
  it('take 52 % to 40 % when a bruit is absent, as the trial reports', () => {
    const odds = (0.52 / 0.48) * (entry('carotid-bruit-in-symptomatic').absent?.value ?? 0);
    expect(odds / (1 + odds)).toBeCloseTo(0.4, 2);
  });
});
