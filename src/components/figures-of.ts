import type { Inline, Line } from '../../schemas/inline.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Record } from '../../schemas/record.ts';

/** Ids of what an entry refers to, each once, in the order in which they come. */
export interface ReferredIds {
  values: string[];
  scales: string[];
  evidence: string[];
  tools: string[];
  sources: string[];
}

/** Returns the ids that a manoeuvre refers to in its prose, its records and its list of sources. */
export function referredIds(manoeuvre: Manoeuvre): ReferredIds {
  const inlines = linesOf(manoeuvre).flat().flatMap(flattened);
  const ids = (type: Inline['type']) =>
    inlines.flatMap((part) => ('id' in part && part.type === type ? [part.id] : []));
  const linked = inlines.flatMap((part) => (part.type === 'link' && part.to.kind === 'source' ? [part.to.id] : []));
  return {
    values: once([...ids('value'), ...manoeuvre.records.flatMap(recordValue)]),
    scales: once([...ids('scale'), ...manoeuvre.records.flatMap(recordScale)]),
    evidence: once(ids('evidence')),
    tools: once(ids('measure')),
    sources: once([...manoeuvre.sources, ...linked]),
  };
}

function linesOf(m: Manoeuvre): Line[] {
  const flags = m.redFlags.flatMap(({ finding, action }) => [finding, action]);
  const normals = m.records.flatMap((record) => (record.kind === 'finding' ? [record.normal] : []));
  const lists = [
    m.tell,
    m.technique,
    m.normal,
    m.abnormal,
    flags,
    m.cautions,
    m.errors,
    m.adaptations,
    m.card,
    normals,
  ];
  return [m.aim, ...lists.flat(), m.noRedFlag ?? []];
}

function flattened(part: Inline): Inline[] {
  return 'children' in part ? [part, ...part.children.flatMap(flattened)] : [part];
}

const recordValue = (record: Record): string[] => (record.kind === 'quantity' && record.value ? [record.value] : []);
const recordScale = (record: Record): string[] => (record.kind === 'scale' ? [record.scale] : []);
const once = (ids: string[]): string[] => [...new Set(ids)];
