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
    guides: content.guides.map(({ value }) => value).sort((a, b) => a.order - b.order),
    protocols: linkProtocols(content),
  };
  return freeze({ ...unhashed, hash: sha256(canonicalJson(withoutPlaces(unhashed))) });
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

function freeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(freeze);
  }
  return value;
}
