/** What is chosen for a form, to and from an address; damage of any kind is found. */
import { describe, expect, it } from 'vitest';
import { choiceFromHash, choiceToHash, isChoice } from '../../../src/client/make-address.ts';
import {
  chosenManoeuvres,
  longest,
  startingChoice,
  withTicked,
  wordsOf,
  type MakeChoice,
} from '../../../src/client/make-choice.ts';
import { knownOf } from '../../../src/client/make-definition.ts';
import { requireLibrary } from '../../../src/library/load.ts';

const known = knownOf(requireLibrary('content'));
const shortVisit = known.exams.find(({ id }) => id === 'short-visit');
const plain = startingChoice(shortVisit);

const written: MakeChoice = {
  ...withTicked(known, plain, ['gait', 'radial-pulse', 'liver-edge']),
  start: undefined,
  words: {
    title: 'Größe & Maß = 100 % (Übersicht). “#1”',
    purpose: 'Two\nlines.',
    leavesOut: '',
    publisher: "St Nobody's & Co.",
    url: 'https://forms.example.org/one?two=3',
  },
};

const choices: [string, MakeChoice][] = [
  ['an examination as it stands', plain],
  ['an examination with manoeuvres taken off and added, and words of every sort', written],
  ['single manoeuvres', { ...startingChoice(), added: ['radial-pulse'], start: 'supine' }],
  [
    'words alone, with what was there emptied',
    { ...startingChoice(), words: { ...wordsOf(undefined), leavesOut: '' } },
  ],
];

describe('a choice in an address', () => {
  it.each(choices)('comes back whole: %s', (_name, choice) => {
    const hash = choiceToHash(known, choice);
    expect(isChoice(hash)).toBe(true);
    expect(choiceFromHash(known, hash)).toEqual(choice);
  });

  it('holds only what is not the examination’s own, in signs that no mail program cuts off', () => {
    expect(choiceToHash(known, plain)).toMatch(/^exam=short-visit&sum=[0-9a-z]+$/);
    expect(choiceToHash(known, written)).toMatch(/^[\w=&.%-]+$/);
    expect(choiceToHash(known, written)).not.toMatch(/[.%]$/);
  });

  it('comes back when a mail program has written all of it in escapes', () => {
    expect(choiceFromHash(known, encodeURIComponent(choiceToHash(known, written)))).toEqual(written);
  });

  it('is damaged wherever it was cut off', () => {
    const hash = choiceToHash(known, written);
    for (let length = 1; length < hash.length; length++)
      expect(choiceFromHash(known, hash.slice(0, length)), hash.slice(0, length)).toBeUndefined();
  });

  it('is damaged wherever one sign is another', () => {
    const hash = choiceToHash(known, written);
    for (let at = 0; at < hash.length; at++) {
      const other = `${hash.slice(0, at)}${hash[at] === 'q' ? 'x' : 'q'}${hash.slice(at + 1)}`;
      expect(choiceFromHash(known, other), other).toBeUndefined();
    }
  });

  /** Signed like a link of the page, so that only what it says can be amiss with it. */
  const signed = (whole: string): string => `${whole}&sum=${sumOf(whole)}`;
  function sumOf(whole: string): string {
    // FNV-1a, 32 bits (RFC 9923), written out again, with big integers.
    let hash = 0x811c9dc5n;
    for (const sign of whole) hash = ((hash ^ BigInt(sign.charCodeAt(0))) * 0x01000193n) & 0xffffffffn;
    return hash.toString(36);
  }

  it('is taken when it is signed and all of it is known', () => {
    expect(choiceFromHash(known, signed('exam=short-visit'))).toEqual(plain);
  });

  it.each([
    ['an examination that is not there', 'exam=no-such-exam'],
    ['a manoeuvre that is not there', 'added=no-such-manoeuvre'],
    ['a manoeuvre taken off that the examination does not hold', 'exam=short-visit&without=liver-edge'],
    ['a manoeuvre added that the examination holds', 'exam=short-visit&added=gait'],
    ['a manoeuvre that every form has', 'added=finish-and-explain'],
    ['a position that is not there', 'exam=short-visit&start=flying'],
    ['a part that is not known', 'exam=short-visit&colour=red'],
    ['a part twice', 'exam=short-visit&exam=short-visit'],
    ['a part of two', 'exam=short-visit=intake'],
    ['broken percent code', 'exam=short-visit&title=%E0%A4'],
    ['words longer than the field', `title=${'x'.repeat(longest.title + 1)}`],
    ['the name of a property of every object', 'constructor=x'],
    ['nothing', ''],
  ])('is refused with %s', (_name, whole) => {
    expect(choiceFromHash(known, signed(whole))).toBeUndefined();
  });

  it('is told from a place on the page', () => {
    expect(['form', 'take', ''].map(isChoice)).toEqual([false, false, false]);
  });
});

describe('what is ticked', () => {
  it('is the examination without what was taken off and with what was added, in page order', () => {
    const ticked = ['liver-edge', 'gait', 'radial-pulse'];
    const choice = withTicked(known, plain, ticked);
    expect(choice.added).toEqual(['liver-edge', 'radial-pulse']);
    expect(choice.without).toHaveLength((shortVisit?.manoeuvres.length ?? 0) - 1);
    expect(chosenManoeuvres(known, choice)).toEqual(known.manoeuvres.filter((id) => ticked.includes(id)));
  });
});
