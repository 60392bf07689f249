/** Signs of a text that no run of code points holds, each once, in the order met. */
export function missingSigns(text: string, runs: readonly (readonly [number, number])[]): string[] {
  const signs = new Set(text);
  return [...signs].filter((sign) => {
    const code = sign.codePointAt(0) ?? 0;
    return !runs.some(([first, last]) => code >= first && code <= last);
  });
}

/** Code points as runs: first and last of each. */
export function runsOf(codes: readonly number[]): [number, number][] {
  const runs: [number, number][] = [];
  for (const code of codes.toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && code <= last[1] + 1) last[1] = code;
    else runs.push([code, code]);
  }
  return runs;
}
