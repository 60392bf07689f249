import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { startingFiles } from '../../../src/cli/starting-files.ts';
import { loadLibrary } from '../../../src/library/load.ts';
import { copyContent, type ContentCopy } from '../../fixtures/content-copy.ts';

let copy: ContentCopy;
beforeEach(() => void (copy = copyContent()));
afterEach(() => {
  copy.remove();
});

/** What the small library lacks for a new system of that name. */
function addVocabulary(id: string): void {
  copy.write(
    'vocabulary/systems.yaml',
    `${copy.read('vocabulary/systems.yaml')}- id: ${id}\n  title: New\n  region: whole\n`,
  );
}

describe('a starting file', () => {
  it.each(Object.keys(startingFiles))('of the kind %s passes the check as it is written', (kind) => {
    const { path, text } = startingFiles[kind]?.('elbow') ?? { path: '', text: '' };
    addVocabulary('elbow');
    copy.write(path.replace(/^content\//, ''), text);
    const { faults, library } = loadLibrary(copy.root);
    expect(faults).toEqual([]);
    const ids = [library?.protocols, library?.forms, library?.clinics].flatMap(
      (list) => list?.map(({ id }) => id) ?? [],
    );
    expect(ids).toContain('elbow');
  });
});
