import type { GetStaticPaths } from 'astro';
import { watchPaths } from '../../_watch.ts';

/** Observation sheets that end in .pdf. */
export const getStaticPaths = (() => watchPaths('pdf')) satisfies GetStaticPaths;

export { serveWatchFile as GET } from '../../_watch.ts';
