import type { GetStaticPaths } from 'astro';
import { watchPaths } from '../../_watch.ts';

/** Observation sheets that end in .json. */
export const getStaticPaths = (() => watchPaths('json')) satisfies GetStaticPaths;

export { serveWatchFile as GET } from '../../_watch.ts';
