import { NodeCompiler, type NodeError, type NodeTypstDocument } from '@myriaddreamin/typst-ts-node-compiler';
import { dirname, resolve } from 'node:path';
import { sha256 } from '../library/hash.ts';
import { fontBlobs } from './fonts.ts';
import type { Keeper } from './keeper.ts';
import { diagnosticText, exportText, TypesettingError, type Diagnostic } from './typesetting-error.ts';

/** What is to be set: a template's path from src/pdf/templates/, and the value it reads as `json("data.json")`. */
export interface PdfRequest {
  template: string;
  data: unknown;
}

/** Nothing is remembered from one document to the next: measured, they hardly share results, and the memory doubles. */
const cacheAge = 0;

let shared: NodeCompiler | undefined;
const compiler = (): NodeCompiler =>
  (shared ??= NodeCompiler.create({ workspace: process.cwd(), fontArgs: [{ fontBlobs: fontBlobs() }] }));

const fail = (engine: NodeCompiler, trouble: NodeError, template: string): never => {
  const diagnostics = engine.fetchDiagnostics(trouble) as Diagnostic[];
  throw new TypesettingError(diagnostics.map((one) => diagnosticText(one, template)).join('\n'));
};

/** Data reaches the template through a shadow file, never by evaluating it. */
const compile = (engine: NodeCompiler, { template, data }: PdfRequest): NodeTypstDocument => {
  const mainFilePath = resolve('src/pdf/templates', template);
  engine.mapShadow(resolve(dirname(mainFilePath), 'data.json'), Buffer.from(JSON.stringify(data)));
  const result = engine.compile({ mainFilePath, resetRead: true });
  const trouble = result.takeError() ?? result.takeWarnings();
  if (trouble) return fail(engine, trouble, template);
  if (!result.result) throw new TypesettingError(`${template}  gave no document and no reason`);
  return result.result;
};

const withDocument = <Answer>(
  request: PdfRequest,
  use: (engine: NodeCompiler, document: NodeTypstDocument) => Answer,
): Answer => {
  const engine = compiler();
  try {
    return use(engine, compile(engine, request));
  } finally {
    engine.evictCache(cacheAge);
  }
};

const exportPdf = (engine: NodeCompiler, document: NodeTypstDocument, template: string): Uint8Array<ArrayBuffer> => {
  try {
    return new Uint8Array(engine.pdf(document, { pdfStandard: 'ua-1' }));
  } catch (error) {
    throw new TypesettingError(exportText((error as Error).message, template), { cause: error });
  }
};

let keeper: Keeper | undefined;

/** From now on takes from `given` what it has of a request, and hands it what it makes; undefined ends that. */
export const keepWith = (given: Keeper | undefined): void => {
  keeper = given;
};

/** The kept answer to a request, or what `make` gives. A request says all that its answer depends on, the makers aside. */
const kept = (question: string, request: PdfRequest, make: () => Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> => {
  if (keeper === undefined) return make();
  const name = sha256(JSON.stringify([question, request.template, request.data]));
  const found = keeper.read(name);
  if (found !== undefined) return found;
  const made = make();
  keeper.write(name, made);
  return made;
};

/**
 * Sets a template and exports it as tagged PDF/UA-1: same request, same bytes.
 * Throws TypesettingError on any error or warning, a missing glyph, title or alternative text included.
 */
export const compilePdf = (request: PdfRequest): Uint8Array<ArrayBuffer> =>
  kept('pdf', request, () =>
    withDocument(request, (engine, document) => exportPdf(engine, document, request.template)),
  );

/** Values of the `metadata` elements that `selector` (for example `<fit>`) finds once the template is set. Throws like compilePdf. */
export const queryDocument = (request: PdfRequest, selector: string): unknown[] => {
  const answer = kept(selector, request, () => {
    const found = withDocument(
      request,
      (engine, document) => engine.query(document, { selector, field: 'value' }) as unknown[],
    );
    return new TextEncoder().encode(JSON.stringify(found));
  });
  return JSON.parse(new TextDecoder().decode(answer)) as unknown[];
};
