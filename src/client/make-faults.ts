import type { MakeWords, WordField } from './make-choice.ts';

/** What a fault stands beside: a field that is written in, or the list of manoeuvres. */
export type FaultPlace = WordField | 'manoeuvres';
export type MakeFaults = Partial<Record<FaultPlace, string>>;

const missing: Record<Exclude<WordField, 'url'>, string> = {
  title: 'Give the form a title.',
  purpose: 'Say what the examination is for.',
  leavesOut: 'Say what the form leaves out: whoever fills it in must know.',
  publisher: 'Say who publishes it: a department or practice, not Fingerbreadth.',
};

/** What is amiss with a form before it is made, by the field that it stands beside; empty when nothing is. */
export function makeFaults(words: MakeWords, manoeuvres: number): MakeFaults {
  const faults: MakeFaults = {};
  for (const [field, fault] of Object.entries(missing) as [Exclude<WordField, 'url'>, string][])
    if (words[field].trim() === '') faults[field] = fault;
  for (const field of ['title', 'purpose', 'leavesOut', 'publisher'] as const)
    if (longWord.test(words[field])) faults[field] = 'Split the longest word: it does not fit on paper.';
  if (words.publisher.trim().toLowerCase() === 'fingerbreadth') faults.publisher = missing.publisher;
  if (manoeuvres === 0) faults.manoeuvres = 'Choose an examination, or tick at least one manoeuvre.';
  const address = addressFault(words.url.trim());
  return address === undefined ? faults : { ...faults, url: address };
}

/** More letters than a column of the paper form surely holds. */
const longWord = /\S{31}/;

const uuid = /^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

function addressFault(url: string): string | undefined {
  if (url === '' || uuid.test(url)) return undefined;
  if (!/^https:\/\/[^\s|#/]+\.[^\s|#]+$/.test(url) || !URL.canParse(url))
    return 'Write a whole address that begins with https://, without “#” or “|”. Or leave it empty.';
  if (/^https:\/\/([^/]*\.)?fingerbreadth\.example(\/|:|$)/.test(url))
    return 'This address belongs to Fingerbreadth. Give one of yours, or leave it empty.';
  return undefined;
}
