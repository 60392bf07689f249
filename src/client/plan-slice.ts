import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';

/** What of a manoeuvre the planner and the head of a step need. */
const planned = [
  'id',
  'system',
  'title',
  'scope',
  'sensitive',
  'stages',
  'exposure',
  'examiner',
  'instruments',
  'seconds',
  'sides',
  'after',
  'derivedAfter',
] as const satisfies (keyof Manoeuvre)[];

type PlannedManoeuvre = Pick<Manoeuvre, (typeof planned)[number]>;

/** What of a stock examination the planner and the head of its sheet need. */
const stock = [
  'id',
  'version',
  'title',
  'purpose',
  'leavesOut',
  'mustNotMiss',
  'scopes',
  'manoeuvres',
  'start',
] as const satisfies (keyof FormDefinition)[];

type StockExam = Pick<FormDefinition, (typeof stock)[number]>;

/** The part of the Library that the page of run sheets is given. */
export interface PlanSlice {
  /** Of the Library. */
  version: string;
  /** Systems in order of examination. */
  protocols: { id: string; title: string; manoeuvres: PlannedManoeuvre[] }[];
  /** In the order in which they are offered. */
  forms: StockExam[];
  positions: Library['positions'];
  exposures: Library['exposures'];
  instruments: Library['instruments'];
  examinerPlaces: Library['examinerPlaces'];
  /** What is kept first when there is too little time; the reasons are left at home. */
  priorities: Library['priorities'];
}

/** Cuts the slice; `forms` says which stock examinations are offered, in order. */
export function planSlice(library: Library, forms: readonly FormDefinition[]): PlanSlice {
  const { version, protocols, positions, exposures, instruments, examinerPlaces, priorities } = library;
  return {
    version,
    protocols: protocols.map(({ id, title, manoeuvres }) => ({
      id,
      title,
      manoeuvres: manoeuvres.map((one) => pick(one, planned)),
    })),
    forms: forms.map((form) => pick(form, stock)),
    positions,
    exposures,
    instruments,
    examinerPlaces,
    priorities: priorities.map((rung) => ({ ...rung, why: '' })),
  };
}

function pick<Whole extends object, Key extends keyof Whole>(whole: Whole, keys: readonly Key[]): Pick<Whole, Key> {
  return Object.fromEntries(keys.flatMap((key) => (key in whole ? [[key, whole[key]]] : []))) as Pick<Whole, Key>;
}

/** A Library for the planner, which reads nothing but what the slice holds; all else is left empty. */
export function libraryOf({ protocols, forms, ...vocabulary }: PlanSlice): Library {
  return {
    ...emptyLibrary,
    ...vocabulary,
    protocols: protocols.map(({ id, title, manoeuvres }, order) => ({
      ...emptyProtocol,
      ...{ id, title, system: id, order },
      manoeuvres: manoeuvres.map((one) => ({ ...emptyManoeuvre, ...one })),
    })),
    forms: forms.map((form) => ({ ...emptyForm, ...form })),
  };
}

const nowhere = { file: '', line: 1, column: 1 };

const emptyLibrary = {
  ...{ hash: '', systems: [], guides: [], landmarks: [], tools: [], values: [], scales: [] },
  ...{ evidence: [], sources: [], cardSets: [], clinics: [] },
};

const emptyProtocol = {
  ...{ summary: '', author: '', reviewer: '', reviewed: '', reviewDue: '' },
  ...{ sources: [], opening: [], place: nowhere },
};

const emptyManoeuvre = {
  ...{ synonyms: [], sources: [], aim: [], tell: [], technique: [], normal: [], abnormal: [], redFlags: [] },
  ...{ cautions: [], errors: [], adaptations: [], card: [], records: [], place: nowhere },
};

const emptyForm = { url: '', publisher: '', copyright: '', author: '', drafted: '' };
