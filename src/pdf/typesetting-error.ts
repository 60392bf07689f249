/** One message of the typesetter; `range` counts lines and characters from 0. */
export interface Diagnostic {
  message: string;
  path: string;
  range: { start: { line: number; character: number } } | null;
  hints?: string[];
}

/** Thrown when a document cannot be set. The message names template, line and column where the engine gives them. */
export class TypesettingError extends Error {
  override name = 'TypesettingError';
}

/** `cards.typ:12:3  message (hint: …)`, lines and columns from 1; without a position where the engine has none. */
export const diagnosticText = ({ message, path, range, hints = [] }: Diagnostic, template: string): string => {
  const file = path.split('/').at(-1) || template;
  const at = range ? `:${range.start.line + 1}:${range.start.character + 1}` : '';
  return `${file}${at}  ${message}${hints.map((hint) => ` (hint: ${hint})`).join('')}`;
};

/** A message of the export step, which arrives as debug text without a usable position. */
export const exportText = (debug: string, template: string): string => {
  const messages = [...debug.matchAll(/message: "((?:[^"\\]|\\.)*)"/g)].map(
    ([, quoted]) => JSON.parse(`"${quoted}"`) as string,
  );
  return messages.length > 0
    ? messages.map((message) => `${template}  ${message}`).join('\n')
    : `${template}  ${debug}`;
};
