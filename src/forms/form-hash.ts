import type { Form } from '../../schemas/form.ts';
import { canonicalJson, sha256 } from '../library/hash.ts';

/** Parts of a form that may change without changing what it asks. */
const unhashed = new Set([
  'hash',
  'version',
  'status',
  'date',
  'publisher',
  'sources',
  'clinic',
  'signOff',
  'withdrawal',
]);

/** SHA-256, as hex, of a form's canonical JSON without version, status, date, publisher, sources, imprint, sign-off and withdrawal. */
export function formHash(form: Omit<Form, 'hash'>): string {
  const content = Object.entries(form).filter(([key]) => !unhashed.has(key));
  return sha256(canonicalJson(Object.fromEntries(content)));
}

export { shortCode } from './edition.ts';
