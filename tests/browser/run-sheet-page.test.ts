/** The page that makes run sheets as one chooses, and the walk through a sheet, in a real browser. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { PlanRequest } from '../../schemas/plan.ts';
import { fullRequest } from '../../src/client/plan-request.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { planRequest } from '../../src/plan/plan.ts';
import { editions } from '../site.ts';
import { editionNames, openSites, type Manner } from './open-sites.ts';

const sites = openSites();
const library = requireLibrary('content');

/** Opens the page with what stands behind `#`, once its cautions and the orders to compare with are there. */
const onPage = <T>(hash: string, see: (page: Page) => Promise<T>, manner: Manner = {}): Promise<T> =>
  sites.visit('sub', `plan/${hash}`, manner, async (page) => {
    await complete(page);
    return see(page);
  });

const complete = async (page: Page): Promise<void> => {
  await page.locator('.made .comparison table').waitFor();
  await page.locator('.made .step-body', { hasText: 'Caution.' }).first().waitFor();
};

/** Manoeuvres of the steps shown, in order. */
const shown = (page: Page): Promise<string[]> =>
  page
    .locator('.made .what a')
    .evaluateAll<string[], Element>((links) => links.map((link) => link.getAttribute('href')?.split('/').at(-2) ?? ''));

const planned = (request: PlanRequest): string[] =>
  planRequest(library, fullRequest(library, request)).steps.map(({ manoeuvre }) => manoeuvre);

const said = (page: Page): Promise<string> => page.locator('.said').innerText();
const behind = (page: Page): Promise<string> => page.evaluate<string>('location.hash');

/** Asks again until it is so: a busy machine may take its time. */
const soon = <T>(see: () => T): ReturnType<typeof expect.poll<T>> => expect.poll(see, { timeout: 20_000 });

/** Opens what is folded up, and ticks a box. */
async function tick(page: Page, name: string, value: string): Promise<void> {
  const box = page.locator(`.chooser input[name=${name}][value="${value}"]`);
  await box.evaluate((node) => node.closest('details')?.setAttribute('open', ''));
  await box.check();
}

describe.each(editionNames)('the page of run sheets built as %s', (edition) => {
  it.each(edition === 'root' ? ['abdominal-pain'] : ['adult-screening'])(
    'shows for %s what its own page shows',
    async (form) => {
      const parts = (page: Page, root: string): Promise<string[]> =>
        page.locator(`${root} > section:not(.not-on-paper)`).allInnerTexts();
      const foot = (page: Page): Promise<string> => page.evaluate('document.documentElement.dataset.edition');
      const [own, ownFoot] = await sites.visit(edition, `plan/${form}/`, {}, async (page) => [
        await parts(page, 'article.sheet'),
        await foot(page),
      ]);
      expect(own.length).toBeGreaterThan(5);
      expect(ownFoot).toMatch(new RegExp(`Run sheet: .* · ${form} \\d+\\.\\d+\\.\\d+ · code [0-9a-f]{8}$`));
      await sites.visit(edition, 'plan/', {}, async (page) => {
        await complete(page);
        await page.locator('select[name=form]').selectOption(form);
        await complete(page);
        expect(await parts(page, '.parts')).toEqual(own);
        await soon(() => foot(page)).toBe(ownFoot);
      });
    },
  );

  it('leads to the pages of its manoeuvres', async () => {
    await sites.visit(edition, 'plan/#manoeuvres=radial-pulse', {}, async (page) => {
      const link = page.locator('.made .what a', { hasText: /pulse/i });
      expect(await link.getAttribute('href')).toMatch(new RegExp(`^${editions[edition]}protocols/.*/radial-pulse/$`));
      await link.click();
      expect(await page.locator('h1').innerText()).not.toBe('');
    });
  });
});

describe('choosing', () => {
  it('orders as the planner does, and says what is left out, why, and what may be done instead', async () => {
    await onPage('', async (page) => {
      await page.locator('select[name=form]').selectOption('adult-screening');
      await tick(page, 'cannot', 'standing');
      await tick(page, 'avoidSides', 'left');
      await page.locator('[name=start]').selectOption('chair');
      const request: PlanRequest = {
        form: 'adult-screening',
        start: 'chair',
        cannot: ['standing'],
        avoidSides: ['left'],
      };
      await soon(() => shown(page)).toEqual(planned(request));
      const { leftOut } = planRequest(library, request);
      expect(leftOut.length).toBeGreaterThan(0);
      await soon(() => said(page)).toContain(`${leftOut.length} left out`);
      const list = page.locator('.parts section', { has: page.locator('h3', { hasText: /^Left out$/ }) });
      expect(await list.locator('li').count()).toBe(leftOut.length);
      expect(await list.innerText()).toContain('needs a position that this patient cannot take: Standing');
      await list.getByText('Adapted:').first().waitFor();
    });
  });

  it('takes systems, and manoeuvres found by a name that the title does not hold', async () => {
    await onPage('', async (page) => {
      await page.locator('[name=kind][value=systems]').check();
      await soon(() => said(page)).toBe('Tick what is to be examined.');
      await tick(page, 'systems', 'neck');
      await soon(() => shown(page)).toEqual(planned({ systems: ['neck'] }));
      await page.locator('[name=kind][value=manoeuvres]').check();
      await page.locator('.filter').fill('jvp');
      const found = page.locator('[data-of=manoeuvres] label:visible');
      await soon(() => found.count()).toBeLessThan(6);
      await found.locator('[value=jugular-venous-pressure]').check();
      await soon(() => shown(page)).toEqual(planned({ manoeuvres: ['jugular-venous-pressure'] }));
    });
  });

  it('fits into the minutes there are', async () => {
    await onPage('#form=adult-screening', async (page) => {
      await page.locator('[name=minutes]').fill('25');
      await soon(() => shown(page)).toEqual(planned({ form: 'adult-screening', minutes: 25 }));
      expect(await page.locator('.parts').innerText()).toContain('does not fit in 25 minutes');
    });
  });

  it('offers the other steps of the sheet to be left for last', async () => {
    await onPage('#form=short-visit', async (page) => {
      await tick(page, 'last', 'general-impression');
      await soon(() => shown(page)).toEqual(planned({ form: 'short-visit', last: ['general-impression'] }));
    });
  });
});

describe('the address', () => {
  it('holds nothing until asked, then the request without what it tells of the patient', async () => {
    await onPage('', async (page) => {
      await page.locator('select[name=form]').selectOption('heart-and-lungs');
      await page.locator('[name=minutes]').fill('40');
      await page.locator('[name=start]').selectOption('chair');
      await tick(page, 'without', 'tuning-fork-128');
      await tick(page, 'cannot', 'prone');
      await page.locator('[name=pace]').fill('2');
      expect(await behind(page)).toBe('');
      await page.locator('.copy').click();
      await soon(() => behind(page)).toBe('#form=heart-and-lungs&minutes=40');
      await soon(() => said(page)).toContain('“This patient, this room” is not in it');
      await page.locator('.limits').check();
      await page.locator('.copy').click();
      await soon(() => behind(page)).toBe(
        '#form=heart-and-lungs&start=chair&minutes=40&without=tuning-fork-128&cannot=prone&pace=2',
      );
      await page.locator('.clear').click();
      expect(await behind(page)).toBe('');
      expect(await page.locator('[name=pace]').inputValue()).toBe('');
    });
  });

  it('brings the request back, and is cleared as soon as something else is chosen', async () => {
    await onPage('#systems=neck.heart&cannot=standing&pace=1.5&last=radial-pulse&avoidSides=right', async (page) => {
      const request: PlanRequest = { systems: ['neck', 'heart'], cannot: ['standing'], last: ['radial-pulse'] };
      await soon(() => shown(page)).toEqual(planned({ ...request, pace: 1.5, avoidSides: ['right'] }));
      expect(await page.locator('.asked').innerText()).toContain('Cannot be: Standing.');
      await page.locator('[name=minutes]').fill('60');
      expect(await behind(page)).toBe('');
    });
  });

  it.each(['#form=adult-scre', '#form=adult-screening&cannot=flying', '#form=%E0%A4%A'])(
    'when it is damaged is told so once, with a sheet that can be used: %s',
    async (hash) => {
      await onPage(hash, async (page) => {
        await soon(() => said(page)).toMatch(
          hash.includes('=') ? /^This link is damaged, .* is shown instead\.$/ : /minutes/,
        );
        expect((await shown(page)).length).toBeGreaterThan(5);
      });
    },
  );
});

describe('what cannot be fetched', () => {
  it('is told at the head of the sheet when it is the cautions', async () => {
    const warned = sites.visit('root', '', {}, async (page) => {
      await page.route('**/notes.json', (route) => route.abort());
      await page.goto(`${sites.url('root')}plan/`);
      await page.getByText('could not be fetched: read each page').waitFor();
      return page.locator('.made li.step').count();
    });
    // The refused request is an error of the console, which the visit reports; nothing else may be amiss.
    await expect(warned).rejects.toThrow(/^Amiss at \/:\nconsole: Failed to load resource: net::ERR_FAILED$/);
  });
});

/** Notes what is asked of the screen, in place of a browser that has none to keep awake. */
const screen = `window.kept = [];
Object.defineProperty(navigator, 'wakeLock', { value: { request: (kind) => {
  kept.push('asked: ' + kind);
  return Promise.resolve({ release: () => { kept.push('released'); return Promise.resolve(); } });
} } });`;

describe('step by step', () => {
  const heading = (page: Page): Promise<string> => page.locator('.walk h2').innerText();

  it('goes on and back by keys and taps, keeps the screen awake, lists what was skipped, and leaves by Escape', async () => {
    await onPage('#manoeuvres=radial-pulse.liver-edge', async (page) => {
      await page.evaluate(screen);
      await page.locator('.walk-through').click();
      expect(await heading(page)).toBe('Unwell? Stop and treat first.');
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Space');
      const first = await heading(page);
      expect(first).toBe('Check first whether the patient is unstable');
      await page.keyboard.press('s');
      await page.keyboard.press('ArrowLeft');
      expect(await heading(page)).toBe(first);
      expect(await page.locator('.mark-of-step').innerText()).toBe('Marked as skipped.');
      await page.locator('.walk .skip-step').click();
      const steps = planned({ manoeuvres: ['radial-pulse', 'liver-edge'] });
      for (let i = 0; i < 2 * steps.length && (await heading(page)) !== 'The end of the sheet'; i++)
        await page.locator('.walk .next').click();
      expect(await page.locator('.walk .skipped li').allInnerTexts()).toEqual([`1. ${first}`]);
      await page.keyboard.press('ArrowRight');
      await page.locator('.walk .skipped button').click();
      expect(await heading(page)).toBe(first);
      await page.keyboard.press('Escape');
      await soon(() => page.locator('.walk').isVisible()).toBe(false);
      await soon(() => page.evaluate('kept')).toEqual(['asked: screen', 'released']);
      await page.locator('.walk-through').click();
      expect(await heading(page)).toBe(first);
    });
  });

  it('shows every step once in the order of the sheet, with what is said and what to mind', async () => {
    await onPage('#form=short-visit', async (page) => {
      const titles = await page.locator('.made .what a').allInnerTexts();
      await page.locator('.walk-through').click();
      const seen: string[] = [];
      while ((await heading(page)) !== 'The end of the sheet') {
        if (await page.locator('.walk .skip-step').isVisible()) {
          seen.push(await heading(page));
          expect(await page.locator('.walk .screen').innerText()).toContain('Caution.');
          await page.locator('.walk .spoken-line').waitFor();
        }
        await page.keyboard.press('ArrowRight');
      }
      expect(seen).toEqual(titles);
    });
  });

  it('tells the time, and hides it', async () => {
    await onPage('', async (page) => {
      await page.locator('.walk-through').click();
      expect(await page.locator('.walk time').innerText()).toMatch(/^0:0\d$/);
      await page.locator('.show-time').click();
      expect(await page.locator('.walk time').isVisible()).toBe(false);
    });
  });

  it.each([false, true])('fits 320 px and passes axe, sheet and screen (dark: %s)', async (dark) => {
    const faults = async (page: Page): Promise<unknown[]> => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      return violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
    };
    await onPage(
      '#form=short-visit&cannot=standing',
      async (page) => {
        expect(await faults(page)).toEqual([]);
        await page.locator('.walk-through').click();
        for (const key of ['ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight']) {
          expect(await page.locator('.walk').evaluate<number, Element>((node) => node.scrollWidth)).toBeLessThanOrEqual(
            320,
          );
          await page.keyboard.press(key);
        }
        expect(await faults(page)).toEqual([]);
      },
      { width: 320, dark },
    );
  });
});

it('prints any sheet whole, without what it is chosen with', async () => {
  await onPage('#manoeuvres=radial-pulse', async (page) => {
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.chooser, .said, print-sheet, nav.choose').filter({ visible: true }).count()).toBe(0);
    expect(await page.locator('.unwell').isVisible()).toBe(true);
    expect(await page.locator('.made .step-body p').last().isVisible()).toBe(true);
  });
});
