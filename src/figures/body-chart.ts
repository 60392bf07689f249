/**
 * Body charts to mark on paper: an outline from the front and from behind, drawn for this project from half a figure
 * that is mirrored, with places of joints, pulses, reflexes and sensation. It is a place to write, not an anatomy plate.
 */

/** Side from which the body is seen. */
export type BodyView = 'front' | 'back';

/** Kind of place that a chart shows, each with a sign of its own that a copier keeps. */
export type ChartPlace = 'joint' | 'pulse' | 'reflex' | 'sensation';

/** Box of one figure, in its own units. */
export const chartBox = { width: 124, height: 206 } as const;

type Point = readonly [x: number, y: number];

const middle = chartBox.width / 2;

/** Half of the outline from the neck round arm and leg to the crotch; x is the distance from the midline. */
const half: readonly Point[] = [
  ...([
    [6, 24],
    [6.4, 29.5],
    [12, 33],
    [22, 35.5],
    [28.5, 40],
    [31.5, 50],
    [36, 63],
    [40.5, 74],
  ] as const),
  ...([
    [45.5, 87],
    [51, 101],
    [55, 108],
    [57.5, 117],
    [56.5, 123],
    [53.5, 122],
    [50.5, 117],
    [47.5, 113],
  ] as const),
  ...([
    [44.5, 112],
    [44, 109],
    [46, 103.5],
    [40, 90],
    [34, 77],
    [29, 66],
    [24, 53],
  ] as const),
  ...([
    [22.5, 64],
    [19.8, 76],
    [18.6, 85],
    [21, 95],
    [23.2, 106],
    [23, 122],
    [20.5, 138],
    [18.6, 148],
  ] as const),
  ...([
    [19.6, 160],
    [17.4, 174],
    [14.6, 189],
    [18.5, 197],
    [17.5, 201],
    [11, 201.5],
    [8.6, 197],
    [9, 189],
  ] as const),
  ...([
    [7.6, 174],
    [6.8, 160],
    [7.4, 148],
    [5.4, 132],
    [2.4, 113],
    [0, 109.5],
  ] as const),
];

/** Lines that tell the front from the back; x to either side of the midline. */
const details: Readonly<Record<BodyView, readonly (readonly Point[])[]>> = {
  front: [
    [
      [3, 36.5],
      [10, 36],
      [20, 38.5],
    ],
    [
      [0, 66],
      [5, 70],
      [10, 77],
    ],
    [
      [4, 108],
      [12, 103],
      [19, 98],
    ],
    [
      [9.5, 149],
      [13, 152],
      [16.5, 149],
    ],
  ],
  back: [
    [
      [8, 43],
      [9, 52],
      [13, 60],
      [17, 52],
    ],
    [
      [0.01, 98],
      [0.01, 109],
    ],
    [
      [2.5, 112],
      [10, 115.5],
      [18, 112],
    ],
    [
      [8.5, 147],
      [13, 149],
      [17, 147],
    ],
  ],
};

const places: Readonly<Record<BodyView, Readonly<Record<ChartPlace, readonly Point[]>>>> = {
  front: {
    joint: [
      [25, 42],
      [37.5, 74.5],
      [48.2, 104],
      [52, 112],
      [15, 103],
      [13, 148],
      [12, 189],
      [14, 198],
    ],
    pulse: [
      [4, 28],
      [32.5, 71],
      [47.2, 99.5],
      [9.5, 110],
      [13, 194],
    ],
    reflex: [
      [34.5, 67.5],
      [46.5, 94],
      [13, 154],
    ],
    sensation: [
      [16, 31.5],
      [41, 72],
      [33, 79],
      [45, 110.5],
      [53, 121],
      [55.8, 119],
      [11, 55],
      [5, 82],
      [13, 128],
      [8.2, 143],
      [9.8, 186],
    ],
  },
  back: {
    joint: [],
    pulse: [
      [13, 150],
      [9.6, 190],
    ],
    reflex: [
      [36, 70],
      [11.7, 185],
    ],
    sensation: [
      [12, 155],
      [15.6, 195],
      [4, 105],
    ],
  },
};

const rounded = (number: number): string => String(Math.round(number * 100) / 100);
const at = ([x, y]: Point): string => `${rounded(x)} ${rounded(y)}`;

/** A smooth curve through points (Catmull and Rom, as cubic Bézier curves). */
function curve(points: readonly Point[]): string {
  const parts = points.slice(1).map((to, index) => {
    const from = points[index] ?? to;
    const [before, after] = [points[index - 1] ?? from, points[index + 2] ?? to];
    const toward = (a: Point, b: Point, c: Point, sign: number): Point => [
      a[0] + (sign * (c[0] - b[0])) / 6,
      a[1] + (sign * (c[1] - b[1])) / 6,
    ];
    return `C${at(toward(from, before, to, 1))} ${at(toward(to, from, after, -1))} ${at(to)}`;
  });
  return `M${at(points[0] ?? [0, 0])}${parts.join('')}`;
}

/** Both sides of a half: the points to the right of the midline, and the same to its left. */
const bothSides = (points: readonly Point[]): Point[][] =>
  [1, -1].map((side) => points.map(([x, y]): Point => [middle + side * x, y]));

const path = (d: string, weight: number): string =>
  `<path d="${d}" fill="none" stroke="#000" stroke-width="${weight}" stroke-linecap="round" stroke-linejoin="round"/>`;

const signs: Readonly<Record<ChartPlace, (x: number, y: number) => string>> = {
  joint: (x, y) =>
    `<circle cx="${rounded(x)}" cy="${rounded(y)}" r="2.1" fill="#fff" stroke="#000" stroke-width="0.5"/>`,
  pulse: (x, y) => `<path d="M${at([x, y - 1.8])}L${at([x + 1.8, y])}L${at([x, y + 1.8])}L${at([x - 1.8, y])}Z"/>`,
  reflex: (x, y) => `<path d="M${at([x - 1.6, y - 1.6])}h3.2v3.2h-3.2Z" fill="#fff" stroke="#000" stroke-width="0.6"/>`,
  sensation: (x, y) => `<circle cx="${rounded(x)}" cy="${rounded(y)}" r="0.8"/>`,
};

const svg = (width: number, height: number, body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}">${body}</svg>`;

/** One figure as SVG, with the places of these kinds; black alone, so that a copier keeps it. */
export function bodyChartSvg(view: BodyView, kinds: readonly ChartPlace[]): string {
  const head = `<ellipse cx="${middle}" cy="13.5" rx="9" ry="12" fill="none" stroke="#000" stroke-width="0.6"/>`;
  const outline = bothSides(half).map((side) => path(curve(side), 0.6));
  const lines = details[view].flatMap(bothSides).map((line) => path(curve(line), 0.4));
  const marks = kinds.flatMap((kind) =>
    bothSides(places[view][kind])
      .flat()
      .map(([x, y]) => signs[kind](x, y)),
  );
  return svg(chartBox.width, chartBox.height, [head, ...outline, ...lines, ...marks].join(''));
}

/** The sign of a kind of place alone, for a key. */
export const chartSignSvg = (kind: ChartPlace): string => svg(6, 6, signs[kind](3, 3));
