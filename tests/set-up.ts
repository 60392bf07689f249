import { buildSite, editions, removeStaleSites, type Edition } from './site.ts';

/** Runs once before the tests that look at the built site. */
export default function setUp(): void {
  removeStaleSites();
  for (const edition of Object.keys(editions) as Edition[]) buildSite(edition);
}
