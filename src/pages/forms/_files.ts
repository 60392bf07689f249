import type { Form } from '../../../schemas/form.ts';
import { codebook } from '../../forms/codebook.ts';
import { buildForm } from '../../forms/form.ts';
import { questionnaire } from '../../forms/questionnaire.ts';
import { responseSchema } from '../../forms/response-schema.ts';
import { library } from '../_data.ts';
import { pressedForm, startPressing } from '../_press/press.ts';

/** Forms whose draft is offered as files. */
const withFiles: readonly string[] = ['adult-screening'];

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
  write: (form: Form) => string | Promise<Uint8Array>;
}

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

const formats: readonly Format[] = [
  {
    ...{
      ending: 'a4.pdf',
      words: 'the blank form, A4',
      use: 'To print, or to fill on screen.',
      mediaType: 'application/pdf',
    },
    write: (form) => pressedForm(form.id, 'a4'),
  },
  {
    ...{
      ending: 'letter.pdf',
      words: 'the blank form, US Letter',
      use: 'The same on Letter paper.',
      mediaType: 'application/pdf',
    },
    write: (form) => pressedForm(form.id, 'letter'),
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
];

const files = new Map<string, Promise<FormFile[]>>();

/** Every form's draft, built once. */
export const draftForms: readonly Form[] = library.forms.map(({ id }) => buildForm(library, id));

/** The drafts that are offered as files. */
export const offeredForms: readonly Form[] = draftForms.filter(({ id }) => withFiles.includes(id));

/** The files of a form's draft, written once; none for a form that is not offered as files yet. */
export function formFiles(formId: string): Promise<FormFile[]> {
  const form = offeredForms.find(({ id }) => id === formId);
  const written =
    files.get(formId) ?? Promise.all(form === undefined ? [] : formats.map((format) => fileOf(form, format)));
  files.set(formId, written);
  return written;
}

async function fileOf(form: Form, { ending, words, use, mediaType, write }: Format): Promise<FormFile> {
  const content = await write(form);
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : new Uint8Array(content);
  return { name: `${form.id}.${ending}`, words, use, mediaType, bytes };
}

// A build will ask for all of it; the development server sets what is looked at.
if (import.meta.env.PROD) startPressing(withFiles);
