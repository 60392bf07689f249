import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sizeOf } from '../../src/forms/changes/change.ts';
import { formChanges } from '../../src/forms/changes/form-changes.ts';
import { guardReleases } from '../../src/forms/releases/guard.ts';
import { requireReleases } from '../../src/forms/releases/load.ts';
import { releaseText } from '../../src/forms/releases/release-file.ts';
import { loadReleases } from '../../src/forms/releases/load.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { present } from '../fixtures/present.ts';

const library = requireLibrary('content');
const forms = requireReleases('content');
const folder = 'content/forms/released';

describe('the shipped releases', () => {
  it('are one at least of every stock exam, and two of the screening examination that differ', () => {
    expect([...forms.keys()].sort()).toEqual(library.forms.map(({ id }) => id).sort());
    const [first, second] = present(forms.get('adult-screening'));
    expect(sizeOf(formChanges(first, present(second)))).toBe('minor');
  });

  it('pass the guard, with the drafts that follow them', () => {
    expect(guardReleases('content', library)).toEqual({ faults: [], warnings: [] });
  });

  it('are signed off by three roles, of a body that says that it is invented', () => {
    for (const { signOff } of [...forms.values()].flat()) {
      const { author, reviewer, approver, approved, reviewDue } = present(signOff);
      expect(new Set([author, reviewer, approver]).size).toBe(3);
      expect([reviewer, approver].every((role) => role.endsWith('(invented)'))).toBe(true);
      expect(approved < reviewDue).toBe(true);
    }
  });

  it('would be written as the same files again', () => {
    for (const release of loadReleases('content').releases)
      expect(releaseText(release)).toBe(readFileSync(release.file, 'utf8'));
  });

  it('are small: under 350 KB each, 3.5 KB a manoeuvre', () => {
    const sizes = readdirSync(folder).map((name) => readFileSync(`${folder}/${name}`).length);
    expect(Math.max(...sizes)).toBeLessThan(350_000);
    const items = [...forms.values()].flat().flatMap(({ sections }) => sections.flatMap((section) => section.items));
    expect(sizes.reduce((sum, size) => sum + size, 0) / items.length).toBeLessThan(3500);
  });
});
