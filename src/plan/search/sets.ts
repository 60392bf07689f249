/**
 * Sets of items as bits in 32-bit words. Many sets share one array: a set is an array and the place of its first word.
 */
export type Words = Uint32Array;

/** Words that a set of `count` items takes. */
export const wordsFor = (count: number): number => Math.max(1, Math.ceil(count / 32));

/** Whether item `i` is in the set at `at`. */
export const has = (set: Words, at: number, i: number): boolean => ((set[at + (i >> 5)]! >>> (i & 31)) & 1) === 1;

/** Puts item `i` into the set at `at`. */
export function put(set: Words, at: number, i: number): void {
  set[at + (i >> 5)]! |= 1 << (i & 31);
}

/** Takes item `i` out of the set at `at`. */
export function take(set: Words, at: number, i: number): void {
  set[at + (i >> 5)]! &= ~(1 << (i & 31));
}

/** Whether every member of the inner set is in the outer one. */
export function within(inner: Words, from: number, outer: Words, at: number, words: number): boolean {
  for (let w = 0; w < words; w++) if ((inner[from + w]! & ~outer[at + w]!) !== 0) return false;
  return true;
}

/** Whether both sets have the same members. */
export function equal(a: Words, from: number, b: Words, at: number, words: number): boolean {
  for (let w = 0; w < words; w++) if (a[from + w] !== b[at + w]) return false;
  return true;
}

/** Adds the members of the set at `from` in `more` to the set at `at`. */
export function join(set: Words, at: number, more: Words, from: number, words: number): void {
  for (let w = 0; w < words; w++) set[at + w]! |= more[from + w]!;
}

/** The set of the first `count` items. */
export function allOf(count: number): Words {
  const set = new Uint32Array(wordsFor(count));
  for (let i = 0; i < count; i++) put(set, 0, i);
  return set;
}

/** How many members a whole array of words holds. */
export function sizeOf(set: Words): number {
  let size = 0;
  for (let word of set) for (; word !== 0; word &= word - 1) size++;
  return size;
}

/** How many bits of a word are set. */
export function bitCount(word: number): number {
  let w = word - ((word >>> 1) & 0x55555555);
  w = (w & 0x33333333) + ((w >>> 2) & 0x33333333);
  return Math.imul((w + (w >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** Calls back for each member of the set at `at`, in order. */
export function eachIn(set: Words, at: number, words: number, call: (i: number) => void): void {
  for (let w = 0; w < words; w++)
    for (let left = set[at + w]!; left !== 0; left &= left - 1) call(w * 32 + 31 - Math.clz32(left & -left));
}
