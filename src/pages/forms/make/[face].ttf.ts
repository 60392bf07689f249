import type { APIRoute, GetStaticPaths } from 'astro';
import { fontFiles } from './_typesetting.ts';

export const getStaticPaths = (async () =>
  [...(await fontFiles()).keys()].map((name) => ({
    params: { face: name.replace(/\.ttf$/, '') },
  }))) satisfies GetStaticPaths;

export const GET: APIRoute = async ({ params }) => {
  const bytes = (await fontFiles()).get(`${params['face'] ?? ''}.ttf`);
  return bytes === undefined
    ? new Response(undefined, { status: 404 })
    : new Response(bytes, { headers: { 'Content-Type': 'font/ttf' } });
};
