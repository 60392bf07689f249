import { parseArgs } from 'node:util';

/** What a command was called with. */
export interface Arguments {
  /** The options given, without their hyphens. */
  options: ReadonlySet<string>;
  /** Everything else, in order. */
  names: string[];
  /** What is wrong with the call, in words; absent when nothing is. */
  problem?: string;
}

/** Reads a command's arguments: `--help`, the options it knows, and at most so many names. Throws nothing. */
export function readArguments(known: readonly string[], mostNames: number): Arguments {
  const options = Object.fromEntries([...known, 'help'].map((name) => [name, { type: 'boolean' as const }]));
  try {
    const { values, positionals } = parseArgs({ allowPositionals: true, options });
    const extra = positionals[mostNames];
    return {
      options: new Set(Object.keys(values)),
      names: positionals,
      ...(extra !== undefined && { problem: `"${extra}" is one name too many (see --help).` }),
    };
  } catch (error) {
    const [reason] = (error instanceof Error ? error.message : String(error)).split('. ');
    return { options: new Set(), names: [], problem: `${String(reason)} (see --help).` };
  }
}
