import { manoeuvresOf, type Rule } from './rule.ts';

const fewest = 3;

/** People find a manoeuvre by their own word for it. */
export const synonyms: Rule = {
  name: 'synonyms',
  description: `Every manoeuvre has at least ${fewest} synonyms, no two alike and none the same as its title.`,
  check(content, report) {
    for (const one of manoeuvresOf(content)) {
      const { id, synonyms: words, title } = one.value;
      const at = one.attribute('synonyms');
      if (words.length < fewest)
        report(
          at,
          `${id} has ${words.length} synonyms; at least ${fewest} are wanted, separated by ";": trade names, eponyms, lay words, a common misspelling.`,
        );
      const seen = new Set([title.toLowerCase()]);
      for (const word of words) {
        if (seen.has(word.toLowerCase())) report(at, `The synonym "${word}" of ${id} says nothing new. Remove it.`);
        seen.add(word.toLowerCase());
      }
    }
  },
};
