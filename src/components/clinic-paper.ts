import { library } from '../pages/_data.ts';

/** Orders files by their names: those of the paper that the clinic's printer takes come before those of the other. */
export function ownPaperFirst(a: string, b: string): number {
  const paper = library.clinic?.paper;
  const rank = (name: string): number => (paper !== undefined && name.split('.').includes(paper) ? 0 : 1);
  const onPaper = (name: string): boolean => /(^|\.)(a4|letter)(\.|$)/.test(name);
  return onPaper(a) && onPaper(b) ? rank(a) - rank(b) : 0;
}
