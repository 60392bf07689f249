import { describe, expect, it } from 'vitest';
import { requireLibrary } from '../../../src/library/load.ts';
import {
  markBox,
  markedPositions,
  markWeight,
  positionMark,
  positionMarkSvg,
} from '../../../src/figures/position-mark.ts';
import { stageMarks } from '../../../src/figures/stage-marks.ts';
import { darkCells, likeness, pointsOf } from './drawn.ts';

const { positions } = requireLibrary('content');

describe('position marks', () => {
  it('exist for every position of the library and for any, in its order', () => {
    expect(markedPositions).toEqual([...positions.map(({ id }) => id), 'any']);
  });

  it.each(markedPositions)('keep the whole stroke of %s inside the box', (id) => {
    const ends = pointsOf(positionMark(id).d.join('')).flat();
    expect(Math.min(...ends)).toBeGreaterThanOrEqual(markWeight / 2);
    expect(Math.max(...ends)).toBeLessThanOrEqual(markBox - markWeight / 2);
  });

  it('differ from one another in at least a third of their dark cells at 16 by 16', () => {
    const drawn = markedPositions.map((id) => ({ id, cells: darkCells(positionMark(id).d.join(''), 16) }));
    const pairs = drawn.flatMap((a, i) =>
      drawn.slice(i + 1).map((b) => ({ a: a.id, b: b.id, alike: likeness(a.cells, b.cells) })),
    );
    expect(pairs).toHaveLength(55);
    expect(pairs.filter(({ alike }) => alike > 2 / 3)).toEqual([]);
  });

  it('are drawn in one weight and in the colour of the text', () => {
    const weights = markedPositions.map((id) => /stroke-width="([^"]+)"/.exec(positionMarkSvg(id))?.[1]);
    expect(new Set(weights)).toEqual(new Set([String(markWeight)]));
    for (const id of markedPositions) expect(positionMarkSvg(id)).toContain('stroke="currentColor"');
  });

  it('are decorative unless named, and a name is escaped', () => {
    expect(positionMarkSvg('supine')).toContain('aria-hidden="true"');
    expect(positionMarkSvg('supine', { title: 'Lying "flat" & <still>' })).toContain(
      'role="img" aria-label="Lying &quot;flat&quot; &amp; &lt;still&gt;"',
    );
  });

  it('carry no style attribute, which the content policy refuses', () => {
    expect(markedPositions.filter((id) => positionMarkSvg(id).includes('style='))).toEqual([]);
  });

  it.each(['kneeling', '', 'constructor'])('refuse %j', (id) => {
    expect(() => positionMark(id)).toThrow(RangeError);
  });

  it('are handed out as copies', () => {
    positionMark('prone').d.push('M0 0');
    expect(positionMark('prone').d).not.toContain('M0 0');
  });
});

describe('marks of a stage', () => {
  const every = positions.map(({ id }) => id);

  it('are its positions', () => {
    expect(stageMarks(['sitting', 'supine'], positions)).toEqual(['sitting', 'supine']);
  });

  it('are "any" alone when every position serves', () => {
    expect(stageMarks(every.toReversed(), positions)).toEqual(['any']);
    expect(stageMarks(every.slice(1), positions)).toEqual(every.slice(1));
  });
});
