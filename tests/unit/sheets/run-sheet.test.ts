import { describe, expect, it } from 'vitest';
import { positionMarkSvg } from '../../../src/figures/position-mark.ts';
import { examinerMoves } from '../../../src/sheets/blocks.ts';
import { runSheet } from '../../../src/sheets/sheet.ts';
import { minuteOf, minutesWords } from '../../../src/sheets/words.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';
import { present } from '../../fixtures/present.ts';
import { libraryWith } from '../cards/library-with.ts';

const sheet = runSheet(fixtureLibrary, 'whole');
const steps = sheet.blocks.flatMap((block) => block.steps);
const step = (number: number) => present(steps[number - 1]);

describe('the run sheet of an examination', () => {
  it('numbers the steps through its blocks', () => {
    expect(sheet.blocks.map(({ position }) => position)).toEqual(['Sitting', 'Standing']);
    expect(steps.map(({ number, id }) => `${number} ${id}`)).toEqual([
      '1 wash-hands',
      '2 wrist-look',
      '3 wrist-bend',
      '4 wrist-bend',
      '5 finish-and-explain',
    ]);
  });

  it('says of a block when it begins, how the patient gets there, and shows its mark', () => {
    const [first, second] = sheet.blocks;
    expect(first).toMatchObject({
      when: 'Begin here, for 1 minute',
      say: 'Please sit here.',
      help: 'Keep a hand near.',
    });
    expect(first).not.toHaveProperty('move');
    expect(second).toMatchObject({ when: 'After 50\u202fs, for 1 minute', move: '6\u202fs' });
    expect(second?.mark).toBe(positionMarkSvg('standing'));
  });

  it('gives time, sides, stage, instruments and the place to move to', () => {
    expect(step(3)).toMatchObject({ facts: ['20\u202fs', 'both sides', 'stage 1 of 2'], instruments: 'goniometer' });
    expect(step(2)).toMatchObject({ stand: 'in front', uncover: ['hands'] });
    expect(step(3)).not.toHaveProperty('stand');
    expect(step(5).cover).toBe('hands');
  });

  it('has only findings that cannot wait, with what to do, and refers a later stage to its first', () => {
    expect(step(2).now).toEqual([
      { finding: [{ text: 'A pale cold hand' }], action: [{ text: 'Loosen anything tight and call for help.' }] },
    ]);
    expect(step(2).caution).toEqual([{ text: 'Do not lift a broken arm.' }]);
    expect(step(4)).toMatchObject({ now: [], asAt: 3 });
    expect(step(4)).not.toHaveProperty('caution');
  });

  it('lists each uncovered region once, with how far and what stays covered', () => {
    expect(sheet.uncovering).toEqual([
      { region: 'Hands', how: 'Sleeves up to the elbow.', keep: 'Nothing else is uncovered.' },
    ]);
  });

  it('draws time to scale: shares of the whole', () => {
    // 50 s seated, 6 s to stand, 50 s standing; the hands are bare from 20 s to 76 s.
    const [sitting, standing, hands] = sheet.strip.lines;
    expect(sitting?.spans).toEqual([[0, 0.4717]]);
    expect(standing?.spans).toEqual([[0.5283, 1]]);
    expect(hands?.spans).toEqual([[0.1887, 0.717]]);
    expect(sheet.strip.alt).toContain('uncovered: hands from 20\u202fs to 1\u202fmin 16\u202fs');
  });

  it('tells what a sensitive examination asks for first', () => {
    const sensitive = libraryWith([{ ...fixtureManoeuvre('wrist-look'), sensitive: true }]);
    const found = runSheet(sensitive, 'whole').blocks.flatMap((block) => block.steps);
    expect(found.find(({ id }) => id === 'wrist-look')?.sensitive).toMatch(/consent.*chaperone.*stop/);
  });

  it('has no such form: says so', () => {
    expect(() => runSheet(fixtureLibrary, 'none')).toThrow('No entry has the id "none"');
  });
});

describe('the code', () => {
  const cautious = libraryWith([
    { ...fixtureManoeuvre('wrist-look'), cautions: [[{ type: 'text', text: 'Slowly.' }]] },
  ]);

  it('stays the same from one version of the library to the next as long as the sheet says the same', () => {
    const next = runSheet({ ...fixtureLibrary, version: '9.9.9', hash: 'f'.repeat(64) }, 'whole');
    expect(next.code).toBe(sheet.code);
    expect(next.edition).toBe('whole 0.1.0, library 9.9.9');
  });

  it('changes with a word', () => {
    expect(runSheet(cautious, 'whole').code).not.toBe(sheet.code);
  });
});

describe('words of a sheet', () => {
  it('names a place only when the examiner has to go there', () => {
    const places = ['anywhere', 'right', 'anywhere', 'right', 'behind'].map((examiner) => ({ examiner }));
    expect(examinerMoves(places)).toEqual([undefined, 'right', undefined, undefined, 'behind']);
  });

  it('counts minutes that have gone by, and never says none for a while', () => {
    expect([minuteOf(59), minuteOf(60), minuteOf(754.6)]).toEqual(['0\u202fmin', '1\u202fmin', '12\u202fmin']);
    expect([minutesWords(5), minutesWords(89), minutesWords(150)]).toEqual(['1 minute', '1 minute', '3 minutes']);
  });
});
