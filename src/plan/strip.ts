import type { Plan } from '../../schemas/plan.ts';
import { bareRegions } from './exposure.ts';

/** A stretch of time, in seconds from the beginning of the sheet. */
export interface Span {
  start: number;
  end: number;
}

/** One line of the strip: when the patient is in a position, or when a region is bare. */
export interface StripRow {
  /** Position or exposure id. */
  id: string;
  spans: Span[];
}

/** A run sheet drawn along time. */
export interface Strip {
  /** Seconds of the whole sheet. */
  end: number;
  positions: StripRow[];
  regions: StripRow[];
}

/**
 * The lines of the strip in order of first appearance. A region that stays uncovered from one step to the next is one
 * span, the change of position between them included.
 */
export function stripOf({ steps, totals }: Pick<Plan, 'steps' | 'totals'>): Strip {
  const positions = new Map<string, Span[]>();
  const regions = new Map<string, Span[]>();
  let before: readonly string[] = [];
  for (const { position, exposure, start, seconds } of steps) {
    const span = { start, end: start + seconds };
    const now = [position, ...bareRegions(exposure)];
    for (const id of now) extend(id === position ? positions : regions, id, span, before.includes(id));
    before = now;
  }
  return { end: totals.seconds, positions: rows(positions), regions: rows(regions) };
}

/** Adds a span to a line, or lengthens the last one where nothing came between. */
function extend(lines: Map<string, Span[]>, id: string, span: Span, goesOn: boolean): void {
  const spans = lines.get(id) ?? [];
  const last = spans.at(-1);
  if (goesOn && last !== undefined) last.end = span.end;
  else spans.push({ ...span });
  lines.set(id, spans);
}

const rows = (lines: ReadonlyMap<string, Span[]>): StripRow[] => [...lines].map(([id, spans]) => ({ id, spans }));

/** Minutes to mark on a strip of so many seconds: every 1, 2, 5, 10 or 20, so that there are at most eight. */
export function minuteMarks(end: number): number[] {
  const minutes = end / 60;
  const each = [1, 2, 5, 10, 20].find((step) => minutes / step <= 8) ?? 60;
  return Array.from({ length: Math.floor(minutes / each) + 1 }, (_, i) => i * each);
}
