import type { GetStaticPaths } from 'astro';
import { pathsEnding } from '../../_endpoint.ts';

/** The files that end in .json of every version of every form. */
export const getStaticPaths = (() => pathsEnding('.json')) satisfies GetStaticPaths;

export { serveFile as GET } from '../../_endpoint.ts';
