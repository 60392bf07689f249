import type { z } from 'zod';
import { cardSet } from '../../schemas/card-set.ts';
import { clinic } from '../../schemas/clinic.ts';
import { evidence } from '../../schemas/evidence.ts';
import { formDefinition } from '../../schemas/form-definition.ts';
import { priority } from '../../schemas/priority.ts';
import { scale } from '../../schemas/scale.ts';
import { source } from '../../schemas/source.ts';
import { value } from '../../schemas/value.ts';
import { examinerPlace, exposure, instrument, landmark, position, system, tool } from '../../schemas/vocabulary.ts';
import type { Content, Entry, Report, TableName, Tables } from './content.ts';
import type { ContentFile } from './read.ts';
import { didYouMean } from './suggest.ts';
import { readList, readSingle } from './yaml-table.ts';

interface TableKind<Name extends TableName> {
  /** What one entry is called in messages. */
  noun: string;
  /** Where the entries are written, for messages. */
  home: string;
  where: RegExp;
  schema: z.ZodType<Tables[Name]>;
  /** One entry a file, or a list. */
  shape: 'single' | 'list';
}

/** Which YAML file holds which noun. */
export const tableKinds: { [Name in TableName]: TableKind<Name> } = {
  systems: list('system', 'content/vocabulary/systems.yaml', /^vocabulary\/systems\.yaml$/, system),
  positions: list('position', 'content/vocabulary/positions.yaml', /^vocabulary\/positions\.yaml$/, position),
  exposures: list('exposure', 'content/vocabulary/exposures.yaml', /^vocabulary\/exposures\.yaml$/, exposure),
  instruments: list('instrument', 'content/vocabulary/instruments.yaml', /^vocabulary\/instruments\.yaml$/, instrument),
  examinerPlaces: list(
    'examiner place',
    'content/vocabulary/examiner-places.yaml',
    /^vocabulary\/examiner-places\.yaml$/,
    examinerPlace,
  ),
  landmarks: list('landmark', 'content/vocabulary/landmarks.yaml', /^vocabulary\/landmarks\.yaml$/, landmark),
  tools: list('tool', 'content/vocabulary/tools.yaml', /^vocabulary\/tools\.yaml$/, tool),
  priorities: list('priority', 'content/vocabulary/priorities.yaml', /^vocabulary\/priorities\.yaml$/, priority),
  values: list('value', 'content/values/', /^values\/[^/]+\.yaml$/, value),
  scales: list('scale', 'content/scales/', /^scales\/[^/]+\.yaml$/, scale),
  evidence: list('evidence entry', 'content/evidence/', /^evidence\/[^/]+\.yaml$/, evidence),
  sources: list('source', 'content/sources.yaml', /^sources\.yaml$/, source),
  cardSets: single('card set', 'content/cards/', /^cards\/[^/]+\.yaml$/, cardSet),
  forms: single('form', 'content/forms/', /^forms\/[^/]+\.yaml$/, formDefinition),
  clinics: single('clinic', 'content/clinics/', /^clinics\/[^/]+\/clinic\.yaml$/, clinic),
};

const tableNames = Object.keys(tableKinds) as TableName[];

/** Reads every YAML file into its table. A file that belongs to no table is a fault. */
export function readTables(files: readonly ContentFile[], report: Report): Content['tables'] {
  const tables = Object.fromEntries(tableNames.map((name) => [name, []])) as unknown as Content['tables'];
  for (const file of files.filter(({ path }) => path.endsWith('.yaml'))) {
    const name = tableNames.find((candidate) => tableKinds[candidate].where.test(file.path));
    if (name === undefined) reportStray(file, report);
    else readInto(tables, name, file, report);
  }
  return tables;
}

function readInto(tables: Content['tables'], name: TableName, file: ContentFile, report: Report): void {
  const { shape, schema } = tableKinds[name] as TableKind<TableName>;
  const read = shape === 'list' ? readList : readSingle;
  // The name chooses both the table and its schema, which the compiler cannot follow.
  (tables[name] as Entry<Tables[TableName]>[]).push(...read(file, schema, report));
}

function reportStray(file: ContentFile, report: Report): void {
  const homes = tableNames.map((name) => tableKinds[name].home.replace(/^content\//, ''));
  const hint = didYouMean(file.path, homes);
  report(
    { file: file.file, line: 1, column: 1 },
    'file',
    `The file belongs to no table.${hint} Tables live in: ${homes.join(', ')}.`,
  );
}

function list<Name extends TableName>(
  noun: string,
  home: string,
  where: RegExp,
  schema: z.ZodType<Tables[Name]>,
): TableKind<Name> {
  return { noun, home, where, schema, shape: 'list' };
}

function single<Name extends TableName>(
  noun: string,
  home: string,
  where: RegExp,
  schema: z.ZodType<Tables[Name]>,
): TableKind<Name> {
  return { noun, home, where, schema, shape: 'single' };
}
