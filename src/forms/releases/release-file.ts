import { z } from 'zod';
import { form as formSchema, type Form } from '../../../schemas/form.ts';
import { version } from '../../../schemas/common.ts';
import type { At, Fault } from '../../library/faults.ts';
import { canonicalJson, sha256 } from '../../library/hash.ts';
import { formHash } from '../form-hash.ts';
import { packForm, type PackedForm, unpackForm } from './packing.ts';

/** A frozen release: the form as it was signed off, its seal, and the seal of the release before it. */
export interface Release {
  form: Form;
  /** SHA-256, as hex, of the form and of what it follows: a later edit of any part breaks it. */
  seal: string;
  /** Version and seal of the release before: one that was edited or deleted breaks the chain. */
  follows?: { version: string; seal: string };
}

const outer = z.strictObject({
  seal: z.string(),
  follows: z.strictObject({ version, seal: z.string() }).optional(),
  form: z.looseObject({}),
});

/** Seals a form as the release after another. */
export function sealed(form: Form, follows?: Release['follows']): Release {
  return { form, seal: sealOf(form, follows), ...(follows && { follows }) };
}

const sealOf = (form: Form, follows: Release['follows']): string => sha256(canonicalJson({ form, follows }));

/** Name of a release's file: `adult-screening@1.0.0.json`. */
export const releaseFileName = ({ id, version: number }: Pick<Form, 'id' | 'version'>): string =>
  `${id}@${number}.json`;

/** Text of a release's file: a line an item, so that it can be read and stays small. Throws when packing would lose anything. */
export function releaseText({ form, seal, follows }: Release): string {
  const packed = packForm(form);
  if (canonicalJson(unpackForm(packed)) !== canonicalJson(form))
    throw new Error(`The release ${form.id} ${form.version} cannot be packed without loss.`);
  return `${indented({ seal, ...(follows && { follows }), form: packed }, 5)}\n`;
}

/** As long as a line may be before its parts get lines of their own, unless it is an item. */
const longLine = 400;

/** JSON with a line for each part down to a depth, but for what is short. */
function indented(value: unknown, depth: number, space = ''): string {
  const line = JSON.stringify(value);
  if (depth === 0 || line.length <= longLine || typeof value !== 'object' || value === null) return line;
  const inner = `${space} `;
  const list = Array.isArray(value);
  const parts = list
    ? value.map((part) => indented(part, depth - 1, inner))
    : Object.entries(value)
        .filter(([, part]) => part !== undefined)
        .map(([key, part]) => `${JSON.stringify(key)}: ${indented(part, depth - 1, inner)}`);
  const [open, close] = list ? ['[', ']'] : ['{', '}'];
  return `${open}\n${inner}${parts.join(`,\n${inner}`)}\n${space}${close}`;
}

/** Reads a release's file; whatever does not hold of it is a fault that names the file. */
export function readRelease(file: string, name: string, text: string): { release?: Release; faults: Fault[] } {
  const at: At = { file, line: 1, column: 1 };
  const fault = (message: string): { faults: Fault[] } => ({ faults: [{ ...at, rule: 'released', message }] });
  try {
    const { seal, follows, form: packed } = outer.parse(JSON.parse(text));
    const form = formSchema.parse(unpackForm(packed as unknown as PackedForm));
    const release: Release = { form, seal, ...(follows && { follows }) };
    const broken = brokenSeal(release, name);
    return broken === undefined ? { release, faults: [] } : fault(broken);
  } catch (error) {
    if (!(error instanceof SyntaxError || error instanceof TypeError || error instanceof z.ZodError)) throw error;
    return fault(`${edited} It is not a release that can be read: ${firstIssue(error)}.`);
  }
}

const edited = 'A released file is never edited: restore it from the history and release a new version instead.';

function firstIssue(error: Error): string {
  if (!(error instanceof z.ZodError)) return error.message;
  const [issue] = error.issues;
  return issue === undefined ? 'nothing in it fits' : `"${issue.path.join('.')}" ${issue.message}`;
}

function brokenSeal({ form, seal, follows }: Release, name: string): string | undefined {
  if (seal !== sealOf(form, follows)) return `${edited} Its text is not what was sealed.`;
  if (form.hash !== formHash(form)) return `${edited} Its hash is not that of its content.`;
  if (form.status !== 'active' || form.signOff === undefined) return `${edited} It is not signed off.`;
  if (name !== releaseFileName(form)) return `The file holds ${releaseFileName(form)}. Give it that name back.`;
  return undefined;
}
