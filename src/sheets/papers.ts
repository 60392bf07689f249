/** Papers that a run sheet is set on, in the words of a download control. */
export const sheetPapers = {
  a4: 'the sheet, A4',
  letter: 'the sheet, US Letter',
  a6: 'the short pocket sheet, A6',
} as const;

/** Size of a printed run sheet. */
export type SheetPaper = keyof typeof sheetPapers;
