import type { Clinic, ClinicEdition } from '../../schemas/clinic.ts';
import type { Library } from '../../schemas/library.ts';
import type { Protocol } from '../../schemas/protocol.ts';
import type { Content, TableName } from './content.ts';
import { canonicalJson, sha256 } from './hash.ts';
import { deriveOrders } from './orders.ts';

/** Joins checked content into one frozen Library: pages in order, orders by rule added, hashed. */
export function linkLibrary(content: Content, version: string): Library {
  const unhashed = {
    version,
    ...tablesOf(content),
    clinics: content.tables.clinics.map(({ value }) => drawnClinic(value, content)),
    guides: content.guides.map(({ value }) => value).sort((a, b) => a.order - b.order),
    protocols: linkProtocols(content),
  };
  // Editions lie over the library and are no part of it: adding one leaves its hash, and every card, as it is.
  return freeze({ ...unhashed, hash: sha256(canonicalJson(withoutPlaces({ ...unhashed, clinics: [] }))) });
}

function drawnClinic(clinic: Clinic, { drawings }: Content): ClinicEdition {
  const drawing = clinic.logo === undefined ? undefined : drawings.get(`clinics/${clinic.id}/${clinic.logo}`);
  return { ...clinic, ...(drawing !== undefined && { drawing }) };
}

function tablesOf({ tables }: Content): Pick<Library, TableName> {
  const entries = (Object.keys(tables) as TableName[]).map((name) => [name, tables[name].map(({ value }) => value)]);
  return Object.fromEntries(entries) as Pick<Library, TableName>;
}

function linkProtocols(content: Content): Protocol[] {
  const protocols = content.protocols.map(({ value }) => value).sort((a, b) => a.order - b.order);
  const derived = deriveOrders(protocols.flatMap(({ manoeuvres }) => manoeuvres));
  return protocols.map((protocol) => ({
    ...protocol,
    manoeuvres: protocol.manoeuvres.map((one) => ({
      ...one,
      derivedAfter: (derived.get(one.id) ?? []).filter((id) => !one.after.includes(id)),
    })),
  }));
}

/** Places say where content was written, which must not change its hash. */
function withoutPlaces(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value, (key, part: unknown) => (key === 'place' ? undefined : part))) as unknown;
}

/** Freezes a value and all that it holds. */
export function freeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(freeze);
  }
  return value;
}
