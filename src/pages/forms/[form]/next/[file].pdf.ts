import type { GetStaticPaths } from 'astro';
import { pathsEnding } from '../../_endpoint.ts';

/** A draft's files that end in .pdf. */
export const getStaticPaths = (() => pathsEnding('.pdf')) satisfies GetStaticPaths;

export { serveFile as GET } from '../../_endpoint.ts';
