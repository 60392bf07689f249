import type { GetStaticPaths } from 'astro';
import { pathsEnding } from '../../_endpoint.ts';

/** The files that end in .csv of every version of every form. */
export const getStaticPaths = (() => pathsEnding('.csv')) satisfies GetStaticPaths;

export { serveFile as GET } from '../../_endpoint.ts';
