/** A small drawing board for the paths of position marks: straight lines and circles, nothing else. */

type Point = [x: number, y: number];

/** Every point that a path reaches: line ends, and the four ends of each circle. Throws on a command it does not know. */
export function pointsOf(path: string): Point[] {
  return strokesOf(path).flatMap((stroke) => stroke.filter((_, i) => stroke.length < 20 || i % 6 === 0));
}

/** Cells of a `size` × `size` board that the path darkens, as "x,y". */
export function darkCells(path: string, size: number): Set<string> {
  const scale = size / 32;
  const cells = strokesOf(path).flatMap((stroke) => stroke.slice(1).flatMap((end, i) => along(stroke[i] ?? end, end)));
  return new Set(cells.map(([x, y]) => `${String(Math.floor(x * scale))},${String(Math.floor(y * scale))}`));
}

/** Share of the cells that two drawings have in common, from 0 to 1. */
export function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  const common = [...a].filter((cell) => b.has(cell)).length;
  return common / (a.size + b.size - common);
}

function along([x, y]: Point, [toX, toY]: Point): Point[] {
  const steps = Math.max(1, Math.ceil(Math.hypot(toX - x, toY - y) * 2));
  return Array.from({ length: steps + 1 }, (_, i) => [x + ((toX - x) * i) / steps, y + ((toY - y) * i) / steps]);
}

function strokesOf(path: string): Point[][] {
  return path
    .split('M')
    .filter((part) => part !== '')
    .map((part) => (part.includes('a') ? circle(part) : straight(part)));
}

function straight(part: string): Point[] {
  return part.split('L').map((pair) => {
    const [x, y] = pair.split(' ').map(Number);
    if (x === undefined || y === undefined || Number.isNaN(x + y)) throw new Error(`"${part}" is not a line.`);
    return [x, y];
  });
}

/** A circle starts at its left end and is drawn as two half turns. */
function circle(part: string): Point[] {
  const match = /^([\d.]+) ([\d.]+)a([\d.]+) \3 0 1 0 [\d.]+ 0a\3 \3 0 1 0 -[\d.]+ 0$/.exec(part);
  if (match === null) throw new Error(`"${part}" is not a circle.`);
  const [left, y, radius] = match.slice(1).map(Number) as [number, number, number];
  return Array.from({ length: 25 }, (_, i) => {
    const angle = (i * Math.PI) / 12;
    return [left + radius - radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}
