/** What stands on every page and on every printed sheet. */
export const safetyLine = 'For trained staff, by local protocol. Not a diagnosis.';
