import {
  examOf,
  longest,
  startingChoice,
  wordFields,
  wordsOf,
  type MakeChoice,
  type MakeKnown,
  type WordField,
} from './make-choice.ts';

/** Last part of a link, which tells whether all of it came through. */
const seal = /&sum=([0-9a-z]+)$/;

/**
 * A choice as what stands behind `#`: `exam=short-visit&without=gait&publisher=…&sum=…`; ids with full stops between
 * them, words in percent code and only where they are not the examination's own.
 */
export function choiceToHash(known: MakeKnown, choice: MakeChoice): string {
  const exam = examOf(known, choice);
  const own = wordsOf(exam);
  const parts: [string, string | undefined][] = [
    ['exam', choice.exam],
    ['without', choice.without.join('.')],
    ['added', choice.added.join('.')],
    ['start', choice.start === exam?.start ? undefined : (choice.start ?? 'anywhere')],
    ...wordFields.map((field): [string, string | undefined] => [
      field,
      choice.words[field] === own[field] ? undefined : encoded(choice.words[field]),
    ]),
  ];
  const text = parts.flatMap(([key, value]) => (value === undefined || value === '' ? [] : [`${key}=${value}`]));
  // A field that was emptied is not one that was left as it stood.
  const emptied = wordFields.filter((field) => choice.words[field] === '' && own[field] !== '');
  const whole = [...text, ...emptied.map((field) => `${field}=`)].join('&');
  return `${whole}&sum=${checksum(whole)}`;
}

/** Percent code that no mail program takes for the end of a link. */
const encoded = (words: string): string =>
  encodeURIComponent(words).replace(/[!'()*.~]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`);

/** FNV-1a of the UTF-16 units, 32 bits, in base 36. Source: RFC 9923; it finds accidents, nothing else. */
function checksum(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(36);
}

/** Whether what stands behind `#` is meant as a choice; if not, it is a place on the page. */
export const isChoice = (hash: string): boolean => /=|%3d/i.test(hash);

/** Takes a choice from behind `#` (without it); undefined when any part is damaged or not known here. */
export function choiceFromHash(known: MakeKnown, hash: string): MakeChoice | undefined {
  const text = hash.includes('=') ? hash : decoded(hash);
  const sum = seal.exec(text ?? '');
  const whole = text?.replace(seal, '');
  if (whole === undefined || sum?.[1] !== checksum(whole)) return undefined;
  const pairs = whole.split('&').map((pair) => pair.split('='));
  const parts = new Map(pairs.map(([key = '', value = '']) => [key, value]));
  const isWhole = pairs.every((pair) => pair.length === 2) && parts.size === pairs.length;
  return isWhole ? choiceOf(known, parts) : undefined;
}

function choiceOf(known: MakeKnown, parts: ReadonlyMap<string, string>): MakeChoice | undefined {
  const id = parts.get('exam');
  const exam = known.exams.find((one) => one.id === id);
  if (id !== undefined && exam === undefined) return undefined;
  const choice = startingChoice(exam);
  for (const [key, value] of parts) if (!take(known, choice, key, value)) return undefined;
  return choice;
}

/** Takes one part into the choice; says whether it could. */
function take(known: MakeKnown, choice: MakeChoice, key: string, value: string): boolean {
  if (key === 'exam') return true;
  if (key === 'start') {
    choice.start = value === 'anywhere' ? undefined : value;
    return value === 'anywhere' || known.positions.includes(value);
  }
  if (key === 'without' || key === 'added') {
    choice[key] = value.split('.');
    const own = examOf(known, choice)?.manoeuvres ?? [];
    return choice[key].every((id) => known.manoeuvres.includes(id) && own.includes(id) === (key === 'without'));
  }
  return isWordField(key) && takeWords(choice, key, decoded(value));
}

const isWordField = (key: string): key is WordField => (wordFields as readonly string[]).includes(key);

function takeWords({ words }: MakeChoice, field: WordField, text: string | undefined): boolean {
  if (text === undefined || text.length > longest[field]) return false;
  words[field] = text;
  return true;
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}
