import type { Form } from '../../../schemas/form.ts';
import { formBundle } from '../../forms/bundle/bundle.ts';
import { codebook } from '../../forms/codebook.ts';
import { formDocx } from '../../forms/docx/docx.ts';
import { changesJson } from '../../forms/changes/json.ts';
import { formText } from '../../forms/plain/text.ts';
import { questionnaire } from '../../forms/questionnaire.ts';
import { responseSchema } from '../../forms/response-schema.ts';
import { sha256 } from '../../library/hash.ts';
import { kept } from '../_press/kept.ts';
import { pressedForm, startPressing } from '../_press/press.ts';
import { allEditions, type Edition } from './_editions.ts';

/** A form in one format. */
export interface FormFile {
  /** Name of the file, which begins with the form's id. */
  name: string;
  /** What a download control says. */
  words: string;
  /** What it is good for. */
  use: string;
  mediaType: string;
  bytes: Uint8Array<ArrayBuffer>;
}

interface Format {
  ending: string;
  words: string;
  use: string;
  mediaType: string;
  /** What stands in the file; `before` is the release before it. */
  write: (form: Form, before: Form | undefined) => string | Promise<Uint8Array>;
}

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

const wordDocument = 'application/vnd.openxmlformats-officedocument.wordprocessingml.document';

const formats: readonly Format[] = [
  {
    ...{
      ending: 'a4.pdf',
      words: 'the blank form, A4',
      use: 'To print, or to fill on screen.',
      mediaType: 'application/pdf',
    },
    write: (form) => pressedForm(form, 'a4'),
  },
  {
    ...{
      ending: 'letter.pdf',
      words: 'the blank form, US Letter',
      use: 'The same on Letter paper.',
      mediaType: 'application/pdf',
    },
    write: (form) => pressedForm(form, 'letter'),
  },
  {
    ...{
      ending: 'large.pdf',
      words: 'the blank form in large print',
      use: 'In 16 point type, one column, on A4 or Letter. Many sheets.',
      mediaType: 'application/pdf',
    },
    write: (form) => pressedForm(form, 'large'),
  },
  {
    ...{ ending: 'questionnaire.json', words: 'the FHIR R4 Questionnaire', mediaType: 'application/fhir+json' },
    use: 'For a record system that takes HL7 FHIR R4 (4.0.1).',
    write: (form) => json(questionnaire(form)),
  },
  {
    ...{ ending: 'schema.json', words: 'the JSON Schema of a filled form', mediaType: 'application/schema+json' },
    use: 'To check filled forms in your own software.',
    write: (form) => json(responseSchema(form)),
  },
  {
    ...{ ending: 'codebook.csv', words: 'the codebook (CSV)', mediaType: 'text/csv; charset=utf-8; header=present' },
    use: 'Every field with its unit, range, options and codes.',
    write: (form) => codebook(form),
  },
  {
    ...{ ending: 'docx', words: 'the form for a word processor (.docx)', mediaType: wordDocument },
    use: 'To adapt, or to fill where nothing else opens.',
    write: (form) => kept(form, 'docx', () => formDocx(form)),
  },
  {
    ...{ ending: 'txt', words: 'the form as plain text', mediaType: 'text/plain; charset=utf-8' },
    use: 'To read aloud, to paste, or where nothing else opens.',
    write: formText,
  },
  {
    ...{ ending: 'changes.json', words: 'what changed, for machines (JSON)', mediaType: 'application/json' },
    use: 'Every difference from the release before, with its size.',
    write: (form, before) => json(changesJson(before, form)),
  },
  {
    ...{ ending: 'form.json', words: 'the form as plain data (JSON)', mediaType: 'application/json' },
    use: 'The one value that every format is made from, word for word.',
    write: (form) => `${JSON.stringify(form)}\n`,
  },
];

const files = new Map<Edition, Promise<FormFile[]>>();

/** Names of the files that a version of a form has; nothing is written for it. */
export const fileNames = ({ form }: Edition): string[] =>
  [...formats.map(({ ending }) => ending), 'zip'].map((ending) => `${form.id}.${ending}`);

/** The files of one version of a form, written once. */
export function editionFiles(edition: Edition): Promise<FormFile[]> {
  const written = files.get(edition) ?? filesOf(edition);
  files.set(edition, written);
  return written;
}

/** Every format, then all of them in one. */
async function filesOf({ form, before }: Edition): Promise<FormFile[]> {
  const single = await Promise.all(formats.map((format) => fileOf(form, before, format)));
  const bytes = await kept(form, 'zip', () => formBundle({ form, files: single, before, sha256 }), before);
  const words = 'everything in one (.zip)';
  const use = 'All of these with their checksums, changes, licences and sources.';
  return [...single, { name: `${form.id}.zip`, words, use, mediaType: 'application/zip', bytes }];
}

async function fileOf(form: Form, before: Form | undefined, format: Format): Promise<FormFile> {
  const { ending, words, use, mediaType, write } = format;
  const content = await write(form, before);
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : new Uint8Array(content);
  return { name: `${form.id}.${ending}`, words, use, mediaType, bytes };
}

// A build will ask for all of it; the development server sets what is looked at.
if (import.meta.env.PROD) startPressing(allEditions.map(({ form }) => form));
