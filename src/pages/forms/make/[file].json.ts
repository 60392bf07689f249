import type { APIRoute, GetStaticPaths } from 'astro';
import { makeSlice } from '../../../client/make-slice.ts';
import { library } from '../../_data.ts';
import { typesetting } from './_typesetting.ts';

/** What the page that makes forms fetches: what forms are made from when its control is first used; the rest for a PDF. */
const files: Readonly<Record<string, () => unknown>> = { library: () => makeSlice(library), typesetting };

export const getStaticPaths = (() => Object.keys(files).map((file) => ({ params: { file } }))) satisfies GetStaticPaths;

export const GET: APIRoute = async ({ params }) => Response.json(await files[params['file'] ?? '']?.());
