import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Value } from '../../schemas/value.ts';
import { referredIds, type ReferredIds } from './figures-of.ts';

/** Where the entries of the library's tables are used. Keys are ids. */
export interface Usage {
  /** Manoeuvres that refer to each, by kind of entry. */
  by: { [kind in keyof ReferredIds]: Map<string, Manoeuvre[]> };
  /** Values, scales, evidence and tools that rest on each source: kind and id. */
  tables: Map<string, { kind: 'value' | 'scale' | 'evidence' | 'measure'; id: string; label: string }[]>;
}

/** Reads the whole library once and returns where each value, scale, evidence entry, tool and source is used. */
export function usageOf(library: Library): Usage {
  const by: Usage['by'] = {
    values: new Map(),
    scales: new Map(),
    evidence: new Map(),
    tools: new Map(),
    sources: new Map(),
  };
  for (const manoeuvre of library.protocols.flatMap(({ manoeuvres }) => manoeuvres)) {
    const referred = referredIds(manoeuvre);
    for (const kind of Object.keys(by) as (keyof ReferredIds)[]) {
      for (const id of referred[kind]) add(by[kind], id, manoeuvre);
    }
  }
  return { by, tables: tablesBySource(library) };
}

function tablesBySource({ values, scales, evidence, tools }: Library): Usage['tables'] {
  const tables: Usage['tables'] = new Map();
  for (const value of values) {
    for (const source of valueSources(value)) add(tables, source, { kind: 'value', id: value.id, label: value.label });
  }
  for (const { id, title, source } of scales) add(tables, source, { kind: 'scale', id, label: title });
  for (const { id, finding, condition, source } of evidence) {
    add(tables, source, { kind: 'evidence', id, label: `${finding}: ${condition}` });
  }
  for (const { id, title, sources } of tools) {
    for (const source of sources) add(tables, source, { kind: 'measure', id, label: title });
  }
  return tables;
}

const valueSources = (value: Value): Set<string> =>
  new Set([value.source, ...value.others.map(({ source }) => source)]);

function add<T>(lists: Map<string, T[]>, key: string, entry: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [entry]);
  else list.push(entry);
}
