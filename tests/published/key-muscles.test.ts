/**
 * Source of functions and roots: American Spinal Injury Association and International Spinal Cord Society. International
 * Standards for Neurological Classification of Spinal Cord Injury, revised 2019 (Rupp R and others. Topics in Spinal
 * Cord Injury Rehabilitation 2021;27(2):1–22), motor examination: ten key muscle functions a side, graded 0 to 5, at
 * most 50 a side and 100 in all.
 */
import { describe, expect, it } from 'vitest';
import type { Record as Field } from '../../schemas/record.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { plainText } from '../../src/text/plain.ts';

interface KeyMuscle {
  root: string;
  /** What the muscles do, as the standard names it. */
  name: string;
  /** The joint or part that the step must move, in plain words. */
  moves: RegExp;
}

const arm: KeyMuscle[] = [
  { root: 'C5', name: 'Elbow flexors', moves: /elbow at a right angle.*pull/ },
  { root: 'C6', name: 'Wrist extensors', moves: /knuckles rise.*press the back of the hand/ },
  { root: 'C7', name: 'Elbow extensors', moves: /forearm hanging; it straightens/ },
  { root: 'C8', name: 'Finger flexors', moves: /middle finger; its end joint bends/ },
  { root: 'T1', name: 'Little finger abductors', moves: /little finger out/ },
];

const leg: KeyMuscle[] = [
  { root: 'L2', name: 'Hip flexors', moves: /thigh drawn up/ },
  { root: 'L3', name: 'Knee extensors', moves: /heel lifts.*shin/ },
  { root: 'L4', name: 'Ankle dorsiflexors', moves: /foot drawn up/ },
  { root: 'L5', name: 'Long toe extensors', moves: /big toe pulled up/ },
  { root: 'S1', name: 'Ankle plantar flexors', moves: /push the forefoot/ },
];

const library = requireLibrary('content');

function required(id: string): Manoeuvre {
  const found = library.protocols.flatMap(({ manoeuvres }) => manoeuvres).find((one) => one.id === id);
  if (found === undefined) throw new Error(`The library has no manoeuvre "${id}".`);
  return found;
}

/** A key muscle's field is known by its label, "function, root". */
function isKeyField(field: Field): boolean {
  return /, [CTLS]\d$/.test(field.label);
}

describe.each([
  { id: 'arm-strength', muscles: arm },
  { id: 'leg-strength', muscles: leg },
])('key muscles on the page $id (International Standards, revised 2019)', ({ id, muscles }) => {
  const page = required(id);
  const steps = page.technique.map((line) => plainText(line, library));

  it.each(muscles)('$name, $root: one scale for each side, by the Medical Research Council', ({ name, root }) => {
    const fields = page.records.filter(({ label }) => label === `${name}, ${root}`);
    expect(fields).toEqual([expect.objectContaining({ kind: 'scale', scale: 'muscle-strength-mrc', sides: 'both' })]);
  });

  it.each(muscles)('$name, $root: one step names function and root, and moves it', ({ name, root, moves }) => {
    const found = steps.filter((step) => step.startsWith(`${name}, ${root}:`));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(moves);
  });

  it('has these five in the order of the cord, and no field with a root beside them', () => {
    expect(page.records.filter(isKeyField).map(({ label }) => label)).toEqual(
      muscles.map(({ name, root }) => `${name}, ${root}`),
    );
  });

  it('is examined on both sides', () => {
    expect(page.sides).toBe('both');
  });
});

describe('the motor score of the International Standards', () => {
  it('is 50 a side and 100 in all: ten functions by the highest grade', () => {
    const grades = library.scales.find(({ id }) => id === 'muscle-strength-mrc')?.grades ?? [];
    const highest = Math.max(...grades.map(({ code }) => Number(code)));
    const fields = [required('arm-strength'), required('leg-strength')].flatMap(({ records }) =>
      records.filter(isKeyField),
    );
    expect(fields.length * highest).toBe(50);
    expect(fields.filter(({ sides }) => sides === 'both').length * 2 * highest).toBe(100);
  });
});
