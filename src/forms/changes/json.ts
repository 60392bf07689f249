import type { Form } from '../../../schemas/form.ts';
import { type Change, sizeOf } from './change.ts';
import { formChanges } from './form-changes.ts';

/** One version of a form as a list of changes names it. */
type Named = Pick<Form, 'id' | 'version' | 'status' | 'hash'>;

/** What changed, for machines; `from` and `size` are null where there is nothing before or nothing changed. */
export interface ChangesJson {
  from: Named | null;
  to: Named;
  size: Change['size'] | null;
  changes: Change[];
}

/** The changes from one version of a form to another; none for a first release. */
export function changesJson(before: Form | undefined, after: Form): ChangesJson {
  const changes = before === undefined ? [] : formChanges(before, after);
  return {
    from: before === undefined ? null : named(before),
    to: named(after),
    size: sizeOf(changes) ?? null,
    changes,
  };
}

const named = ({ id, version, status, hash }: Form): Named => ({ id, version, status, hash });
