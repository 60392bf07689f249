import { findNodeAtLocation, parseTree, printParseErrorCode, type Node, type ParseError } from 'jsonc-parser';
import type { At, Fault } from '../library/faults.ts';

/** A JSON text that was read. */
export interface JsonText {
  /** Its value; undefined when the text is broken. */
  value: unknown;
  /** What is broken, or written twice. */
  faults: Fault[];
  /** Where a part of the value is written; the nearest part around it when there is none. */
  placeOf: (path: readonly PropertyKey[]) => At;
}

/** Reads a JSON text so that faults can point into it. */
export function readJson(file: string, text: string): JsonText {
  try {
    return parseJson(file, text);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const start = { file, line: 1, column: 1 };
    const message = 'This is not JSON that can be read: brackets are nested too deeply.';
    return { value: undefined, faults: [{ ...start, rule: 'syntax', message }], placeOf: () => start };
  }
}

function parseJson(file: string, text: string): JsonText {
  const errors: ParseError[] = [];
  const root = parseTree(text, errors, { disallowComments: true });
  const at = (offset: number): At => ({ file, ...lineAndColumn(text, offset) });
  const [first] = errors;
  const placeOf = (path: readonly PropertyKey[]): At => at(root === undefined ? 0 : offsetOf(root, path));
  if (first === undefined)
    return { value: JSON.parse(text), faults: root === undefined ? [] : doubles(root, at), placeOf };
  const found = text.slice(first.offset, first.offset + Math.max(1, first.length)).trim() || 'the end of the text';
  const message = `This is not JSON: ${words[printParseErrorCode(first.error)] ?? 'something is broken'} at ${found}.`;
  return { value: undefined, faults: [{ ...at(first.offset), rule: 'syntax', message }], placeOf };
}

/** What each fault of syntax means. */
const words: Record<string, string> = {
  InvalidSymbol: 'expected a value, a string in double quotes, or a bracket',
  InvalidNumberFormat: 'a number is written wrongly',
  PropertyNameExpected: 'expected a key in double quotes',
  ValueExpected: 'expected a value',
  ColonExpected: 'expected a colon after the key',
  CommaExpected: 'expected a comma',
  CloseBraceExpected: 'expected a closing brace',
  CloseBracketExpected: 'expected a closing bracket',
  EndOfFileExpected: 'expected nothing more',
  InvalidCommentToken: 'a comment is not allowed',
  UnexpectedEndOfString: 'a string is not closed',
  UnexpectedEndOfNumber: 'a number is cut short',
  InvalidUnicode: 'an escape is written wrongly',
  InvalidEscapeCharacter: 'an escape is written wrongly',
  InvalidCharacter: 'a character in a string must be escaped',
};

function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  const lines = text.slice(0, offset).split('\n');
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}

function offsetOf(root: Node, path: readonly PropertyKey[]): number {
  const parts = path.map((key) => (typeof key === 'number' ? key : String(key)));
  for (let length = parts.length; length > 0; length--) {
    const node = findNodeAtLocation(root, parts.slice(0, length));
    if (node !== undefined) return (node.parent?.type === 'property' ? node.parent : node).offset;
  }
  return root.offset;
}

/** Keys of one group that are written twice: only the last would count. */
function doubles(node: Node, at: (offset: number) => At): Fault[] {
  const seen = new Set<unknown>();
  return (node.children ?? []).flatMap((child) => {
    const deeper = doubles(child, at);
    const key: unknown = child.type === 'property' ? child.children?.[0]?.value : undefined;
    if (typeof key !== 'string' || !seen.has(key)) {
      seen.add(key);
      return deeper;
    }
    return [...deeper, { ...at(child.offset), rule: 'twice', message: `"${key}" is given twice. Keep one.` }];
  });
}
