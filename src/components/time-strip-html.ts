import type { Plan } from '../../schemas/plan.ts';
import { positionMarkSvg } from '../figures/position-mark.ts';
import { minuteMarks, stripOf, type Span } from '../plan/strip.ts';
import { joined, labelOf } from './labels.ts';
import { markup, trusted, type Markup } from './markup.ts';
import { sinceStart } from './run-sheet.ts';
import type { SheetWords } from './run-sheet-words.ts';

/** One line of the drawing. */
interface Row {
  kind: 'position' | 'region';
  id: string;
  label: string;
  spans: readonly Span[];
}

/** The sheet drawn along time, to scale: where the patient is, what is uncovered. */
export function timeStripHtml(plan: Plan, { vocabulary: { positions, exposures } }: SheetWords): Markup {
  const strip = stripOf(plan);
  const minutes = minuteMarks(strip.end);
  const share = shareOf(strip.end);
  const rows: Row[] = [
    ...strip.positions.map((row) => ({ ...row, kind: 'position' as const, label: labelOf(positions, row.id) })),
    ...strip.regions.map((row) => ({ ...row, kind: 'region' as const, label: labelOf(exposures, row.id) })),
  ];
  const grid = minutes.map(
    (minute) => markup`<line class="grid" x1="${share(60 * minute)}" x2="${share(60 * minute)}" y1="0" y2="22"/>`,
  );
  return markup`<figure class="time-strip"><dl>${rows.map((row, i) =>
    rowHtml(row, row.kind === 'region' && rows[i - 1]?.kind === 'position', grid, share),
  )}</dl><div class="axis" aria-hidden="true"><span>Minutes</span><svg width="100%" height="18">${minutes.map(
    (minute) =>
      markup`<text x="${share(60 * minute)}" y="14" text-anchor="${anchorOf(60 * minute, strip.end)}">${minute}</text>`,
  )}</svg></div><figcaption class="small">Along time, to scale: the position of the patient above, what is uncovered below. The gaps are changes of position.</figcaption></figure>`;
}

/** Figures at either end of the axis stay inside it. */
function anchorOf(seconds: number, end: number): 'start' | 'middle' | 'end' {
  if (seconds === 0) return 'start';
  return seconds > 0.97 * end ? 'end' : 'middle';
}

/** Seconds as a share of the whole, for an SVG attribute. */
const shareOf =
  (end: number) =>
  (seconds: number): string =>
    `${((100 * seconds) / Math.max(end, 1)).toFixed(2)}%`;

function rowHtml(
  { kind, id, label, spans }: Row,
  first: boolean,
  grid: readonly Markup[],
  share: (seconds: number) => string,
): Markup {
  const [y, height] = kind === 'position' ? [4, 14] : [6, 10];
  const bars = spans.map(
    ({ start, end }) =>
      markup`<rect class="bar" x="${share(start)}" width="${share(end - start)}" y="${y}" height="${height}"/>`,
  );
  const mark = kind === 'position' && trusted(positionMarkSvg(id));
  const uncovered = kind === 'region' && markup`<span class="out-of-sight"> uncovered</span>`;
  return markup`<div class="${kind}${first && ' first-region'}"><dt>${mark}${label}${uncovered}</dt><dd><span class="out-of-sight">${spansText(spans)}</span><svg width="100%" height="22" aria-hidden="true">${grid}${bars}</svg></dd></div>`;
}

const spansText = (spans: readonly Span[]): string =>
  joined(
    spans.map(({ start, end }) => `from ${sinceStart(start)} to ${sinceStart(end)}`),
    'and',
  );
