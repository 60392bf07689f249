import { z } from 'zod';
import { id } from './common.ts';

/** What a link points at; resolved to an address, with the base path, only when rendered. */
export const target = z.discriminatedUnion('kind', [
  /** `manoeuvre:ID`. */
  z.strictObject({ kind: z.literal('manoeuvre'), id }),
  /** `system:ID`. */
  z.strictObject({ kind: z.literal('system'), id }),
  /** `guide:ID`. */
  z.strictObject({ kind: z.literal('guide'), id }),
  /** `source:ID`. */
  z.strictObject({ kind: z.literal('source'), id }),
  /** An outside https address; shown, never fetched. */
  z.strictObject({ kind: z.literal('web'), url: z.url({ protocol: /^https$/ }) }),
]);
export type Target = z.infer<typeof target>;

/** One node of inline prose. Each output (page, card, form, plain text) renders this small tree its own way. */
export type Inline =
  | { type: 'text'; text: string }
  | { type: 'strong' | 'emphasis'; children: Inline[] }
  | { type: 'link'; to: Target; children: Inline[] }
  | { type: 'value' | 'scale' | 'evidence' | 'measure'; id: string };

export const inline: z.ZodType<Inline> = z.lazy(() =>
  z.union([
    z.strictObject({ type: z.literal('text'), text: z.string() }),
    z.strictObject({ type: z.enum(['strong', 'emphasis']), children: z.array(inline) }),
    z.strictObject({ type: z.literal('link'), to: target, children: z.array(inline) }),
    /** A reference to a value, scale, evidence entry or measuring tool by id. */
    z.strictObject({ type: z.enum(['value', 'scale', 'evidence', 'measure']), id }),
  ]),
);

/** A line of prose: one list item, one paragraph, one attribute. */
export const line = z.array(inline);
export type Line = Inline[];

/** Opening prose of a page. */
export const block = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('paragraph'), line }),
  z.strictObject({ type: z.literal('list'), ordered: z.boolean(), lines: z.array(line) }),
]);
export type Block = z.infer<typeof block>;
