import { describe, expect, it } from 'vitest';
import { compareVersions, isEnough, nextVersion } from '../../../../src/forms/releases/versions.ts';

describe('versions', () => {
  it('are ordered by their numbers, as Semantic Versioning 2.0.0, item 11, orders its examples', () => {
    const sorted = ['1.0.0', '2.0.0', '2.1.0', '2.1.1', '2.9.0', '2.10.0', '10.0.0'];
    expect(sorted.toReversed().sort(compareVersions)).toEqual(sorted);
    expect(compareVersions('1.2.3', '1.2.3')).toBe(0);
  });

  it.each([
    ['patch', '1.2.4'],
    ['minor', '1.3.0'],
    ['major', '2.0.0'],
  ] as const)('after 1.2.3 a %s change needs %s', (size, next) => {
    expect(nextVersion('1.2.3', size)).toBe(next);
    expect(isEnough(next, '1.2.3', size)).toBe(true);
    expect(isEnough('1.2.3', '1.2.3', size)).toBe(false);
    expect(isEnough('3.0.0', '1.2.3', size)).toBe(true);
  });

  it('a smaller step is not enough for a larger change', () => {
    expect(isEnough('1.2.9', '1.2.3', 'minor')).toBe(false);
    expect(isEnough('1.9.0', '1.2.3', 'major')).toBe(false);
  });
});
