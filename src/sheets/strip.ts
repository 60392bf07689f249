import type { Library } from '../../schemas/library.ts';
import type { Plan } from '../../schemas/plan.ts';
import { positionMarkSvg } from '../figures/position-mark.ts';
import { minuteMarks, stripOf, type Span, type StripRow } from '../plan/strip.ts';
import { durationText, labelOf, midSentence } from '../text/words.ts';
import type { SheetStrip, StripLine } from './run-sheet.ts';

/** Positions and regions along time, drawn to scale. Throws RangeError for a position without a mark. */
export function sheetStrip({ positions, exposures }: Library, plan: Plan): SheetStrip {
  const strip = stripOf(plan);
  const end = Math.max(strip.end, 1);
  const line = ({ id, spans }: StripRow, labels: Labels): StripLine => ({
    label: labelOf(labels, id),
    spans: spans.map((span) => [share(span.start, end), share(span.end, end)]),
  });
  return {
    lines: [
      ...strip.positions.map((row) => ({ ...line(row, positions), mark: positionMarkSvg(row.id) })),
      ...strip.regions.map((row) => line(row, exposures)),
    ],
    minutes: minuteMarks(end).map((minute) => ({ minute, at: share(60 * minute, end) })),
    alt: [
      ...strip.positions.map((row) => spoken(row, positions)),
      ...strip.regions.map((row) => `uncovered: ${midSentence(spoken(row, exposures))}`),
    ].join('; '),
  };
}

type Labels = readonly { id: string; label: string }[];

/** To a ten-thousandth: finer than any printer, and the same on every machine. */
const share = (seconds: number, end: number): number => Math.round((10_000 * seconds) / end) / 10_000;

const spoken = ({ id, spans }: StripRow, labels: Labels): string =>
  `${labelOf(labels, id)} ${spans.map(spanWords).join(', ')}`;

const spanWords = ({ start, end }: Span): string =>
  `from ${durationText(Math.round(start))} to ${durationText(Math.round(end))}`;
