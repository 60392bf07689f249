/** Exposure id for nothing uncovered. */
const covered = 'none';

/** The regions that are bare, sorted: the exposure ids without the one for nothing uncovered. */
export function bareRegions(exposure: readonly string[]): string[] {
  return exposure.filter((id) => id !== covered).sort();
}

/** One word for what is bare, the same for the same regions. */
export function exposureKey(exposure: readonly string[]): string {
  return bareRegions(exposure).join(' ');
}
