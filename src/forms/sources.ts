import type { FormSection, FormSource } from '../../schemas/form.ts';
import type { Inline } from '../../schemas/inline.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Source } from '../../schemas/source.ts';

/** The sources of everything that a form's sections hold, each once, by id: of the manoeuvres, their scales and figures. */
export function sourcesOf(library: Library, sections: readonly FormSection[]): FormSource[] {
  const held = new Set(sections.flatMap(({ items }) => items.map(({ manoeuvre }) => manoeuvre)));
  const manoeuvres = library.protocols.flatMap((protocol) => protocol.manoeuvres).filter(({ id }) => held.has(id));
  const ids = new Set(manoeuvres.flatMap((manoeuvre) => [...manoeuvre.sources, ...figureSources(library, manoeuvre)]));
  return library.sources
    .filter(({ id }) => ids.has(id))
    .map((source) => ({ id: source.id, citation: fullCitation(source), status: source.status }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Sources of the figures and scales that the form shows: those of its fields and of its safety lines. */
function figureSources(library: Library, { records, cautions, redFlags }: Manoeuvre): string[] {
  const normals = records.flatMap((record) => (record.kind === 'finding' ? record.normal : []));
  const prose = [...cautions, ...redFlags.flatMap(({ finding, action }) => [finding, action])].flat();
  const named = [...prose, ...normals].flatMap(figureIds);
  const recorded = records.flatMap((record) => {
    if (record.kind === 'scale') return [record.scale];
    return record.kind === 'quantity' && record.value !== undefined ? [record.value] : [];
  });
  const ids = new Set([...named, ...recorded]);
  return [...library.values, ...library.scales].filter(({ id }) => ids.has(id)).map(({ source }) => source);
}

function figureIds(part: Inline): string[] {
  if ('children' in part) return part.children.flatMap(figureIds);
  return part.type === 'value' || part.type === 'scale' ? [part.id] : [];
}

/** A source in words: authors, title, where published, and where in it the facts stand. */
export function fullCitation({ kind, authors, title, container, year, where, doi, url }: Source): string {
  const parts = kind === 'practice' ? [title, where] : [authors, title, published(container, year), where];
  const place = doi === undefined ? url : `doi ${doi}`;
  return [...parts, place]
    .filter((part) => part !== undefined && part !== '')
    .map((part) => String(part).replace(/\.$/, ''))
    .join('. ');
}

const published = (container: string | undefined, year: number | undefined): string =>
  [container, year].filter((part) => part !== undefined).join(', ');
