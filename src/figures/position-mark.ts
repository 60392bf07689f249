/**
 * Position marks: one small drawing per patient position, from a few base shapes in one line weight.
 * They are printed at the outer edge of every page, card, form section and run-sheet block, like a thumb index.
 */

/** The box that every mark is drawn in, in its own units. */
export const markBox = 32;

/** The one line weight, in units of the box: 1 px at 16 px. */
export const markWeight = 2.25;

type Point = readonly [x: number, y: number];

/** A line through points: a trunk, a limb, a couch. */
const line = (...points: Point[]): string => `M${points.map(([x, y]) => `${x} ${y}`).join('L')}`;

/** A head seen from the front or the side. */
const head = (x: number, y: number, radius = 3.25): string =>
  `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`;

/** A head seen from behind: the same ring, filled by a smaller one. */
const backOfHead = (x: number, y: number): string => head(x, y) + head(x, y, 1.1);

const couch = line([2, 27], [30, 27]);

/** Strokes by position: the patient first, then what they sit, lie or stand on. */
const strokes: Readonly<Record<string, readonly string[]>> = {
  chair: [
    head(13, 5),
    line([13, 10], [13, 19.5], [23, 19.5], [23, 28.5], [27, 28.5]),
    line([7, 9], [7, 29], [7, 24], [17, 24]),
  ],
  sitting: [
    head(13, 5),
    line([13, 10], [13, 19], [23, 19], [23, 27]),
    line([2, 23.5], [18, 23.5]),
    line([6, 24], [6, 30]),
  ],
  'sitting-forward': [
    head(20.5, 6.5),
    line([17.5, 10.5], [11, 19], [23, 19], [23, 27]),
    line([2, 23.5], [18, 23.5]),
    line([6, 24], [6, 30]),
  ],
  'semi-recumbent': [head(6, 6), line([9, 10], [16.5, 20], [29, 20]), line([2, 11], [13, 26], [30, 26])],
  supine: [head(5.5, 19), line([10.5, 21], [28, 21], [28, 15]), couch],
  'left-lateral': [head(6, 15), line([10.5, 17.5], [19, 20.5], [23, 12], [29, 17]), couch],
  'right-lateral': [head(26, 15), line([21.5, 17.5], [13, 20.5], [9, 12], [3, 17]), couch],
  prone: [backOfHead(5.5, 20.5), line([10.5, 21], [23, 21], [23, 11]), couch],
  lithotomy: [
    head(5.5, 21),
    line([10.5, 22.5], [19, 22.5], [19, 12], [29, 12], [29, 7]),
    line([25, 12.5], [25, 27]),
    couch,
  ],
  standing: [head(15, 5), line([15, 10], [15, 25], [20, 25]), line([6, 30], [26, 30])],
  any: [
    line([5.5, 26], [5.5, 9.5]),
    line([5.5, 26], [17, 14.5]),
    line([5.5, 26], [22, 26]),
    head(5.5, 5),
    head(20, 11.5),
    head(26.5, 26),
  ],
};

/**
 * Returns the stroke paths of the mark of a position id (or `any`) in a 32 × 32 box.
 * Throws RangeError for an id without a mark.
 */
export function positionMark(positionId: string): { d: string[] } {
  const d = Object.hasOwn(strokes, positionId) ? strokes[positionId] : undefined;
  if (d === undefined) throw new RangeError(`no mark is drawn for position "${positionId}"`);
  return { d: [...d] };
}

/** Position ids that have a mark, in the order of the thumb index, `any` last. */
export const markedPositions: readonly string[] = Object.keys(strokes);

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);

/**
 * Returns the mark as a whole SVG in the current colour: named by `title` where given, decorative otherwise.
 * Throws RangeError for an id without a mark.
 */
export function positionMarkSvg(positionId: string, options: { title?: string } = {}): string {
  const { title } = options;
  const naming = title === undefined ? 'aria-hidden="true"' : `role="img" aria-label="${escaped(title)}"`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="mark" viewBox="0 0 ${markBox} ${markBox}" width="${markBox}" height="${markBox}" ${naming}>` +
    `<path d="${positionMark(positionId).d.join('')}" fill="none" stroke="currentColor" stroke-width="${markWeight}" stroke-linecap="round" stroke-linejoin="round"/></svg>`
  );
}
