/** What a look-up consists of: words, and a value by the name of each filter. */
export interface Asked {
  words: string;
  chosen: Readonly<Record<string, string>>;
}

/**
 * Takes a look-up out of the page's address: from behind `#`, where only the button puts it, or else from `?q=`, where
 * a link from elsewhere may put it. What stands before `#` goes to histories and hosts, so it is removed.
 */
export function takeFromAddress(): Asked | undefined {
  const sent = new URLSearchParams(location.search).get('q');
  if (sent !== null) history.replaceState(null, '', location.pathname + location.hash);
  if (!location.hash.startsWith('#q=')) return sent === null ? undefined : { words: sent, chosen: {} };
  const { q: words = '', ...chosen } = Object.fromEntries(new URLSearchParams(location.hash.slice(1)));
  return { words, chosen };
}

/** Puts a look-up behind `#` in the page's address, in place of what stood there; nothing clears it. */
export function putIntoAddress(asked: Asked | undefined): void {
  const behind = asked === undefined ? '' : `#${new URLSearchParams({ q: asked.words, ...asked.chosen }).toString()}`;
  history.replaceState(null, '', location.pathname + behind);
}
