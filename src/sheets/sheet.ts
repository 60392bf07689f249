import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Library } from '../../schemas/library.ts';
import type { Plan } from '../../schemas/plan.ts';
import { canonicalJson, sha256 } from '../library/hash.ts';
import { coverAtEnd, instrumentsToLayOut } from '../plan/blocks.ts';
import { headToToe } from '../plan/head-to-toe.ts';
import { planRequest } from '../plan/plan.ts';
import { stockRequest } from '../plan/stock-request.ts';
import { systemBySystem } from '../plan/system-by-system.ts';
import { checkedWords, contactRows, contactsTitle } from '../text/contacts.ts';
import { byId } from '../text/references.ts';
import { durationText, midSentence } from '../text/words.ts';
import { sheetBlocks } from './blocks.ts';
import { comparedWords, proofText } from './proof-words.ts';
import type { RunSheet, SheetBlock } from './run-sheet.ts';
import { sheetStrip } from './strip.ts';
import { uncovering } from './uncovering.ts';
import { closed, labelsOf, minutesWords, set } from './words.ts';

/** The run sheet of a stock exam as it is printed. Throws when the library has no such form. */
export function runSheet(library: Library, formId: string): RunSheet {
  const form = byId(library.forms, formId);
  // Without a limit of time: the same content gives the same sheet on every machine.
  const request = stockRequest(form);
  const plan = planRequest(library, request, { milliseconds: Infinity });
  const compared = comparedWords(headToToe(library, request, plan), systemBySystem(library, request, plan));
  const content = { ...headOf(form), ...planned(library, plan, compared), ...clinicOf(library) };
  const code = sha256(canonicalJson(content)).slice(0, 8);
  return { ...content, edition: `${ownerOf(library)}${form.id} ${form.version}, library ${library.version}`, code };
}

const ownerOf = ({ clinic }: Library): string => (clinic === undefined ? '' : `${clinic.short ?? clinic.name}: `);

function clinicOf({ clinic }: Library): Pick<RunSheet, 'clinic'> {
  if (clinic === undefined) return {};
  const rows = contactRows(clinic);
  return { clinic: { name: clinic.name, title: contactsTitle(clinic), rows, checked: checkedWords(clinic) } };
}

function headOf(form: FormDefinition): Pick<RunSheet, 'id' | 'title' | 'purpose' | 'leavesOut' | 'mustNotMiss'> {
  return {
    id: form.id,
    title: set(form.title),
    purpose: set(form.purpose),
    leavesOut: set(form.leavesOut),
    mustNotMiss: form.mustNotMiss.map(set),
  };
}

type Planned = Pick<
  RunSheet,
  'inAll' | 'compared' | 'layOut' | 'strip' | 'blocks' | 'uncovering' | 'coverAtEnd' | 'leftOut'
>;

function planned(library: Library, plan: Plan, compared: string): Planned {
  const blocks = sheetBlocks(library, plan);
  const bare = coverAtEnd(plan);
  return {
    inAll: inAll(plan, blocks),
    compared: `${proofText(plan)} ${compared}`,
    layOut: instrumentsToLayOut(library, plan).map(({ label, singleUse }) =>
      singleUse ? `${label}, single use` : label,
    ),
    strip: sheetStrip(library, plan),
    blocks,
    uncovering: uncovering(library, plan),
    ...(bare.length > 0 ? { coverAtEnd: labelsOf(library.exposures, bare) } : {}),
    leftOut: plan.leftOut.map(({ manoeuvre, reason }) => `${titleOf(library, manoeuvre)}: ${closed(reason)}`),
  };
}

const titleOf = ({ protocols }: Library, id: string): string =>
  set(
    byId(
      protocols.flatMap(({ manoeuvres }) => manoeuvres),
      id,
    ).title,
  );

function inAll({ totals }: Plan, blocks: readonly SheetBlock[]): string {
  const { positionChanges, positionSeconds, seconds } = totals;
  const route = blocks.map(({ position }) => midSentence(position)).join(', then ');
  const time = `${minutesWords(seconds)} for an experienced examiner and a well adult`;
  if (positionChanges === 0) return `${time}; ${route} throughout.`;
  const changes = positionChanges === 1 ? '1 change of position' : `${positionChanges} changes of position`;
  return `${time}; ${changes}: ${route}; moving takes an able adult ${durationText(Math.round(positionSeconds))}.`;
}
