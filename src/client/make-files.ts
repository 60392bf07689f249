import { makeFile, makeFiles, type MakeEnding } from './make-file-list.ts';
import type { MadeForm } from './make-form.ts';

/** A finished file. */
export interface FinishedFile {
  name: string;
  mediaType: string;
  bytes: Uint8Array<ArrayBuffer>;
}

/** Sets a form as PDF. */
export type SetPdf = (made: MadeForm, paper: 'a4' | 'letter') => Promise<Uint8Array<ArrayBuffer>>;

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

type Written = string | Uint8Array;
type Writer = (made: MadeForm, pdf: SetPdf) => Promise<Written>;

/** Each format is fetched when it is asked for; what writes it is the very module that writes the site's own files. */
const writers: Record<Exclude<MakeEnding, 'zip'>, Writer> = {
  'a4.pdf': (made, pdf) => pdf(made, 'a4'),
  'letter.pdf': (made, pdf) => pdf(made, 'letter'),
  'questionnaire.json': async ({ form }) => json((await import('../forms/questionnaire-of.ts')).questionnaireOf(form)),
  'schema.json': async ({ form }) => json((await import('../forms/response-schema.ts')).responseSchema(form)),
  'codebook.csv': async ({ form }) => (await import('../forms/codebook.ts')).codebook(form),
  docx: async ({ form }) => (await import('../forms/docx/docx.ts')).formDocx(form),
  txt: async ({ form }) => (await import('../forms/plain/text.ts')).formText(form),
  'form.json': ({ form }) => Promise.resolve(`${JSON.stringify(form)}\n`),
  yaml: async ({ definition }) => (await import('./make-yaml.ts')).definitionYaml(definition),
};

/** Writes one file of a made form. Rejects as its writer does. */
export async function finishedFile(made: MadeForm, ending: MakeEnding, pdf: SetPdf): Promise<FinishedFile> {
  const written = ending === 'zip' ? await archive(made, pdf) : await writers[ending](made, pdf);
  const bytes = typeof written === 'string' ? new TextEncoder().encode(written) : new Uint8Array(written);
  return { name: fileName(made, ending), mediaType: makeFile(ending).mediaType, bytes };
}

/** The name that a file is saved under; the definition has the name that `content/forms/` asks for. */
const fileName = ({ form }: MadeForm, ending: MakeEnding): string => `${form.id}.${ending}`;

async function archive(made: MadeForm, pdf: SetPdf): Promise<Uint8Array> {
  const [{ formBundle }, { sha256 }] = await Promise.all([
    import('../forms/bundle/bundle.ts'),
    import('../library/hash.ts'),
  ]);
  const files = [];
  for (const { ending, use, mediaType } of makeFiles)
    if (ending !== 'zip') files.push({ ...(await finishedFile(made, ending, pdf)), use, mediaType });
  return formBundle({ form: made.form, files, sha256 });
}
