import { describe, expect, it } from 'vitest';
import { requireLibrary } from '../../src/library/load.ts';
import { publishedAccuracies, publishedRatios } from './published-ratios.ts';

const library = requireLibrary('content');

function entry(id: string): (typeof library.evidence)[number] {
  const found = library.evidence.find((one) => one.id === id);
  if (found === undefined) throw new Error(`The library has no evidence "${id}".`);
  return found;
}

describe('likelihood ratios in the library', () => {
  it('are checked against their sources for at least 25 entries, none twice', () => {
    const ids = [...publishedRatios, ...publishedAccuracies].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThanOrEqual(25);
  });

  it.each(publishedRatios)('$id is as published in $source', ({ id, present, absent }) => {
    expect(entry(id).present).toEqual(present);
    expect(entry(id).absent).toEqual(absent);
  });

  it.each(publishedAccuracies)(
    '$id follows from sensitivity and specificity in $source',
    ({ id, sensitivity, specificity }) => {
      const { present, absent, derivation } = entry(id);
      expect(derivation).toBeDefined();
      expect(present?.value).toBeCloseTo(sensitivity / (1 - specificity), 1);
      expect(absent?.value).toBeCloseTo((1 - sensitivity) / specificity, 2);
    },
  );

  // Intern Emerg Med 2021, PMC8214715, Table 2, prints sensitivity 0.62 and specificity 0.90 with the ratio of absence
  // 0.4 on the row of shifting dullness, and 0.77 and 0.72 with 2.7 and 0.3 on the row below it. A ratio of presence is
  // sensitivity / (1 − specificity): only so do the pairs belong together, the first to the fluid wave's 6.0.
  it.each([
    ['ascites-fluid-wave', 0.62, 0.9],
    ['ascites-shifting-dullness', 0.77, 0.72],
  ])('%s fits sensitivity %d and specificity %d, which its source prints in displaced cells', (id, found, cleared) => {
    const { present, absent } = entry(id);
    expect(Math.abs((present?.value ?? 0) - found / (1 - cleared))).toBeLessThan(0.25);
    expect(Math.abs((absent?.value ?? 0) - (1 - found) / cleared)).toBeLessThan(0.05);
  });

  // Sauvé JS et al. 1994, abstract: without a bruit the probability falls from 52 % to 40 %.
  it('take 52 % to 40 % when a bruit is absent, as the trial reports', () => {
    const odds = (0.52 / 0.48) * (entry('carotid-bruit-in-symptomatic').absent?.value ?? 0);
    expect(odds / (1 + odds)).toBeCloseTo(0.4, 2);
  });
});
