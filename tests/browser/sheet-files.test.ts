/** Run sheets as a user takes them away: from the page of an examination to the file, and every file at its address. */
import { describe, expect, it } from 'vitest';
import { requireLibrary } from '../../src/library/load.ts';
import { editions } from '../site.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();
const forms = requireLibrary('content').forms.map(({ id }) => id);
const papers = ['a4', 'letter', 'a6'];

describe.each(editionNames)('in the site built as %s', (edition) => {
  it('the page of an examination offers its sheet in every size, and downloads it', async () => {
    await sites.visit(edition, 'plan/breathless/', {}, async (page) => {
      const links = page.locator('.sheet-files a');
      const hrefs = await links.evaluateAll<(string | null)[], Element>((all) =>
        all.map((link) => link.getAttribute('href')),
      );
      expect(hrefs).toEqual(papers.map((paper) => `${editions[edition]}plan/breathless.${paper}.pdf`));
      const [file] = await Promise.all([page.waitForEvent('download'), links.first().click()]);
      expect(file.suggestedFilename()).toBe('breathless.a4.pdf');
      expect(await file.failure()).toBeNull();
    });
  });

  it.each(forms)('%s is served as a PDF in every size', async (form) => {
    for (const paper of papers) {
      const answer = await fetch(`${sites.url(edition)}plan/${form}.${paper}.pdf`);
      expect(answer.status).toBe(200);
      expect(answer.headers.get('content-type')).toBe('application/pdf');
      expect(new TextDecoder().decode((await answer.arrayBuffer()).slice(0, 5))).toBe('%PDF-');
    }
  });
});
