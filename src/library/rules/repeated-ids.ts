import { manoeuvresOf, type Rule } from './rule.ts';

/** A list of ids says each once. */
export const repeatedIds: Rule = {
  name: 'repeated-id',
  description: 'An attribute that lists ids names none of them twice: the second is a slip, often for another id.',
  check(content, report) {
    for (const one of manoeuvresOf(content)) {
      const { stages, exposure, instruments, after, sources } = one.value;
      const positions = stages.map((stage): [string, string[]] => ['position', stage]);
      for (const [name, ids] of [...positions, ...Object.entries({ exposure, instruments, after, sources })]) {
        const twice = ids.find((id, index) => ids.indexOf(id) < index);
        if (twice !== undefined) report(one.attribute(name), `"${name}" names "${twice}" twice. Keep one.`);
      }
    }
  },
};
