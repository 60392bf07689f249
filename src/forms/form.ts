import type { Form } from '../../schemas/form.ts';
import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Library } from '../../schemas/library.ts';
import type { PlanStep } from '../../schemas/plan.ts';
import { planRequest } from '../plan/plan.ts';
import { stockRequest } from '../plan/stock-request.ts';
import { formHash } from './form-hash.ts';
import { loincNotice } from './loinc.ts';
import { positionsOf } from './positions.ts';
import { sectionsOf } from './sections.ts';
import { sourcesOf } from './sources.ts';

/** Gives the steps of an examination in the order in which they are done. */
export type Order = (library: Library, formId: string) => readonly PlanStep[];

/**
 * The draft of a form: the one value that every format is rendered from, in run-sheet order, in plain text throughout.
 * Throws when the library has no such form, or when the run sheet can't hold all of it.
 */
export function buildForm(library: Library, formId: string, order: Order = runSheetOrder): Form {
  const definition = definitionOf(library, formId);
  const sections = sectionsOf(library, order(library, formId));
  const positions = positionsOf(library, sections);
  const content = { ...identityOf(definition), copyright: copyrightOf(definition, sections), sections, positions };
  return { ...content, hash: formHash(content), sources: sourcesOf(library, sections) };
}

function definitionOf(library: Library, formId: string): FormDefinition {
  const definition = library.forms.find(({ id }) => id === formId);
  if (definition !== undefined) return definition;
  throw new Error(`There is no form "${formId}"; forms are ${library.forms.map(({ id }) => id).join(', ')}.`);
}

function identityOf(definition: FormDefinition): Omit<Form, 'hash' | 'sections' | 'copyright' | 'positions'> {
  const { id, title, purpose, leavesOut, mustNotMiss, url, version, publisher, drafted } = definition;
  return { id, title, purpose, leavesOut, mustNotMiss, url, version, status: 'draft', date: drafted, publisher };
}

/** LOINC's notice stands wherever one of its codes does. */
function copyrightOf({ copyright }: FormDefinition, sections: Form['sections']): string {
  const fields = sections.flatMap(({ items }) => items.flatMap((item) => item.fields));
  return fields.some(({ code }) => code !== undefined) ? `${copyright} ${loincNotice}` : copyright;
}

function runSheetOrder(library: Library, formId: string): readonly PlanStep[] {
  // Without a limit of time: the same content gives the same form on every machine.
  const { steps, leftOut } = planRequest(library, stockRequest(definitionOf(library, formId)), {
    milliseconds: Infinity,
  });
  if (leftOut.length === 0) return steps;
  const missing = leftOut.map(({ manoeuvre, reason }) => `${manoeuvre} (${reason})`);
  throw new Error(`The run sheet of form "${formId}" can't hold ${missing.join(', ')}.`);
}
