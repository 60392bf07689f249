import type { Form } from '../../../schemas/form.ts';
import { bodyChartSvg, type ChartPlace, chartSignSvg } from '../../figures/body-chart.ts';

/** The body charts of a sheet, as SVG: two figures, and a key to the signs on them. */
export interface Charts {
  front: string;
  back: string;
  key: { sign: string; words: string }[];
}

const words: Readonly<Record<ChartPlace, string>> = {
  joint: 'joint',
  pulse: 'pulse',
  reflex: 'reflex',
  sensation: 'a place to try sensation',
};

/** The systems that examine each kind of place. */
const examinedBy: Readonly<Record<ChartPlace, readonly string[]>> = {
  joint: ['shoulders-and-arms', 'hips-knees-ankles', 'back-and-spine'],
  pulse: ['legs-and-circulation', 'heart', 'groin'],
  reflex: ['reflexes'],
  sensation: ['sensation'],
};

/** What is measured needs no figure to mark it on. */
const withoutFigure = new Set(['preparation', 'vital-signs', 'eyes']);

/** The charts that a form needs: with the places that it examines; none where it only measures. */
export function chartsOf({ sections }: Form): Charts | undefined {
  const systems = new Set(sections.map(({ system }) => system));
  if ([...systems].every((system) => withoutFigure.has(system))) return undefined;
  const kinds = (Object.keys(examinedBy) as ChartPlace[]).filter((kind) =>
    examinedBy[kind].some((system) => systems.has(system)),
  );
  return {
    front: bodyChartSvg('front', kinds),
    back: bodyChartSvg('back', kinds),
    key: kinds.map((kind) => ({ sign: chartSignSvg(kind), words: words[kind] })),
  };
}
