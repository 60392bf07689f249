/** One thing wrong in content. Lines and columns start at 1. */
export interface Fault {
  file: string;
  line: number;
  column: number;
  /** Name of the rule that found it. */
  rule: string;
  /** What was found, what is expected, how to mend it. */
  message: string;
}

/** Where a fault points. */
export type At = Pick<Fault, 'file' | 'line' | 'column'>;

/** Faults in reading order: by file, line, column, then message. */
export function sortFaults(faults: readonly Fault[]): Fault[] {
  return [...faults].sort(
    (a, b) => compare(a.file, b.file) || a.line - b.line || a.column - b.column || compare(a.message, b.message),
  );
}

/** One line of a report: `path:line:column  message`. */
export function faultLine(fault: Fault): string {
  return `${fault.file}:${fault.line}:${fault.column}  ${fault.message}`;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
