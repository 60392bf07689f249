import type { GetStaticPaths } from 'astro';
import { pathsEnding } from '../../_endpoint.ts';

/** A draft's files that end in .csv. */
export const getStaticPaths = (() => pathsEnding('.csv')) satisfies GetStaticPaths;

export { serveFile as GET } from '../../_endpoint.ts';
