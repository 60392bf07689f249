import type { APIRoute } from 'astro';
import { searchFiles } from '../_search.ts';

type Props = { content: Uint8Array<ArrayBuffer> };

interface Endpoint {
  getStaticPaths: () => Promise<{ params: { file: string }; props: Props }[]>;
  GET: APIRoute<Props>;
}

/**
 * An endpoint for the index's files in one folder (`''` or `'index/'`) with one ending. There is one for each ending:
 * Astro serves an address without a slash at its end only where the endpoint's own name has the ending.
 */
export function indexEndpoint(folder: string, ending: string, type = 'application/octet-stream'): Endpoint {
  const getStaticPaths: Endpoint['getStaticPaths'] = async () =>
    [...(await searchFiles())]
      .filter(([path]) => path.startsWith(folder) && path.endsWith(ending))
      .map(([path, content]) => ({ params: { file: path.slice(folder.length, -ending.length) }, props: { content } }));
  const GET: Endpoint['GET'] = ({ props }) => new Response(props.content, { headers: { 'Content-Type': type } });
  return { getStaticPaths, GET };
}
