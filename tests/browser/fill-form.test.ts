/** The form as it is filled in on screen, and the sheet by which a learner is watched. */
import { readFileSync } from 'node:fs';
import type { Dialog, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { buildForm } from '../../src/forms/form.ts';
import { fieldsOf } from '../../src/forms/form-slice.ts';
import { noteOf } from '../../src/forms/note.ts';
import { observationOf, watchedItems } from '../../src/forms/observation.ts';
import { readResponse } from '../../src/forms/response-answers.ts';
import { loadReleases } from '../../src/forms/releases/load.ts';
import { current } from '../../src/forms/releases/released-forms.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { bareText, pages } from '../fixtures/pdf-text.ts';
import { widgets } from '../fixtures/pdf-fields.ts';
import { present } from '../fixtures/present.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();
const id = 'short-visit';
const form = current(loadReleases('content').forms.get(id)) ?? buildForm(requireLibrary('content'), id);
const fields = fieldsOf(form);
const address = `forms/${id}/fill/`;

const ofKind = <K extends (typeof fields)[number]['kind']>(kind: K, side: 'none' | 'right' = 'none') =>
  present(fields.find((field) => field.kind === kind && field.side === side)) as Extract<
    (typeof fields)[number],
    { kind: K }
  >;
const finding = ofKind('finding');
const quantity = ofKind('quantity', 'right');

const note = (page: Page): Promise<string> => page.getByRole('textbox', { name: 'Note', exact: true }).inputValue();
const radio = (page: Page, name: string, value: string) => page.locator(`input[name="${name}"][value="${value}"]`);
const answeredCount = (page: Page): Promise<number> =>
  page.evaluate<number>(
    `[...document.querySelectorAll('form.answers :is(input, select, textarea)')]
      .filter((node) => node.type === 'radio' ? node.checked : node.value !== '').length`,
  );

/** An abnormal finding with a detail, a number out of range, and nothing else. */
async function fillSome(page: Page): Promise<void> {
  await radio(page, finding.linkId, 'A').check();
  await page.locator(`[name="${finding.detail}"]`).fill('Thin, sits bent forward.');
  await page.locator(`[name="${quantity.linkId}"]`).fill('99999');
  await page.keyboard.press('Tab');
}

/** Answers the next question of the page, and gives its kind and words. */
const nextQuestion = (page: Page, answer: 'accept' | 'dismiss'): Promise<Dialog> =>
  new Promise((resolve) => {
    page.once('dialog', (dialog) => void dialog[answer]().then(() => resolve(dialog)));
  });

describe.each(editionNames)('filling in a form, in the site built as %s', (edition) => {
  it('begins with nothing filled in and no note', async () => {
    await sites.visit(edition, address, {}, async (page) => {
      expect(await page.locator('form.answers input[type=radio]').count()).toBeGreaterThan(100);
      expect(await answeredCount(page)).toBe(0);
      expect(await note(page)).toBe('');
    });
  });

  it('has each field once, its sides in fixed places and its grades spelt out once a section', async () => {
    await sites.visit(edition, address, {}, async (page) => {
      const names = await page.evaluate<string[]>(
        `[...new Set([...document.querySelectorAll('form.answers [name]')].map(({ name }) => name))]`,
      );
      const own = (name: string): boolean => fields.some(({ linkId }) => linkId === name);
      expect(names.filter(own)).toEqual(fields.map(({ linkId }) => linkId));
      const sides = await page.locator('.sided .which').allInnerTexts();
      expect(sides).toEqual(sides.map((_, index) => (index % 2 === 0 ? 'Right' : 'Left')));
      const keys = await page.evaluate<string[]>(
        `[...document.querySelectorAll('.grades')].map((key) => key.closest('section').id + key.innerText)`,
      );
      expect(keys.length).toBeGreaterThan(0);
      expect(new Set(keys).size).toBe(keys.length);
    });
  });

  it('makes the note of what was marked, says that a number is out of range and takes it; sends nothing', async () => {
    await sites.visit(edition, address, {}, async (page) => {
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      await fillSome(page);
      const filled = new Map([
        [finding.linkId, 'A'],
        [finding.detail, 'Thin, sits bent forward.'],
        [quantity.linkId, '99999'],
      ]);
      expect(await note(page)).toBe(noteOf(form, filled));
      const fault = page.getByText(/^Outside .* what this form accepts/);
      expect(await fault.count()).toBe(1);
      expect(await page.locator(`[name="${quantity.linkId}"]`).getAttribute('aria-describedby')).toContain(
        await fault.getAttribute('id'),
      );
      await page.locator(`[name="${quantity.linkId}"]`).fill('1');
      await page.keyboard.press('Tab');
      expect(await fault.count()).toBe(0);
      await radio(page, finding.linkId, 'N').check();
      expect(await page.locator(`[name="${finding.detail}"]`).isVisible()).toBe(false);
      expect(await note(page)).not.toContain('bent forward');
      expect(asked).toEqual([]);
    });
  });

  it('copies the note', async () => {
    await sites.visit(edition, address, {}, async (page) => {
      await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
      await fillSome(page);
      await page.getByRole('button', { name: 'Copy the note' }).click();
      await page.getByText('The note is copied.').waitFor();
      expect(await page.evaluate('navigator.clipboard.readText()')).toBe(await note(page));
    });
  });

  it('gives the answers as a response that reads back to the same note', async () => {
    await sites.visit(edition, address, {}, async (page) => {
      await fillSome(page);
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Download the answers' }).click(),
      ]);
      expect(file.suggestedFilename()).toBe(`${id}.response.json`);
      const response: unknown = JSON.parse(readFileSync(await file.path(), 'utf8'));
      const { filled, faults } = readResponse(form, response);
      expect(faults).toEqual([]);
      expect(noteOf(form, filled)).toBe(await note(page));
      expect(response).not.toHaveProperty('subject');
      expect(await page.getByText('One number is out of range').count()).toBe(1);
    });
  });

  it('clears one item at once, and everything only after asking', async () => {
    await sites.visit(edition, address, {}, async (page) => {
      await fillSome(page);
      await page.locator(`.item:has([name="${finding.linkId}"]) .clear-item`).click();
      expect(await answeredCount(page)).toBe(1);
      const clear = page.getByRole('button', { name: 'Clear all answers' });
      const [refused] = await Promise.all([nextQuestion(page, 'dismiss'), clear.click()]);
      expect(refused.type()).toBe('confirm');
      expect(await answeredCount(page)).toBe(1);
      await Promise.all([nextQuestion(page, 'accept'), clear.click()]);
      expect(await answeredCount(page)).toBe(0);
      expect(await note(page)).toBe('');
      expect(await page.getByText(/^Outside .* what this form accepts/).count()).toBe(0);
    });
  });

  it('warns before answers are lost by leaving, and brings none back', async () => {
    await sites.visit(edition, address, {}, async (page) => {
      await fillSome(page);
      const stay = nextQuestion(page, 'dismiss');
      await page.close({ runBeforeUnload: true });
      expect((await stay).type()).toBe('beforeunload');
      expect(await answeredCount(page)).toBe(3);
      const leave = nextQuestion(page, 'accept');
      await page.goto(`${sites.url(edition)}forms/`);
      expect((await leave).type()).toBe('beforeunload');
      await page.goBack();
      expect(page.url()).toBe(sites.url(edition) + address);
      expect(await answeredCount(page)).toBe(0);
      expect(await note(page)).toBe('');
    });
  });
});

describe('a form to fill in', () => {
  it('can be filled in with scripts off, and shows no control that does nothing', async () => {
    await sites.visit('sub', address, { scripts: false }, async (page) => {
      await radio(page, finding.linkId, 'A').check();
      expect(await page.locator(`[name="${finding.detail}"]`).isVisible()).toBe(true);
      expect(await page.locator(`[name="${finding.reason}"]`).isVisible()).toBe(false);
      expect(await page.locator('button:visible').count()).toBe(0);
      await page.locator(`[name="${quantity.linkId}"]`).press('Enter');
      expect(page.url()).toBe(sites.url('sub') + address);
      expect(await page.getByText('The note and the download need scripts').isVisible()).toBe(true);
    });
  });

  it('is worked by keyboard: Tab to a group, arrows within it', async () => {
    await sites.visit('sub', address, {}, async (page) => {
      await radio(page, finding.linkId, 'N').focus();
      await page.keyboard.press('ArrowRight');
      expect(await radio(page, finding.linkId, 'A').isChecked()).toBe(true);
      await page.keyboard.press('Tab');
      expect(await page.evaluate('document.activeElement.name')).toBe(finding.detail);
    });
  });

  it('prints what was filled in, with lines for two identifiers on every sheet', async () => {
    await sites.visit('sub', address, {}, async (page) => {
      await fillSome(page);
      const sheets = (await pages(new Uint8Array(await page.pdf({ format: 'A4', preferCSSPageSize: true })))).map(
        bareText,
      );
      expect(sheets.join('')).toContain('Thin,sitsbentforward.');
      for (const sheet of sheets) expect(sheet).toMatch(/Name\.+Dateofbirth\.+Number\.+/);
    });
  });
});

describe('watching a learner', () => {
  const watch = `forms/${id}/watch/`;
  const items = watchedItems(observationOf(form));

  it('has each item of the form once, unmarked, and the judgement apart', async () => {
    await sites.visit('sub', watch, {}, async (page) => {
      const names = await page.evaluate<string[]>(
        `[...document.querySelectorAll('.watched [role=radiogroup]')].map((group) => group.querySelector('input').name)`,
      );
      expect(names).toEqual([...items.map(({ manoeuvre }) => manoeuvre), 'sheet-1.judgement']);
      expect(await page.locator('.watched input:checked').count()).toBe(0);
      expect(await page.locator('.watched .critical').count()).toBe(items.filter(({ critical }) => critical).length);
    });
  });

  it('counts item by item where two observers agree', async () => {
    await sites.visit('sub', watch, {}, async (page) => {
      const choices = page.locator('observer-agreement select');
      for (const [index, mark] of ['described', 'described', 'described', 'differs', 'not-seen'].entries())
        await choices.nth(index).selectOption(mark);
      const lines = await page.locator('.agreement li').allInnerTexts();
      expect(lines).toEqual([
        'Marked the same: 1 of the 2 items that both marked.',
        expect.stringMatching(/^2 .*: As described \/ Differs$/),
      ]);
    });
  });

  it('is offered as sheets that hold a mark for every item', async () => {
    await sites.visit('sub', watch, {}, async (page) => {
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('link', { name: 'Download the observation sheet, A4' }).click(),
      ]);
      const names = (await widgets(new Uint8Array(readFileSync(await file.path())))).map(({ fieldName }) => fieldName);
      for (const { manoeuvre } of items) {
        expect(names.filter((name) => name === `mark_${manoeuvre}`)).toHaveLength(3);
        expect(names).toContain(`how_${manoeuvre}`);
        expect(names).toContain(`prompted_${manoeuvre}`);
      }
    });
  });

  it('warns where a form holds more than 25 items', async () => {
    await sites.visit('sub', 'forms/adult-screening/watch/', {}, async (page) => {
      expect(await page.getByText('Too many for one sitting.').isVisible()).toBe(true);
      expect(await page.locator('.sheet-head').count()).toBeGreaterThan(3);
    });
    await sites.visit('sub', watch, {}, async (page) => {
      expect(await page.getByText('Too many for one sitting.').count()).toBe(0);
    });
  });

  it('and filling in are reached from the page of the form', async () => {
    await sites.visit('sub', `forms/${id}/`, {}, async (page) => {
      await page.getByRole('link', { name: 'Watch a learner' }).click();
      await page.waitForURL(sites.url('sub') + watch);
      await page.goBack();
      await page.getByRole('link', { name: 'Fill it in on screen' }).click();
      await page.waitForURL(sites.url('sub') + address);
    });
  });
});
