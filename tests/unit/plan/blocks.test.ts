import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../schemas/plan.ts';
import { blocksOf, coverAtEnd, instrumentsToLayOut } from '../../../src/plan/blocks.ts';
import { planRequest } from '../../../src/plan/plan.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';
import { present } from '../../fixtures/present.ts';
import { libraryOf, type Sketch } from './small-library.ts';

const sketches: Sketch[] = [
  { id: 'hello', exposure: ['none'], stages: [['sitting']] },
  { id: 'neck', exposure: ['neck'], stages: [['sitting']], after: ['hello'] },
  { id: 'veins', exposure: ['neck', 'upper-sternum'], stages: [['supine']], after: ['neck'] },
  { id: 'belly', exposure: ['abdomen'], stages: [['supine']], after: ['veins'] },
  { id: 'pressure', exposure: ['arms'], stages: [['supine'], ['standing']], after: ['belly'] },
];

const plan: Plan = planRequest(libraryOf(sketches), { manoeuvres: sketches.map(({ id }) => id), pace: 2 });

describe('blocks', () => {
  it('follow the positions, each with its start, its seconds and those of the change into it', () => {
    const rows = blocksOf(plan).map(({ position, start, seconds, changeSeconds }) => ({
      position,
      start,
      seconds,
      changeSeconds,
    }));
    expect(rows).toEqual([
      { position: 'sitting', start: 0, seconds: 60, changeSeconds: 0 },
      { position: 'supine', start: 90, seconds: 75, changeSeconds: 30 },
      { position: 'standing', start: 205, seconds: 15, changeSeconds: 40 },
    ]);
  });

  it('say before each step what to uncover and what to cover again, and nothing for what stays as it is', () => {
    const rows = blocksOf(plan).flatMap(({ steps }) =>
      steps.map(({ step, uncover, cover }) => [step.manoeuvre, uncover, cover]),
    );
    expect(rows).toEqual([
      ['hello', [], []],
      ['neck', ['neck'], []],
      ['veins', ['upper-sternum'], []],
      ['belly', ['abdomen'], ['neck', 'upper-sternum']],
      ['pressure', ['arms'], ['abdomen']],
      ['pressure', [], []],
    ]);
    expect(coverAtEnd(plan)).toEqual(['arms']);
  });

  it('begin with the change from where the patient is', () => {
    const library = libraryOf(sketches);
    const [first] = blocksOf(planRequest(library, { manoeuvres: ['hello'], start: 'standing' }));
    expect(present(first)).toMatchObject({ position: 'sitting', start: 8, changeSeconds: 8 });
  });

  it('of an empty sheet are none', () => {
    expect(blocksOf({ steps: [] })).toEqual([]);
    expect(coverAtEnd({ steps: [] })).toEqual([]);
  });
});

describe('what to lay out', () => {
  it('comes with what to check on it', () => {
    const [first] = fixtureLibrary.instruments;
    const { id, check } = present(first);
    expect(instrumentsToLayOut(fixtureLibrary, { layOut: [id] })).toEqual([expect.objectContaining({ id, check })]);
  });
});
