import type { Instrument } from '../../schemas/vocabulary.ts';
import type { Library } from '../../schemas/library.ts';
import type { Plan, PlanStep } from '../../schemas/plan.ts';
import { bareRegions } from './exposure.ts';
import { atPace } from './movements.ts';

/** A step with what changes in the patient's cover just before it; exposure ids. */
export interface BlockStep {
  step: PlanStep;
  uncover: string[];
  /** Covered again before anything else is uncovered. */
  cover: string[];
}

/** The steps that follow each other in one position. */
export interface Block {
  position: string;
  /** Seconds elapsed when its first step starts, the change into it made. */
  start: number;
  /** Seconds of its steps. */
  seconds: number;
  /** Seconds of the change into it; 0 for a first block that the patient is in already. */
  changeSeconds: number;
  steps: BlockStep[];
}

/** The steps by position, in order. Staged manoeuvres run from the end of one block into the next. */
export function blocksOf(plan: Pick<Plan, 'steps'>): Block[] {
  const blocks: Block[] = [];
  let elapsed = 0;
  plan.steps.forEach((step, i) => {
    const previous = plan.steps[i - 1];
    const entry = { step, ...coverChange(previous?.exposure ?? [], step.exposure) };
    const current = blocks.at(-1);
    if (current?.position === step.position) {
      current.steps.push(entry);
      current.seconds += step.seconds;
    } else blocks.push(blockOf(entry, atPace(step.start - elapsed)));
    elapsed = step.start + step.seconds;
  });
  return blocks;
}

function blockOf(entry: BlockStep, changeSeconds: number): Block {
  const { position, start, seconds } = entry.step;
  return { position, start, seconds, changeSeconds, steps: [entry] };
}

function coverChange(before: readonly string[], now: readonly string[]): Pick<BlockStep, 'uncover' | 'cover'> {
  const [bare, next] = [bareRegions(before), bareRegions(now)];
  return { uncover: next.filter((id) => !bare.includes(id)), cover: bare.filter((id) => !next.includes(id)) };
}

/** Regions still bare after the last step, to be covered. */
export function coverAtEnd({ steps }: Pick<Plan, 'steps'>): string[] {
  return bareRegions(steps.at(-1)?.exposure ?? []);
}

/** What to lay out, with what to check on each before the patient undresses. */
export function instrumentsToLayOut(
  { instruments }: Pick<Library, 'instruments'>,
  { layOut }: Pick<Plan, 'layOut'>,
): Instrument[] {
  return instruments.filter(({ id }) => layOut.includes(id));
}
