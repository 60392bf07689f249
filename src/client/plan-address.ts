import type { PlanRequest } from '../../schemas/plan.ts';

/** What a link may name: ids by noun. */
export interface KnownIds {
  form: ReadonlySet<string>;
  systems: ReadonlySet<string>;
  manoeuvres: ReadonlySet<string>;
  positions: ReadonlySet<string>;
  instruments: ReadonlySet<string>;
}

/** The parts of a request that tell something of the patient or the room: they go into a link only when that is asked for. */
export const patientLimits = [
  'start',
  'without',
  'cannot',
  'avoidSides',
  'last',
  'pace',
] as const satisfies (keyof PlanRequest)[];

/** The same request without what it tells of the patient and the room. */
export function withoutLimits(request: PlanRequest): PlanRequest {
  const open = Object.entries(request).filter(([key]) => !(patientLimits as readonly string[]).includes(key));
  return Object.fromEntries(open);
}

/** A request as what stands behind `#`: `form=adult-screening&start=sitting`; lists with full stops between ids. */
export function requestToHash(request: PlanRequest): string {
  return Object.entries(request)
    .flatMap(([key, value]) => {
      const text = Array.isArray(value) ? value.join('.') : String(value ?? '');
      return text === '' ? [] : [`${key}=${text}`];
    })
    .join('&');
}

/** What stands behind `#` of an address, put back where a mailer wrote it in escapes. */
export function behindHash(hash: string): string {
  try {
    return decodeURIComponent(hash.slice(1));
  } catch {
    return hash.slice(1);
  }
}

/** Whether what stands behind `#` is meant as a request; if not, it is a place on the page. */
export const isRequest = (hash: string): boolean => hash.includes('=');

/** Most minutes, and slowest pace, that a request may ask for. */
export const limits = { minutes: 600, pace: 100 } as const;

/** Takes a request from behind `#`; undefined when any part of it is damaged or not known here. */
export function requestFromHash(hash: string, known: KnownIds): PlanRequest | undefined {
  const pairs = hash.split('&').map((pair) => pair.split('='));
  const keys = pairs.map(([key]) => key);
  const request: PlanRequest = {};
  for (const [key = '', text = '', ...more] of pairs) {
    const part = more.length === 0 ? partOf(key, text, known) : undefined;
    if (part === undefined) return undefined;
    Object.assign(request, part);
  }
  const choices = [request.form, request.systems, request.manoeuvres].filter((choice) => choice !== undefined);
  return choices.length === 1 && new Set(keys).size === keys.length ? request : undefined;
}

function partOf(key: string, text: string, known: KnownIds): PlanRequest | undefined {
  const one = (ids: ReadonlySet<string>): PlanRequest | undefined => (ids.has(text) ? { [key]: text } : undefined);
  const some = (ids: ReadonlySet<string>): PlanRequest | undefined => {
    const list = text.split('.');
    return list.every((id) => ids.has(id)) ? { [key]: [...new Set(list)] } : undefined;
  };
  const number = (most: number): PlanRequest | undefined => {
    const value = /^\d+(\.\d+)?$/.test(text) ? Number(text) : 0;
    return value > 0 && value <= most ? { [key]: value } : undefined;
  };
  const parts: Record<string, () => PlanRequest | undefined> = {
    form: () => one(known.form),
    systems: () => some(known.systems),
    manoeuvres: () => some(known.manoeuvres),
    start: () => one(known.positions),
    cannot: () => some(known.positions),
    without: () => some(known.instruments),
    last: () => some(known.manoeuvres),
    avoidSides: () => some(new Set(['left', 'right'])),
    minutes: () => number(limits.minutes),
    pace: () => number(limits.pace),
  };
  return Object.hasOwn(parts, key) ? parts[key]?.() : undefined;
}
