/** What people type, and the ends of the addresses of the pages of which one must come first. */
export type LookUp = readonly [typed: string, ...pages: string[]];
