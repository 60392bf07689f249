import type { GetStaticPaths } from 'astro';
import { pathsEnding } from '../../_endpoint.ts';

/** The files that end in .docx of every version of every form. */
export const getStaticPaths = (() => pathsEnding('.docx')) satisfies GetStaticPaths;

export { serveFile as GET } from '../../_endpoint.ts';
