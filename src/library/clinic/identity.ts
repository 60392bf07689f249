import type { ClinicCheck } from './clinic-check.ts';

/** Letters of a name that the foot of every sheet has room for. */
const longest = 24;

/** A clinic is found by its folder, and its logo lies beside the file and can be printed anywhere. */
export const identity: ClinicCheck = ({ value, at }, { drawings }, report) => {
  const folder = /clinics\/([^/]+)\/clinic\.yaml$/.exec(at().file)?.[1] ?? '';
  if (value.id !== folder)
    report(
      at(['id']),
      `The id "${value.id}" is not the name of its folder. Write id: ${folder}, or rename the folder to "${value.id}".`,
    );
  if (value.short === undefined && value.name.length > longest)
    report(
      at(['name']),
      `The name has ${value.name.length} letters, too many for the foot of a sheet. Write "short" with at most ${longest}.`,
    );
  if (value.logo === undefined) return;
  const drawing = drawings.get(`clinics/${folder}/${value.logo}`);
  if (drawing === undefined)
    report(
      at(['logo']),
      `The drawing "${value.logo}" is not beside this file. Put it there, mend its name, or take "logo" out.`,
    );
  else reportDrawing(drawing, at().file.replace(/clinic\.yaml$/, value.logo), report);
};

/** What may not be in a logo, and why. */
const refused: readonly [found: RegExp, message: string][] = [
  [
    /<(?:script|foreignObject|iframe|use|image|style)\b|\son\w+\s*=|href\s*=|url\(\s*['"]?(?!#)|<!|<\?(?!xml\b)/i,
    'runs, styles or fetches something. Keep plain shapes with their colours as attributes.',
  ],
  [/<text\b/i, 'holds text, which would need a font. Turn its letters into paths.'],
];

/** Kilobytes of 1000 that a logo may have: it is in every form's PDF. */
const largest = 20;

function reportDrawing(text: string, file: string, report: Parameters<ClinicCheck>[2]): void {
  const start = { file, line: 1, column: 1 };
  if (!/^\s*(<\?xml[^>]*>\s*)?<svg\b[^>]*\bviewBox\s*=/.test(text))
    report(
      start,
      'The drawing does not begin with an <svg> that has a viewBox. Save it as plain SVG, without a comment before it.',
    );
  if (text.length > largest * 1000)
    report(
      start,
      `The drawing has ${Math.ceil(text.length / 1000)} KB; at most ${largest} are taken. Draw it simpler.`,
    );
  for (const [pattern, message] of refused) {
    const found = pattern.exec(text);
    if (found === null) continue;
    const before = text.slice(0, found.index).split('\n');
    const place = { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
    report(place, `"${found[0].trim()}": the drawing ${message}`);
  }
}
