import {
  AlignmentType,
  BorderStyle,
  convertMillimetersToTwip,
  LevelFormat,
  type IBorderOptions,
  type IStylesOptions,
} from 'docx';

/** Twentieths of a point, as WordprocessingML counts lengths. */
export const millimetres = convertMillimetersToTwip;

/** A4 with room for what printers leave blank; holes are punched in the left margin. */
export const page = {
  size: { width: millimetres(210), height: millimetres(297) },
  margin: {
    ...{ left: millimetres(17), right: millimetres(13), top: millimetres(29), bottom: millimetres(20) },
    ...{ header: millimetres(9), footer: millimetres(8) },
  },
};

/** Widths of a table's columns: what is asked, the patient's right, the patient's left. */
export const columns = { asked: millimetres(44), side: millimetres(68) };
/** Whole width of a table. */
export const tableWidth = columns.asked + 2 * columns.side;

/** Sizes of type in half points. */
export const size = { body: 19, answer: 18, small: 17, edge: 15 };

/** Labels; 8.6:1 on white, and dark when copied. */
export const soft = '505050';

/** A line at the edge of a table or under a blank. */
export const rule: IBorderOptions = { style: BorderStyle.SINGLE, size: 4, color: '000000' };
/** A line between records. */
export const pale: IBorderOptions = { style: BorderStyle.SINGLE, size: 4, color: '969696' };

/** Least height of a row that is written in by pen. */
export const writeRow = millimetres(7);

/** Names of the styles that are not the word processor's own. */
export const style = { asked: 'Asked', answer: 'Answer', note: 'Note', safety: 'Safety', edge: 'Edge' } as const;

const face = 'Arial';
const heading = (points: number, before: number): object => ({
  run: { font: face, bold: true, size: 2 * points, color: '000000' },
  paragraph: { spacing: { before: 20 * before, after: 60 }, keepNext: true },
});
const own = (id: string, halfPoints: number, more: object = {}): object => ({
  ...{ id, name: id, basedOn: 'Normal', quickFormat: true, run: { size: halfPoints } },
  ...more,
});

/** The styles of the document: one face, black, in British English. */
export const styles = {
  default: {
    document: {
      run: { font: face, size: size.body, language: { value: 'en-GB' } },
      paragraph: { spacing: { after: 60 } },
    },
    title: heading(18, 0),
    heading1: heading(15, 0),
    heading2: heading(12.5, 14),
    heading3: heading(10.5, 8),
  },
  paragraphStyles: [
    own(style.asked, size.body, { paragraph: { spacing: { before: 40, after: 20 } } }),
    own(style.answer, size.answer, { paragraph: { spacing: { before: 40, after: 20 } } }),
    own(style.note, size.small, { paragraph: { spacing: { after: 40 } } }),
    own(style.safety, size.small, { paragraph: { spacing: { after: 40 }, keepNext: true } }),
    own(style.edge, size.edge, { paragraph: { spacing: { after: 0 } } }),
  ],
} as IStylesOptions;

/** What the list of red flags is called by. */
export const flagList = 'red-flags';

const bullet = {
  ...{ level: 0, format: LevelFormat.BULLET, text: '•', alignment: AlignmentType.LEFT },
  style: { paragraph: { indent: { left: millimetres(4), hanging: millimetres(3) } }, run: { font: face } },
};

/** The lists of the document. */
export const numbering = { config: [{ reference: flagList, levels: [bullet] }] };
