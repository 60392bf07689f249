import { describe, expect, it } from 'vitest';
import { parse, type HTMLElement } from 'node-html-parser';
import type { PlanRequest } from '../../../schemas/plan.ts';
import { sheetHtml } from '../../../src/components/run-sheet-html.ts';
import { screenHtml, screensOf } from '../../../src/components/run-sheet-walk-html.ts';
import type { EntryNotes, NotesState, SheetWords } from '../../../src/components/run-sheet-words.ts';
import { requireLibrary } from '../../../src/library/load.ts';
import { blocksOf, coverAtEnd } from '../../../src/plan/blocks.ts';
import { inPageOrder } from '../../../src/plan/manoeuvres-of.ts';
import { planRequest } from '../../../src/plan/plan.ts';
import { present } from '../../fixtures/present.ts';

const library = requireLibrary('content');
const manoeuvres = new Map(inPageOrder(library).map((one) => [one.id, one]));
const notes: EntryNotes = {
  cautions: ['Mind the <em>hip</em>.'],
  now: [{ finding: 'Grey and sweating', action: 'Call for <em>help</em>.' }],
};

const wordsWith = (given: EntryNotes | undefined): SheetWords => ({
  vocabulary: library,
  entry: (id) => {
    const { title, sides, stages, sensitive } = present(manoeuvres.get(id));
    return { id, title, sides, stages: stages.length, sensitive, page: `/${id}/`, notes: given };
  },
  unwellPage: '/unwell/',
  alternatives: (id) => [`Do ${id} <em>otherwise</em>.`],
});

function sheetFor(request: PlanRequest, state: NotesState = 'there'): HTMLElement {
  const plan = planRequest(library, request);
  const view = { id: 'sheet', plan, blocks: blocksOf(plan), mustNotMiss: ['Rigid <abdomen>'], leavesOut: undefined };
  return parse(
    sheetHtml({ ...view, others: undefined, notes: state, level: 3 }, wordsWith(state === 'there' ? notes : undefined))
      .html,
  );
}

const textOf = (node: HTMLElement | null): string => present(node ?? undefined).text;

describe('a sheet', () => {
  const sheet = sheetFor({ manoeuvres: ['liver-edge', 'radial-pulse'], cannot: ['supine'] });

  it('opens with stopping and treating first', () => {
    expect(textOf(sheet.querySelector('section'))).toContain('Unwell? Stop and treat first.');
  });

  it('says what must not be missed, as words', () => {
    expect(textOf(sheet.querySelector('.must-not-miss li'))).toBe('Rigid <abdomen>.');
  });

  it('has cautions and what is urgent at the step', () => {
    expect(textOf(sheet.querySelector('.step .act-now'))).toContain('Grey and sweating → Call for help.');
    expect(sheet.querySelector('.step .small > em')?.text).toBe('hip');
  });

  it('refers at a later stage to the step whose caution and findings hold', () => {
    const staged = sheetFor({ manoeuvres: ['liver-edge', 'shifting-dullness'] });
    const later = staged.querySelectorAll('li.step').filter((step) => step.text.includes('stage 2 of'));
    expect(later.length).toBeGreaterThan(0);
    for (const step of later) {
      const first = present(step.querySelector('.step-body a[href^="#"]') ?? undefined).getAttribute('href') ?? '';
      expect(step.text).toContain(`Caution and findings as at ${first.split('-').at(-1)}.`);
      expect(textOf(staged.querySelector(first))).toMatch(/stage 1 of.*Mind the hip\./);
    }
  });

  it('lists what is left out with its reason and what may be done instead', () => {
    const left = sheet.querySelectorAll('section').find((part) => part.querySelector('h3')?.text === 'Left out');
    expect(textOf(left ?? null)).toMatch(
      /needs a position that this patient cannot take.*Adapted: Do liver-edge otherwise\./,
    );
  });

  it('names the side to be avoided where the other is done', () => {
    const right = sheetFor({ manoeuvres: ['knee-examination', 'kidneys', 'radial-pulse'], avoidSides: ['left'] });
    const facts = right.querySelectorAll('.step-head .note').map(({ text }) => text);
    expect(facts.some((text) => text.includes('right side only, not the left'))).toBe(true);
    expect(facts.filter((text) => text.includes('both sides'))).toEqual([]);
  });

  it.each([
    ['awaited', /are on their way/],
    ['failed', /could not be fetched: read each page/],
  ] as const)('says plainly when its cautions are %s', (state, said) => {
    const waiting = sheetFor({ manoeuvres: ['radial-pulse'] }, state);
    expect(textOf(waiting.querySelector('.notes-state'))).toMatch(said);
    expect(waiting.querySelector('.act-now')).toBeNull();
  });

  it('says when nothing is left', () => {
    const empty = sheetFor({ manoeuvres: ['liver-edge'], cannot: library.positions.map(({ id }) => id) });
    expect(textOf(empty.querySelector('p'))).toBe('Nothing is left that can be done.');
    expect(empty.text).toContain('Left out');
  });
});

describe('the screens of a walk', () => {
  const plan = planRequest(library, { form: 'adult-screening', start: 'sitting' });
  const screens = screensOf(blocksOf(plan), {
    layOut: plan.layOut,
    mustNotMiss: ['Rigid <abdomen>'],
    bare: coverAtEnd(plan),
    leftOut: [],
  });
  const words = { ...wordsWith(notes), tell: (id: string) => [`Words at ${id}.`], skipped: [] };

  it('are the opening, each change of position before its steps, each step once, the end', () => {
    expect(screens[0]?.kind).toBe('open');
    expect(screens.at(-1)?.kind).toBe('end');
    const steps = screens.flatMap((screen) => (screen.kind === 'step' ? [screen.placed.entry.step] : []));
    expect(steps).toEqual(plan.steps);
    screens.forEach((screen, i) => {
      const before = screens[i - 1];
      if (screen.kind === 'step' && before?.kind === 'step')
        expect(screen.placed.entry.step.position).toBe(before.placed.entry.step.position);
    });
  });

  it('tell before all what must not be missed, after what to do when the patient is unwell', () => {
    const { text } = parse(screenHtml(present(screens[0]), words).html);
    expect(text).toMatch(/^Unwell\? Stop and treat first\..*Must not be missed:Rigid <abdomen>\./);
  });

  it('repeat at a later stage what to mind', () => {
    const staged = planRequest(library, { manoeuvres: ['shifting-dullness'] });
    const all = screensOf(blocksOf(staged), { layOut: [], mustNotMiss: [], bare: [], leftOut: [] });
    const later = present(all.find((screen) => screen.kind === 'step' && screen.placed.entry.step.stage === 2));
    expect(parse(screenHtml(later, words).html).text).toMatch(/Mind the hip\..*Grey and sweating/);
  });

  it('say what is said, what is urgent and what to mind', () => {
    const step = present(screens.find(({ kind }) => kind === 'step'));
    const { text } = parse(screenHtml(step, words).html);
    expect(text).toMatch(/Words at unwell-first\..*Mind the hip\..*Grey and sweating/);
  });

  it('warn at a step whose cautions are not there', () => {
    const step = present(screens.find(({ kind }) => kind === 'step'));
    expect(screenHtml(step, { ...words, ...wordsWith(undefined) }).html).toContain('Cautions are not here');
  });

  it('list at the end what was skipped, each leading back to it', () => {
    const end = present(screens.at(-1));
    expect(screenHtml(end, words).html).toContain('No step of this sheet was skipped.');
    const listed = parse(screenHtml(end, { ...words, skipped: [{ number: 3, title: 'Feel' }] }).html);
    expect(listed.querySelector('[data-step="3"]')?.text).toBe('3. Feel');
  });
});
