import { type IRunOptions, TextRun } from 'docx';
import { soft } from './look.ts';

/** Words as they are set unless something else is said. */
export function run(text: string, more: IRunOptions = {}): TextRun {
  const options: IRunOptions = { text, ...more };
  return new TextRun(options);
}

/** Bold words. */
export const boldRun = (text: string, more: IRunOptions = {}): TextRun => run(text, { ...more, bold: true });

/** Words of a lighter ink: they name what follows. */
export const softRun = (text: string, more: IRunOptions = {}): TextRun => run(text, { ...more, color: soft });
