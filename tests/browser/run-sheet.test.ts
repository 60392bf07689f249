/** The page of run sheets says what the planner's command says, first things first, and each of its links leads on. */
import { spawnSync } from 'node:child_process';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../schemas/plan.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { stockRequest } from '../../src/plan/stock-request.ts';
import { editions } from '../site.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();
const library = requireLibrary('content');
const systemOf = new Map(library.protocols.flatMap(({ id, manoeuvres }) => manoeuvres.map((one) => [one.id, id])));
const labelOf = (entries: readonly { id: string; label: string }[], id: string): string =>
  entries.find((entry) => entry.id === id)?.label ?? `no label for ${id}`;

/** What the command prints for a stock examination. */
function planned(form: (typeof library.forms)[number]): Plan {
  const run = spawnSync(process.execPath, ['src/cli/plan.ts', '-'], {
    input: JSON.stringify(stockRequest(form)),
    encoding: 'utf8',
  });
  expect(run.stderr).toBe('');
  return JSON.parse(run.stdout) as Plan;
}

const exams = library.forms.map((form) => ({ form, plan: planned(form) }));

/** Words of every place, spaces made one. */
const wordsOf = async (places: Locator): Promise<string[]> =>
  (await places.allInnerTexts()).map((words) => words.replaceAll(/\s+/g, ' ').trim());

const hrefsOf = (places: Locator): Promise<string[]> =>
  places.evaluateAll<string[], Element>((links) => links.map((link) => link.getAttribute('href') ?? ''));

/** Items without those that repeat the one before. */
const runs = (items: readonly string[]): string[] => items.filter((item, i) => item !== items[i - 1]);

describe.each(editionNames)('in the site built as %s', (edition) => {
  const onSheet = (id: string, see: (sheet: Locator, page: Page) => Promise<void>): Promise<void> =>
    sites.visit(edition, `plan/#${id}`, {}, (page) => see(page.locator(`article.sheet[id="${id}"]`), page));

  it('there is a sheet for every stock examination; the one that is chosen shows alone, scripts or not', async () => {
    await sites.visit(edition, 'plan/', { scripts: false }, async (page) => {
      const all = page.locator('article.sheet');
      const idsOf = (sheets: Locator): Promise<string[]> => sheets.evaluateAll((nodes) => nodes.map(({ id }) => id));
      const ids = await idsOf(all);
      expect(ids.toSorted()).toEqual(library.forms.map(({ id }) => id).toSorted());
      expect(await idsOf(page.locator('article.sheet:visible'))).toEqual(ids.slice(0, 1));
      const choices = page.locator('nav.choose a');
      expect(await hrefsOf(choices)).toEqual(ids.map((id) => `#${id}`));
      for (const [i, id] of ids.entries()) {
        await choices.nth(i).click();
        await expect.poll(() => idsOf(page.locator('article.sheet:visible'))).toEqual([id]);
      }
    });
  });

  // The editions have the same pages (same-bytes.test.ts): every examination in one of them is enough.
  describe.each(edition === 'sub' ? exams : exams.slice(0, 1))('the sheet of $form.id', ({ form, plan }) => {
    it('opens with stopping and treating first', async () => {
      await onSheet(form.id, async (sheet) => {
        const first = sheet.locator('section').first();
        expect(await first.innerText()).toMatch(/Unwell\? Stop and treat first\./);
        expect(await hrefsOf(first.locator('a'))).toEqual([`${editions[edition]}protocols/preparation/unwell-first/`]);
      });
    });

    it('has the blocks and steps of the command, in its order, each leading to its manoeuvre', async () => {
      await onSheet(form.id, async (sheet) => {
        const positions = runs(plan.steps.map(({ position }) => labelOf(library.positions, position)));
        const heads = await wordsOf(sheet.locator('section.block > h3'));
        expect(heads.length).toBe(positions.length);
        heads.forEach((head, i) => expect(head).toMatch(new RegExp(`^${positions[i] ?? ''} `)));
        expect(await hrefsOf(sheet.locator('li.step .what a'))).toEqual(
          plan.steps.map(
            ({ manoeuvre }) => `${editions[edition]}protocols/${systemOf.get(manoeuvre) ?? ''}/${manoeuvre}/`,
          ),
        );
        expect(await wordsOf(sheet.locator('li.step .number'))).toEqual(plan.steps.map((_, i) => String(i + 1)));
      });
    });

    it('lists the steps of each block in the block of that position', async () => {
      await onSheet(form.id, async (sheet) => {
        const counts: number[] = [];
        for (const block of await sheet.locator('section.block').all())
          counts.push(await block.locator('li.step').count());
        const starts = plan.steps.flatMap(({ position }, i) => (position === plan.steps[i - 1]?.position ? [] : [i]));
        expect(counts).toEqual(starts.map((start, b) => (starts[b + 1] ?? plan.steps.length) - start));
      });
    });

    it('says what to lay out: the instruments of the command, each once', async () => {
      await onSheet(form.id, async (sheet) => {
        const laid = (await wordsOf(sheet.locator('.lay-out dt'))).map((words) => words.replace(', single use', ''));
        expect(plan.layOut.length).toBeGreaterThan(0);
        expect(laid.toSorted()).toEqual(plan.layOut.map((id) => labelOf(library.instruments, id)).toSorted());
      });
    });

    it('says how long it takes and how often the patient moves', async () => {
      await onSheet(form.id, async (sheet) => {
        const [sum = ''] = await wordsOf(sheet.locator('.in-all p').first());
        const changes = plan.totals.positionChanges;
        expect(sum).toContain(`${Math.round(plan.totals.seconds / 60)} minutes`);
        expect(sum).toContain(`${changes} change${changes === 1 ? '' : 's'} of position`);
      });
    });

    it('has its cautions and what is urgent in sight, at the step', async () => {
      await onSheet(form.id, async (sheet) => {
        for (const [i, { manoeuvre, stage }] of plan.steps.entries()) {
          if (stage > 1) continue;
          const { cautions, redFlags } = manoeuvreOf(manoeuvre);
          const step = sheet.locator('li.step').nth(i);
          expect(await step.getByText('Caution.').isVisible(), manoeuvre).toBe(cautions.length > 0);
          const urgent = redFlags.some(({ urgency }) => urgency === 'now');
          expect(await step.locator('.act-now').isVisible(), manoeuvre).toBe(urgent);
        }
      });
    });

    it('leads from its list to the step, and from the step to the page and its red flags', async () => {
      await onSheet(form.id, async (sheet, page) => {
        const entries = sheet.locator('.in-order a');
        expect(await entries.count()).toBe(plan.steps.length);
        await entries.last().click();
        const step = sheet.locator(`li.step[id="${form.id}-step-${plan.steps.length}"]`);
        await expect.poll(() => step.evaluate<boolean, Element>((node) => node.matches(':target'))).toBe(true);
        const urgent = sheet.locator('.act-now a').first();
        const href = await urgent.evaluate<string, Element>((link) => link.getAttribute('href') ?? '');
        await urgent.click();
        await page.waitForURL(new URL(href, sites.url(edition)).href);
        expect(await page.locator('#red-flags').isVisible()).toBe(true);
      });
    });
  });
});

function manoeuvreOf(id: string) {
  const found = library.protocols.flatMap(({ manoeuvres }) => manoeuvres).find((one) => one.id === id);
  if (found === undefined) throw new Error(`There is no manoeuvre "${id}".`);
  return found;
}
