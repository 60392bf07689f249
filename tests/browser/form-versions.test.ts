/** What a clinic asks of a form's versions: what changed, and whether the copy in hand may still be used. */
import { describe, expect, it } from 'vitest';
import { shortCode } from '../../src/forms/edition.ts';
import { requireReleases } from '../../src/forms/releases/load.ts';
import { present } from '../fixtures/present.ts';
import { openSites } from './open-sites.ts';

const sites = openSites();
const releases = present(requireReleases('content').get('adult-screening'));
const [first, second] = [releases[0], present(releases[1])];

describe('the history of a form', () => {
  it('tells the differences between two versions in either direction', async () => {
    await sites.visit('sub', 'forms/adult-screening/history/', {}, async (page) => {
      const compare = async (from: string, to: string): Promise<string> => {
        await page.getByLabel('From').selectOption({ label: from });
        await page.getByLabel('to', { exact: true }).selectOption({ label: to });
        await page.getByRole('button', { name: 'Show what changed' }).click();
        const answer = page.locator('compare-versions .answer');
        await answer.getByText(from < to ? /^Minor/ : /^Major/).waitFor();
        return answer.innerText();
      };
      expect(await compare(first.version, second.version)).toMatch(/\(romberg\): added/);
      expect(await compare(second.version, first.version)).toMatch(/\(romberg\): removed/);
    });
  });

  it('is readable with scripts off', async () => {
    await sites.visit('root', 'forms/adult-screening/history/', { scripts: false }, async (page) => {
      const text = await page.locator('main').innerText();
      expect(text).toContain('With scripts off, read the changes of each version between the two');
      expect(text).toMatch(/\(romberg\): added/);
    });
  });
});

describe('a copy in hand', () => {
  it('is told by its code to be current, superseded or unknown, without a request', async () => {
    await sites.visit('root', 'forms/', {}, async (page) => {
      await page.context().setOffline(true);
      const check = async (code: string): Promise<string> => {
        await page.getByLabel('Code on the sheet').fill(code);
        await page.getByRole('button', { name: 'Check this copy' }).click();
        return page.locator('check-copy .answer').innerText();
      };
      const code = shortCode(second.hash).toUpperCase();
      expect(await check(`${code.slice(0, 4)} ${code.slice(4)}`)).toContain(
        `${second.version}, Current. It is the newest release.`,
      );
      expect(await check(shortCode(first.hash))).toContain(`${first.version}, Superseded. Use version `);
      expect(await check('00000000')).toContain('do not use it');
      expect(await check('12')).toContain('eight signs');
    });
  });
});
