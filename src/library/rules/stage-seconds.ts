import { manoeuvresOf, type Rule } from './rule.ts';

/** Every stage gets its share of the time. */
export const stageSeconds: Rule = {
  name: 'stage-seconds',
  description: 'A manoeuvre takes at least as many seconds as it has stages, so that each stage takes some.',
  check(content, report) {
    for (const one of manoeuvresOf(content)) {
      const { id, seconds, stages } = one.value;
      if (seconds >= stages.length) continue;
      report(
        one.attribute('seconds'),
        `${id} takes ${seconds} s for ${stages.length} stages. Give honest seconds for both sides and all stages, the words said included.`,
      );
    }
  },
};
