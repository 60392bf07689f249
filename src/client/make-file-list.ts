/** A file that a made form can be had as. */
export interface MakeFile {
  /** What its name ends in, behind the form's id and a full stop. */
  ending:
    | 'a4.pdf'
    | 'letter.pdf'
    | 'questionnaire.json'
    | 'schema.json'
    | 'codebook.csv'
    | 'docx'
    | 'txt'
    | 'form.json'
    | 'zip'
    | 'yaml';
  /** What a control says. */
  words: string;
  /** What it is good for. */
  use: string;
  mediaType: string;
}

export type MakeEnding = MakeFile['ending'];

const pdf = 'application/pdf';
const word = 'application/vnd.openxmlformats-officedocument.wordprocessingml.document';

/** The files in the order offered; the archive holds all that stand before it. */
export const makeFiles: readonly MakeFile[] = [
  { ending: 'a4.pdf', words: 'the blank form, A4', use: 'To print, or to fill on screen.', mediaType: pdf },
  { ending: 'letter.pdf', words: 'the blank form, US Letter', use: 'The same on Letter paper.', mediaType: pdf },
  {
    ...{ ending: 'questionnaire.json', words: 'the FHIR R4 Questionnaire', mediaType: 'application/fhir+json' },
    use: 'For a record system that takes HL7 FHIR R4 (4.0.1).',
  },
  {
    ...{ ending: 'schema.json', words: 'the JSON Schema of a filled form', mediaType: 'application/schema+json' },
    use: 'To check filled forms in your own software.',
  },
  {
    ...{ ending: 'codebook.csv', words: 'the codebook (CSV)', mediaType: 'text/csv; charset=utf-8; header=present' },
    use: 'Every field with its unit, range, options and codes.',
  },
  {
    ...{ ending: 'docx', words: 'the form for a word processor (.docx)', mediaType: word },
    use: 'To adapt, or to fill where nothing else opens.',
  },
  {
    ...{ ending: 'txt', words: 'the form as plain text', mediaType: 'text/plain; charset=utf-8' },
    use: 'To read aloud, to paste, or where nothing else opens.',
  },
  {
    ...{ ending: 'form.json', words: 'the form as plain data (JSON)', mediaType: 'application/json' },
    use: 'The one value that every format is made from, word for word.',
  },
  {
    ...{ ending: 'yaml', words: 'the definition (YAML)', mediaType: 'application/yaml' },
    use: 'What content/forms/ of the library takes: there it is checked, versioned and released like any other form.',
  },
  {
    ...{ ending: 'zip', words: 'everything in one (.zip)', mediaType: 'application/zip' },
    use: 'All of these with their checksums, licences and sources.',
  },
];

/** The file with an ending. */
export function makeFile(ending: MakeEnding): MakeFile {
  const file = makeFiles.find((one) => one.ending === ending);
  if (file === undefined) throw new RangeError(`no file of a form ends in "${ending}"`);
  return file;
}
