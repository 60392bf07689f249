/** How large a change is: an answer lost or meaning something else, something new, or words alone. */
export type ChangeSize = 'major' | 'minor' | 'patch';

const parts = (version: string): [number, number, number] => {
  const [major = 0, minor = 0, patch = 0] = version.split('.').map(Number);
  return [major, minor, patch];
};

/** Orders versions by their numbers: negative when `a` comes before `b`. Source: Semantic Versioning 2.0.0, item 11. */
export function compareVersions(a: string, b: string): number {
  const [left, right] = [parts(a), parts(b)];
  const index = left.findIndex((number, place) => number !== right[place]);
  return index < 0 ? 0 : (left[index] ?? 0) - (right[index] ?? 0);
}

/** The smallest version that a change of this size may have after `version`. */
export function nextVersion(version: string, size: ChangeSize): string {
  const [major, minor, patch] = parts(version);
  if (size === 'major') return `${major + 1}.0.0`;
  return size === 'minor' ? `${major}.${minor + 1}.0` : `${major}.${minor}.${patch + 1}`;
}

/** Whether a draft's version is high enough for a change of this size since `last`. */
export function isEnough(version: string, last: string, size: ChangeSize): boolean {
  return compareVersions(version, nextVersion(last, size)) >= 0;
}
