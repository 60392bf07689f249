/** Settings of a run of the planner. */
export interface PlanOptions {
  /** Milliseconds after which the best order found has to do; 5000 by default. */
  milliseconds?: number;
  /** A clock in milliseconds, for tests; the machine's own by default. */
  now?: () => number;
}

/** Says whether a share of the time, from 0 to 1, has gone. */
export type Stopwatch = (share: number) => () => boolean;

/** Starts a stopwatch. */
export function stopwatch({ milliseconds = 5000, now = () => performance.now() }: PlanOptions): Stopwatch {
  const begun = now();
  return (share) => () => now() - begun >= milliseconds * share;
}
