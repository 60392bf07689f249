/** The page of each stock sheet says what the planner's command says, first things first, and its links lead on. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, type HTMLElement } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import type { Line } from '../../schemas/inline.ts';
import type { Plan } from '../../schemas/plan.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { inPageOrder } from '../../src/plan/manoeuvres-of.ts';
import { stockRequest } from '../../src/plan/stock-request.ts';
import { present } from '../fixtures/present.ts';
import { plainText } from '../../src/text/plain.ts';
import { editions, siteFolder, type Edition } from '../site.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();
const library = requireLibrary('content');
const manoeuvres = new Map(inPageOrder(library).map((one) => [one.id, one]));
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

const built = (edition: Edition, path: string): HTMLElement =>
  parse(readFileSync(join(siteFolder(edition), path, 'index.html'), 'utf8'));

/** Words of an element, spaces made one. */
const wordsOf = (node: HTMLElement | null | undefined): string =>
  present(node ?? undefined)
    .text.replaceAll(/\s+/g, ' ')
    .trim();

const hrefsOf = (nodes: readonly HTMLElement[]): string[] => nodes.map((node) => node.getAttribute('href') ?? '');

/** A line of prose as it is read. */
const plain = (line: Line): string => plainText(line, library).replaceAll(/\s+/g, ' ').trim();

/** Items without those that repeat the one before. */
const runs = (items: readonly string[]): string[] => items.filter((item, i) => item !== items[i - 1]);

describe.each(editionNames)('in the site built as %s', (edition) => {
  const base = editions[edition];

  it('the page of run sheets leads, scripts or not, to the sheet of every stock examination', async () => {
    await sites.visit(edition, 'plan/', { scripts: false }, async (page) => {
      const links = page.locator('nav.choose a');
      const hrefs = await links.evaluateAll<string[], Element>((nodes) =>
        nodes.map((node) => node.getAttribute('href') ?? ''),
      );
      expect(hrefs.toSorted()).toEqual(library.forms.map(({ id }) => `${base}plan/${id}/`).toSorted());
      expect(await page.locator('form:visible').count()).toBe(0);
      expect(await page.locator('noscript p').isVisible()).toBe(true);
      await links.first().click();
      await page.waitForURL(new URL(hrefs[0] ?? '', sites.url(edition)).href);
      expect(await page.locator('li.step').first().isVisible()).toBe(true);
    });
  });

  describe.each(exams)('the sheet of $form.id', ({ form, plan }) => {
    const sheet = (): HTMLElement =>
      present(built(edition, `plan/${form.id}`).querySelector('article.sheet') ?? undefined);

    it('opens with stopping and treating first, then with what must not be missed', () => {
      const [first, second] = sheet().querySelectorAll('section.alarm');
      expect(wordsOf(first)).toMatch(/Unwell\? Stop and treat first\./);
      expect(hrefsOf(first?.querySelectorAll('a') ?? [])).toEqual([`${base}protocols/preparation/unwell-first/`]);
      expect(second?.querySelectorAll('li').map(wordsOf) ?? []).toEqual(form.mustNotMiss.map((sign) => `${sign}.`));
    });

    it('has the blocks and steps of the command, in its order, each leading to its manoeuvre', () => {
      const blocks = sheet().querySelectorAll('section.block');
      const positions = runs(plan.steps.map(({ position }) => labelOf(library.positions, position)));
      expect(blocks.length).toBe(positions.length);
      blocks.forEach((block, i) =>
        expect(wordsOf(block.querySelector('h2'))).toMatch(new RegExp(`^${positions[i] ?? ''} `)),
      );
      expect(hrefsOf(sheet().querySelectorAll('li.step .what a'))).toEqual(
        plan.steps.map(({ manoeuvre }) => `${base}protocols/${manoeuvres.get(manoeuvre)?.system ?? ''}/${manoeuvre}/`),
      );
      expect(sheet().querySelectorAll('li.step .number').map(wordsOf)).toEqual(plan.steps.map((_, i) => `${i + 1}`));
      const starts = plan.steps.flatMap(({ position }, i) => (position === plan.steps[i - 1]?.position ? [] : [i]));
      expect(blocks.map((block) => block.querySelectorAll('li.step').length)).toEqual(
        starts.map((start, b) => (starts[b + 1] ?? plan.steps.length) - start),
      );
    });

    it('says what to lay out, how long it takes, how often the patient moves, and how other orders compare', () => {
      const laid = sheet()
        .querySelectorAll('.lay-out dt')
        .map((node) => wordsOf(node).replace(', single use', ''));
      expect(plan.layOut.length).toBeGreaterThan(0);
      expect(laid.toSorted()).toEqual(plan.layOut.map((id) => labelOf(library.instruments, id)).toSorted());
      const changes = plan.totals.positionChanges;
      const sum = wordsOf(sheet().querySelector('.in-all p'));
      expect(sum).toContain(`${Math.round(plan.totals.seconds / 60)} minutes`);
      expect(sum).toContain(changes === 0 ? 'no change' : `${changes} change${changes === 1 ? '' : 's'} of position`);
      const rows = sheet().querySelectorAll('.comparison tbody tr');
      expect(rows.map((row) => wordsOf(row.querySelector('th')))).toEqual([
        'This sheet',
        'Head to toe',
        'System by system',
      ]);
      expect(wordsOf(rows[0]?.querySelector('td'))).toBe(String(changes));
    });

    it('draws time to scale', () => {
      const bars = sheet().querySelectorAll('.time-strip .position .bar');
      const moving = 100 * (plan.totals.positionSeconds / plan.totals.seconds);
      const widths = bars.map((bar) => Number.parseFloat(bar.getAttribute('width') ?? ''));
      expect(widths.reduce((sum, width) => sum + width, moving)).toBeCloseTo(100, 0);
    });

    it('has its cautions and what is urgent at the step', () => {
      const steps = sheet().querySelectorAll('li.step');
      plan.steps.forEach(({ manoeuvre, stage }, i) => {
        if (stage > 1) return;
        const { cautions, redFlags } = present(manoeuvres.get(manoeuvre));
        const step = present(steps[i]);
        expect(wordsOf(step).includes('Caution.'), manoeuvre).toBe(cautions.length > 0);
        const urgent = redFlags.filter(({ urgency }) => urgency === 'now');
        expect(step.querySelectorAll('.act-now li').map(wordsOf), manoeuvre).toEqual(
          urgent.map(({ finding, action }) => `${plain(finding).replace(/\.$/, '')} → ${plain(action)}`),
        );
      });
    });

    it('leads from its list to each step', () => {
      const anchors = hrefsOf(sheet().querySelectorAll('.in-order a'));
      expect(anchors).toEqual(plan.steps.map((_, i) => `#${form.id}-step-${i + 1}`));
      expect(anchors.filter((anchor) => sheet().querySelector(anchor) === null)).toEqual([]);
    });
  });
});

it('shows cautions, what is urgent and what to do without a tap, and leads to the whole', async () => {
  await sites.visit('sub', 'plan/adult-screening/', { width: 390 }, async (page) => {
    const hidden =
      '[...document.querySelectorAll(".step-body :is(p, li)")].filter((node) => !node.checkVisibility()).length';
    expect(await page.evaluate(hidden)).toBe(0);
    await page.locator('.what a').first().click();
    expect(await page.locator('#red-flags').isVisible()).toBe(true);
  });
});

it('prints the order alone in large type, and then the whole again', async () => {
  await sites.visit('root', 'plan/adult-screening/', {}, async (page) => {
    // As a browser does: the dialog is open while `print` runs; what is shown then is what is printed.
    await page.evaluate(`window.print = () => {}`);
    await page.locator('print-sheet .large').click();
    await page.emulateMedia({ media: 'print' });
    const size = await page
      .locator('.in-order li')
      .first()
      .evaluate<number, Element>((node) => Number.parseFloat(getComputedStyle(node).fontSize));
    expect(size).toBeGreaterThan(20);
    expect(await page.locator('.unwell').isVisible()).toBe(true);
    expect(await page.locator('li.step').first().isVisible()).toBe(false);
    await page.evaluate(`dispatchEvent(new Event('afterprint'))`);
    expect(await page.locator('li.step').first().isVisible()).toBe(true);
  });
});
