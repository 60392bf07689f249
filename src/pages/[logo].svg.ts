import type { APIRoute, GetStaticPaths } from 'astro';
import { library } from './_data.ts';

const drawing = library.clinic?.drawing;

export const getStaticPaths = (() =>
  drawing === undefined ? [] : [{ params: { logo: 'clinic-logo' } }]) satisfies GetStaticPaths;

/** The logo of the clinic whose edition this is; the shared library has none. */
export const GET: APIRoute = () => new Response(drawing, { headers: { 'Content-Type': 'image/svg+xml' } });
