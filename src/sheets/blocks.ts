import type { Library } from '../../schemas/library.ts';
import type { Plan, PlanStep } from '../../schemas/plan.ts';
import { positionMarkSvg } from '../figures/position-mark.ts';
import { blocksOf, type Block } from '../plan/blocks.ts';
import { anywhere } from '../plan/totals.ts';
import { byId } from '../text/references.ts';
import { durationText } from '../text/words.ts';
import type { SheetBlock, SheetStep } from './run-sheet.ts';
import { sheetStep } from './steps.ts';
import { labelsOf, minutesWords, set } from './words.ts';

/** The steps by position. Throws for an id that the library does not hold, RangeError for a position without a mark. */
export function sheetBlocks(library: Library, plan: Plan): SheetBlock[] {
  const steps = sheetSteps(library, plan);
  let printed = 0;
  return blocksOf(plan).map((block) => {
    const mine = steps.slice(printed, printed + block.steps.length);
    printed += block.steps.length;
    return sheetBlock(library, block, mine);
  });
}

function sheetSteps(library: Library, plan: Plan): SheetStep[] {
  const manoeuvres = library.protocols.flatMap((protocol) => protocol.manoeuvres);
  const moves = examinerMoves(plan.steps);
  return blocksOf(plan)
    .flatMap(({ steps }) => steps.map((entry, index) => ({ entry, afterMove: index === 0 })))
    .map(({ entry, afterMove }, index) =>
      sheetStep(library, byId(manoeuvres, entry.step.manoeuvre), entry, {
        number: index + 1,
        moveTo: moves[index],
        afterMove,
      }),
    );
}

/** For each step, the place that the examiner has to move to, if any. */
export function examinerMoves(steps: readonly Pick<PlanStep, 'examiner'>[]): (string | undefined)[] {
  let place: string | undefined;
  return steps.map(({ examiner }) => {
    if (examiner === anywhere || examiner === place) return undefined;
    return (place = examiner);
  });
}

function sheetBlock({ positions, exposures }: Library, block: Block, steps: SheetStep[]): SheetBlock {
  const { label, say, description, help } = byId(positions, block.position);
  const cover = block.steps[0]?.cover ?? [];
  return {
    position: set(label),
    mark: positionMarkSvg(block.position),
    when: whenWords(block),
    ...(cover.length > 0 ? { cover: labelsOf(exposures, cover) } : {}),
    ...(block.changeSeconds > 0 ? { move: durationText(Math.round(block.changeSeconds)) } : {}),
    ...{ say: set(say), how: set(description), help: set(help), steps },
  };
}

function whenWords({ start, changeSeconds, seconds }: Block): string {
  const moved = Math.round(start - changeSeconds);
  return `${moved === 0 ? 'Begin here' : `After ${durationText(moved)}`}, for ${minutesWords(seconds)}`;
}
