import type { z } from 'zod';
import type { Library } from '../../schemas/library.ts';
import { planRequest, type PlanRequest } from '../../schemas/plan.ts';
import { sortFaults, type At, type Fault } from '../library/faults.ts';
import { reportIssues } from '../library/schema-faults.ts';
import { didYouMean } from '../library/suggest.ts';

/** What came of checking a request. */
export interface CheckedRequest {
  /** Present only when there is no fault. */
  request?: PlanRequest;
  /** Every fault, in reading order. */
  faults: Fault[];
}

/** Where a part of the request is written. */
export type PlaceOf = (path: readonly PropertyKey[]) => At;

const nowhere: PlaceOf = () => ({ file: 'request', line: 1, column: 1 });

/** The three ways to say what is examined. */
const choices = ['form', 'manoeuvres', 'systems'] as const;

/**
 * Checks what may be a run-sheet request: its keys and types against the schema, its ids against the library.
 * @param placeOf finds a part of the request in the text it came from; line 1, column 1 by default
 */
export function checkRequest(library: Library, value: unknown, placeOf: PlaceOf = nowhere): CheckedRequest {
  const faults: Fault[] = [];
  const report = (path: readonly PropertyKey[], rule: string, message: string): void =>
    void faults.push({ ...placeOf(path), rule, message });
  const parsed = planRequest.safeParse(value);
  if (!isGroup(value))
    report([], 'schema', `The request is ${named(value)}; expected a group of keys such as ${example}.`);
  else {
    reportShape(parsed.error?.issues ?? [], value, placeOf, faults);
    reportChoice(value, report);
    reportIds(library, value, report);
  }
  return parsed.data === undefined || faults.length > 0
    ? { faults: sortFaults(faults) }
    : { request: parsed.data, faults };
}

const example = '{ "form": "adult-screening" }';

type Report = (path: readonly PropertyKey[], rule: string, message: string) => void;

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const named = (value: unknown): string =>
  Array.isArray(value) ? 'a list' : typeof value === 'string' ? `"${value}"` : String(value);

/** Files what the schema found, apart from what is said better below: ids that are none, and no or several choices. */
function reportShape(issues: readonly z.core.$ZodIssue[], value: unknown, placeOf: PlaceOf, faults: Fault[]): void {
  const rest: z.core.$ZodIssue[] = [];
  for (const issue of issues) {
    const key = `"${issue.path.map(String).join('.')}"`;
    if (issue.code === 'too_small') {
      const message = issue.origin === 'array' ? `${key} is empty; name at least one id.` : `${key} must be above 0.`;
      faults.push({ ...placeOf(issue.path), rule: 'schema', message });
    } else if (issue.code !== 'custom' && issue.code !== 'invalid_format') rest.push(issue);
  }
  reportIssues(rest, planRequest, value, placeOf, (at, rule, message) => void faults.push({ ...at, rule, message }));
}

function reportChoice(value: Record<string, unknown>, report: Report): void {
  const given = choices.filter((key) => value[key] !== undefined);
  const [, second] = given;
  if (given.length === 0) {
    report(
      [],
      'choice',
      `Nothing says what to examine. Give one of "form", "manoeuvres" and "systems", for example ${example}.`,
    );
  } else if (second !== undefined) {
    const keys = given.map((key) => `"${key}"`).join(' and ');
    report([second], 'choice', `${keys} are given together. Give exactly one of "form", "manoeuvres" and "systems".`);
  }
}

interface Noun {
  name: string;
  ids: string[];
}

function reportIds(library: Library, value: Record<string, unknown>, report: Report): void {
  const noun = (name: string, entries: readonly { id: string }[]): Noun => ({ name, ids: entries.map(({ id }) => id) });
  const positions = noun('position', library.positions);
  const manoeuvres = noun(
    'manoeuvre',
    library.protocols.flatMap((protocol) => protocol.manoeuvres),
  );
  const nouns: Record<string, Noun> = {
    form: noun('form', library.forms),
    systems: noun('system', library.protocols),
    manoeuvres,
    last: manoeuvres,
    start: positions,
    cannot: positions,
    without: noun('instrument', library.instruments),
  };
  for (const [key, { name, ids }] of Object.entries(nouns)) {
    const given = value[key];
    if (key === 'form' || key === 'start') reportId([key], given, name, ids, report);
    else if (Array.isArray(given)) given.forEach((id: unknown, i) => reportId([key, i], id, name, ids, report));
  }
}

/** As many known ids are listed when none is near. */
const fewEnough = 12;

/** Files an id that is not known; what is no text at all is the schema's to report. */
function reportId(path: PropertyKey[], id: unknown, noun: string, known: readonly string[], report: Report): void {
  if (typeof id !== 'string' || known.includes(id)) return;
  const near = didYouMean(id, known);
  const list = near === '' && known.length > 0 && known.length <= fewEnough ? ` Known: ${known.join(', ')}.` : near;
  report(path, 'unknown-id', `${noun} "${id}" is not known.${list}`);
}
