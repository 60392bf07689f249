import type { GetStaticPaths } from 'astro';
import { pathsEnding } from '../../_endpoint.ts';

/** A draft's files that end in .json. */
export const getStaticPaths = (() => pathsEnding('.json')) satisfies GetStaticPaths;

export { serveFile as GET } from '../../_endpoint.ts';
