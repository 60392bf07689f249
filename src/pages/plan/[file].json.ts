import type { APIRoute, GetStaticPaths } from 'astro';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import { planSlice } from '../../client/plan-slice.ts';
import { inPageOrder } from '../../plan/manoeuvres-of.ts';
import { plainText } from '../../text/plain.ts';
import { library } from '../_data.ts';
import { linesOf, notesOf } from './_notes.ts';
import { sheets } from './_sheets.ts';

const byManoeuvre = <T>(of: (manoeuvre: Manoeuvre) => T): Record<string, T> =>
  Object.fromEntries(inPageOrder(library).map((one) => [one.id, of(one)]));

/** What the page of run sheets is given, in the order in which it asks: what it cannot do without comes first. */
const files: Readonly<Record<string, () => unknown>> = {
  slice: () =>
    planSlice(
      library,
      sheets.map(({ form }) => form),
    ),
  notes: () => byManoeuvre(notesOf),
  alternatives: () => byManoeuvre(({ adaptations }) => linesOf(adaptations)),
  tell: () => byManoeuvre(({ tell }) => tell.map((line) => plainText(line, library))),
  names: () => byManoeuvre(({ synonyms }) => synonyms.join(' ')),
};

export const getStaticPaths = (() => Object.keys(files).map((file) => ({ params: { file } }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ params }) => Response.json(files[params['file'] ?? '']?.());
