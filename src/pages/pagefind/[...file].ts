import type { APIRoute, GetStaticPaths } from 'astro';
import { searchFiles } from '../_search.ts';

export const getStaticPaths = (async () =>
  [...(await searchFiles())].map(([file, content]) => ({
    params: { file },
    props: { content },
  }))) satisfies GetStaticPaths;

const types: Readonly<Record<string, string>> = { js: 'text/javascript', json: 'application/json' };

export const GET: APIRoute<{ content: Uint8Array<ArrayBuffer> }> = ({ params, props }) =>
  new Response(props.content, {
    headers: { 'Content-Type': types[params['file']?.split('.').at(-1) ?? ''] ?? 'application/octet-stream' },
  });
