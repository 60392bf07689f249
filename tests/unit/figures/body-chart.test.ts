import { describe, expect, it } from 'vitest';
import { bodyChartSvg, chartBox, type ChartPlace, chartSignSvg } from '../../../src/figures/body-chart.ts';

const kinds: ChartPlace[] = ['joint', 'pulse', 'reflex', 'sensation'];
const signsIn = (svg: string): number => (svg.match(/<circle|<path d="[^"]*Z"/g) ?? []).length;

describe.each(['front', 'back'] as const)('the body from the %s', (view) => {
  it('is drawn alike on both sides: each place of one side stands at the other too', () => {
    const bare = bodyChartSvg(view, []);
    expect(signsIn(bare)).toBe(0);
    expect(bare).toContain('<path');
    const signs = signsIn(bodyChartSvg(view, kinds));
    expect(signs).toBeGreaterThan(4);
    expect(signs % 2).toBe(0);
  });

  it('lies within its box, in black alone', () => {
    const svg = bodyChartSvg(view, kinds);
    const circles = [...svg.matchAll(/cx="([\d.]+)" cy="([\d.]+)"/g)].map(
      ([, x, y]) => [Number(x), Number(y)] as const,
    );
    const points = [...svg.matchAll(/([\d.]+) ([\d.]+)(?=[CLZ" ])/g)].map(
      ([, x, y]) => [Number(x), Number(y)] as const,
    );
    expect(points.length).toBeGreaterThan(100);
    for (const [x, y] of [...circles, ...points]) {
      expect(x).toBeLessThanOrEqual(chartBox.width);
      expect(y).toBeLessThanOrEqual(chartBox.height);
    }
    expect(new Set(svg.match(/#\w+/g))).toEqual(new Set(['#000', '#fff']));
  });
});

describe('the signs of a chart', () => {
  it('differ from kind to kind, and each shows only where it is asked for', () => {
    expect(new Set(kinds.map(chartSignSvg)).size).toBe(kinds.length);
    for (const kind of kinds) {
      const signs = signsIn(bodyChartSvg('front', [kind]));
      expect(signs, kind).toBeGreaterThan(0);
    }
  });
});
