import init, { TypstCompilerBuilder, type TypstCompiler } from '@myriaddreamin/typst-ts-web-compiler';
import wasmAddress from '@myriaddreamin/typst-ts-web-compiler/wasm?url';
import { formFieldSpecs } from '../forms/paper/form-fields.ts';
import { type Paper, sheetOf } from '../forms/paper/sheet.ts';
import { sheetFields } from '../forms/paper/sheet-fields.ts';
import { markAccessible } from '../pdf/form/accessible-mark.ts';
import type { TypingFont } from '../pdf/form/typing-font.ts';
import { withFields } from '../pdf/form/with-fields.ts';
import { diagnosticText, TypesettingError, type Diagnostic } from '../pdf/typesetting-error.ts';
import { missingSigns } from './make-glyphs.ts';
import type { Typesetting } from './make-typesetting.ts';
import type { MadeForm } from './make-form.ts';

/** Diagnostics as objects, in the numbering of the compiler. */
const fullDiagnostics = 3;

const template = 'form.typ';

interface Engine {
  compiler: TypstCompiler;
  glyphs: Typesetting['glyphs'];
  font: TypingFont;
}

/**
 * Sets a form as Node does, from the same template, with the same form pass: the same text and fields. Only the box that
 * PDF/UA asks for around a tagged picture is missing, which this build of the typesetter leaves out.
 * Rejects with TypesettingError when it cannot be set or has a sign that the faces lack, and when a file cannot be fetched.
 */
export async function madePdf(
  { form, definition }: MadeForm,
  paper: Paper,
  files: string,
): Promise<Uint8Array<ArrayBuffer>> {
  const { compiler, glyphs, font } = await (engine ??= opened(files));
  const { title, purpose, leavesOut, publisher, url } = definition;
  const missing = missingSigns([title, purpose, leavesOut, publisher, url].join(''), glyphs);
  if (missing.length > 0)
    throw new TypesettingError(`The typefaces of the PDF have no ${missing.map((sign) => `“${sign}”`).join(', ')}.`);
  const blank = compiled(compiler, sheetOf(form, paper));
  return withFields(blank, [...sheetFields, ...formFieldSpecs(form)], { font, prepare: markAccessible });
}

let engine: Promise<Engine> | undefined;

async function opened(files: string): Promise<Engine> {
  try {
    const [about] = await Promise.all([
      fetched(`${files}typesetting.json`, (answer) => answer.json() as Promise<Typesetting>),
      started(),
    ]);
    const { templates, faces, glyphs, typing } = about;
    const bytes = await Promise.all([...faces, typing.file].map((name) => fetched(`${files}${name}`, bytesOf)));
    const builder = new TypstCompilerBuilder();
    builder.set_dummy_access_model();
    for (const face of bytes.slice(0, -1)) await builder.add_raw_font(face);
    const compiler = await builder.build();
    for (const [name, text] of Object.entries(templates)) compiler.add_source(`/${name}`, text);
    return { compiler, glyphs, font: { ...typing, bytes: bytes.at(-1) ?? new Uint8Array() } };
  } catch (error) {
    // The next asking tries again.
    engine = undefined;
    throw error;
  }
}

/** Compiled from its bytes: a server need not know the type of the file. */
async function started(): Promise<void> {
  await init({ module_or_path: await fetched(wasmAddress, bytesOf) });
}

const bytesOf = async (answer: Response): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(await answer.arrayBuffer());

async function fetched<T>(address: string, read: (answer: Response) => Promise<T>): Promise<T> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return read(answer);
}

function compiled(compiler: TypstCompiler, data: unknown): Uint8Array {
  compiler.map_shadow('/data.json', new TextEncoder().encode(JSON.stringify(data)));
  const { result, diagnostics = [] } = compiler.compile(`/${template}`, undefined, 'pdf', fullDiagnostics) as {
    result?: Uint8Array;
    diagnostics?: WebDiagnostic[];
  };
  if (result !== undefined && diagnostics.length === 0) return result;
  throw new TypesettingError(diagnostics.map((one) => diagnosticText({ ...one, range: null }, template)).join('\n'));
}

/** The compiler's own: its range is text. */
type WebDiagnostic = Omit<Diagnostic, 'range'>;
