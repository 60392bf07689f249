/**
 * Source of the places: American Spinal Injury Association and International Spinal Cord Society. International
 * Standards for Neurological Classification of Spinal Cord Injury, revised 2019 (Rupp R and others. Topics in Spinal
 * Cord Injury Rehabilitation 2021;27(2):1–22), key sensory points: 28 a side, graded 0 to 2, at most 112 for touch and
 * 112 for pin. Places restated in our own words.
 */
import { describe, expect, it } from 'vitest';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { plainText } from '../../src/text/plain.ts';

/** Each level with what its place must say; all of it. */
const keyPoints: Record<string, RegExp[]> = {
  C2: [/occipital protuberance/, /at least 1 cm/, /3 cm behind the ear/],
  C3: [/supraclavicular fossa/, /mid-clavicular line/],
  C4: [/acromioclavicular joint/],
  C5: [/\blateral side of the antecubital fossa/, /above the crease/],
  C6: [/back of the proximal phalanx of thumb\b/],
  C7: [/back of the proximal phalanx of middle finger/],
  C8: [/back of the proximal phalanx of little finger/],
  T1: [/\bmedial side of the antecubital fossa/, /above the medial epicondyle/],
  T2: [/apex of the axilla/],
  T3: [/third interspace/, /mid-clavicular line/],
  T4: [/fourth/, /nipple/, /mid-clavicular line/],
  T5: [/midway between T4 and T6/, /mid-clavicular line/],
  T6: [/xiphisternum/, /mid-clavicular line/],
  T7: [/one quarters of the way from xiphisternum to umbilicus/, /same line/],
  T8: [/two quarters of the way from xiphisternum to umbilicus/, /same line/],
  T9: [/three quarters of the way from xiphisternum to umbilicus/, /same line/],
  T10: [/umbilicus/, /same line/],
  T11: [/midway between T10 and T12/, /same line/],
  T12: [/midpoint of the inguinal ligament/],
  L1: [/midway between T12 and L2/],
  L2: [/inner front/, /halfway from T12 to the medial femoral condyle/],
  L3: [/condyle/, /above the knee/],
  L4: [/medial malleolus/],
  L5: [/top of the foot/, /third metatarsophalangeal joint/],
  S1: [/\blateral side of the heel/],
  S2: [/midpoint of the popliteal fossa/],
  S3: [/ischial tuberosity or infragluteal fold/],
  'S4–5': [/perianal/, /within 1 cm of the mucocutaneous junction/],
};

const levels = Object.keys(keyPoints);
const level = '(?:[CTL]\\d{1,2}|S4–5|S\\d)';
/** Where a place is said: one level or several, then a comma, a colon, a bracket or "lie". */
const heading = new RegExp(`(?<=^|[ ])(${level}(?:(?:, | and )${level})*)(?=[:,]| \\(| lie\\b)`, 'g');

/** The places that the steps give, level by level; a level named twice keeps both. */
function placesIn(steps: readonly string[]): Map<string, string> {
  const places = new Map<string, string>();
  for (const step of steps) {
    const heads = [...step.matchAll(heading)];
    for (const [order, head] of heads.entries()) {
      const said = step.slice(head.index + head[0].length, heads[order + 1]?.index);
      // What a step says before its first level ("Chest, mid-clavicular line:") holds for all its levels.
      const shared = step.slice(0, heads[0]?.index);
      const group = head[0].match(new RegExp(level, 'g')) ?? [];
      for (const [index, name] of group.entries()) {
        const place = `${shared}${shareOf(said, index, group.length)}`;
        places.set(name, [places.get(name), place].filter((part) => part !== undefined).join(' / '));
      }
    }
  }
  return places;
}

/** What a level gets of a place said for three: the same member of "thumb, middle and little". */
function shareOf(said: string, index: number, count: number): string {
  if (count < 2) return said;
  return said.replace(/([\w-]+), ([\w-]+) and ([\w-]+)/, (...words: string[]) => words[index + 1] ?? '');
}

/** Levels without a place, or with another place than the standard's. */
function misplaced(steps: readonly string[]): string[] {
  const places = placesIn(steps);
  return levels.filter((name) => !(keyPoints[name] ?? []).every((said) => said.test(places.get(name) ?? '')));
}

const library = requireLibrary('content');

function required(id: string): Manoeuvre {
  const found = library.protocols.flatMap(({ manoeuvres }) => manoeuvres).find((one) => one.id === id);
  if (found === undefined) throw new Error(`The library has no manoeuvre "${id}".`);
  return found;
}

const page = required('sensory-level');
const steps = page.technique.map((line) => plainText(line, library));

describe('key points on the page of the sensory level (International Standards, revised 2019)', () => {
  it('are 28 a side, from C2 to S4–5', () => {
    expect(levels).toHaveLength(28);
    expect([...placesIn(steps).keys()].sort()).toEqual([...levels].sort());
  });

  it.each(levels)('%s is where the standard puts it', (name) => {
    const place = placesIn(steps).get(name) ?? 'not named';
    for (const said of keyPoints[name] ?? []) expect(place).toMatch(said);
  });

  it('are said once each', () => {
    expect([...placesIn(steps)].filter(([, place]) => place.includes(' / '))).toEqual([]);
  });

  it('are all offered, touch and pin apart, on both sides, lowest first', () => {
    const fields = page.records.filter(({ id }) => id === 'sensory-level-touch' || id === 'sensory-level-pin');
    expect(fields).toHaveLength(2);
    for (const field of fields) {
      const options = field.kind === 'choice' ? field.options.map((option) => option.replace(' (no level)', '')) : [];
      expect(options.slice(0, levels.length)).toEqual([...levels].reverse());
      expect(field.sides).toBe('both');
    }
  });

  it('are graded 0, 1 and 2, so that each kind of feeling scores 112 at most', () => {
    const grades = library.scales.find(({ id }) => id === 'sensory-key-point')?.grades.map(({ code }) => code) ?? [];
    expect(grades).toEqual(['0', '1', '2', 'NT']);
    expect(levels.length * 2 * Math.max(...grades.map(Number).filter((grade) => grade >= 0))).toBe(112);
  });
});

describe('the check itself', () => {
  const swapped = (one: string, other: string): string[] =>
    steps.map((step) => step.replaceAll(one, '§').replaceAll(other, one).replaceAll('§', other));

  it.each([
    ['umbilicus height', 'xiphisternum height', ['T6', 'T10']],
    ['medial malleolus', 'acromioclavicular joint', ['C4', 'L4']],
    ['third interspace', 'apex of the axilla', ['T2', 'T3']],
    ['thumb, middle', 'middle, thumb', ['C6', 'C7']],
  ])('sees "%s" and "%s" exchanged', (one, other, wrong) => {
    expect(misplaced(swapped(one, other))).toEqual(expect.arrayContaining(wrong));
  });

  it.each(levels)('sees that %s is missing', (name) => {
    const without = steps.map((step) => step.replace(new RegExp(`${name}(?!\\d)`, 'g'), 'X'));
    expect(misplaced(without)).toContain(name);
  });

  it('finds nothing wrong with the page as it stands', () => {
    expect(misplaced(steps)).toEqual([]);
  });
});
