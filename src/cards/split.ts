import type { PartName } from './parts.ts';

/** What the front may hold, best first: hands and words in front, findings behind. Safety comes before hands on every one. */
const fronts: readonly (readonly PartName[])[] = [
  ['flags', 'cautions', 'steps', 'say'],
  ['flags', 'cautions', 'steps'],
  ['flags', 'cautions', 'say'],
  ['flags', 'cautions', 'steps', 'say', 'normal'],
  ['flags', 'cautions'],
  ['flags'],
];

/** The parts of a card shared between its faces. */
export type Split = [front: PartName[], back: PartName[]];

const split = (names: readonly PartName[], front: readonly PartName[]): Split => [
  names.filter((name) => front.includes(name)),
  names.filter((name) => !front.includes(name)),
];

/** Ways to share parts between the faces; without findings, what to say has the back to itself first. */
export const splitsOf = (names: readonly PartName[]): Split[] => {
  const [whole, handsOnly, ...rest] = fronts.map((front) => split(names, front)) as [Split, Split, ...Split[]];
  return names.includes('abnormal') ? [whole, handsOnly, ...rest] : [handsOnly, whole, ...rest];
};
