import { describe, expect, it } from 'vitest';
import { library as librarySchema } from '../../../schemas/library.ts';
import { loadLibrary } from '../../../src/library/load.ts';
import { deriveOrders, findCycle } from '../../../src/library/orders.ts';
import { copyContent } from '../../fixtures/content-copy.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';

describe('the linked library', () => {
  it('fits its own schema', () => {
    expect(librarySchema.safeParse(fixtureLibrary).error?.issues ?? []).toEqual([]);
  });

  it('is frozen to the last line', () => {
    expect(Object.isFrozen(fixtureManoeuvre('wrist-bend').technique[0]?.[0])).toBe(true);
    expect(() => void (fixtureManoeuvre('wrist-bend') as { title: string }).title.concat('')).not.toThrow();
    expect(() => void ((fixtureManoeuvre('wrist-bend') as { title: string }).title = 'x')).toThrow(TypeError);
  });

  it('expands any to every position, and cuts stages', () => {
    expect(fixtureManoeuvre('wash-hands').stages).toEqual([['sitting', 'supine', 'standing']]);
    expect(fixtureManoeuvre('wrist-look').stages).toEqual([['sitting', 'supine']]);
    expect(fixtureManoeuvre('wrist-bend').stages).toEqual([['sitting'], ['standing']]);
  });

  it('puts preparation first and the closing last, by rule', () => {
    expect(fixtureManoeuvre('wrist-bend')).toMatchObject({ after: ['wrist-look'], derivedAfter: ['wash-hands'] });
    expect(fixtureManoeuvre('wash-hands').derivedAfter).toEqual([]);
    expect(new Set(fixtureManoeuvre('finish-and-explain').derivedAfter)).toEqual(
      new Set(['wash-hands', 'wrist-look', 'wrist-bend']),
    );
  });

  it('keeps links and figures as references', () => {
    expect(fixtureManoeuvre('wrist-bend').normal[0]).toEqual([
      { type: 'text', text: 'It bends ' },
      { type: 'value', id: 'wrist-bend' },
      { type: 'text', text: ' or more: see ' },
      { type: 'link', to: { kind: 'manoeuvre', id: 'wrist-look' }, children: [{ type: 'text', text: 'the look' }] },
      { type: 'text', text: '.' },
    ]);
    expect(fixtureManoeuvre('wrist-look').redFlags[1]?.finding).toEqual([
      { type: 'text', text: 'A bend of less than ' },
      { type: 'value', id: 'wrist-bend' },
      { type: 'text', text: ' with fever' },
    ]);
  });

  it('reads red flags whether a line of their own or joined in a paragraph', () => {
    expect(fixtureManoeuvre('wrist-look').redFlags.map(({ urgency }) => urgency)).toEqual(['now', 'today']);
  });
});

describe('the hash of the library', () => {
  const hashAfter = (path: string, from: string, to: string): string | undefined => {
    const copy = copyContent();
    copy.edit(path, from, to);
    const { library, faults } = loadLibrary(copy.root);
    copy.remove();
    expect(faults).toEqual([]);
    return library?.hash;
  };

  it('does not depend on the folder or on lines moved about', () => {
    expect(hashAfter('protocols/wrist.mdx', '\nLook first', '\n\n\nLook first')).toBe(fixtureLibrary.hash);
  });

  it('changes with a single word', () => {
    expect(hashAfter('protocols/wrist.mdx', 'Stop when it hurts', 'Stop if it hurts')).not.toBe(fixtureLibrary.hash);
  });
});

describe('orders by rule', () => {
  it('put a sensitive examination last among what shares its positions', () => {
    const sensitive = { ...fixtureManoeuvre('wrist-look'), id: 'private', sensitive: true };
    const elsewhere = fixtureManoeuvre('wrist-bend');
    const derived = deriveOrders([fixtureManoeuvre('wrist-look'), elsewhere, sensitive]);
    expect(derived.get('private')).toEqual(['wrist-look']);
  });

  it('are searched for circles', () => {
    expect(
      findCycle(
        new Map([
          ['a', ['b']],
          ['b', ['c']],
          ['c', []],
        ]),
      ),
    ).toBeUndefined();
    expect(
      findCycle(
        new Map([
          ['a', ['b']],
          ['b', ['c']],
          ['c', ['b']],
        ]),
      ),
    ).toEqual(['b', 'c', 'b']);
  });
});
