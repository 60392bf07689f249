import { z } from 'zod';
import { day, id, place, words } from './common.ts';
import { block } from './inline.ts';
import { manoeuvre } from './manoeuvre.ts';

/** Front matter of a protocol page. */
export const protocolHead = z.strictObject({
  /** Name of the page as shown. */
  title: words,
  /** Id in content/vocabulary/systems.yaml; also the file's name. */
  system: id,
  /** Place in the whole examination; lower comes earlier. */
  order: z.int().nonnegative(),
  /** One or two sentences for lists and search. */
  summary: words,
  /** Role that wrote it; no real person. */
  author: words,
  /** Role that read it for clinical correctness and safety. */
  reviewer: words,
  /** Day of the last review. */
  reviewed: day,
  /** Day by which the next review is due; `check` warns when it is past. */
  reviewDue: day,
  /** Source ids that the whole page leans on. */
  sources: z.array(id).min(1),
});

/** One page of the library: a system and its manoeuvres in the order they are best done alone. */
export const protocol = protocolHead.extend({
  id,
  /** Why this system is examined and what must come before what. */
  opening: z.array(block).min(1),
  manoeuvres: z.array(manoeuvre).min(1),
  place,
});
export type Protocol = z.infer<typeof protocol>;
