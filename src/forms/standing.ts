import type { Form } from '../../schemas/form.ts';

/** Whether a form may be used, by whose word, and until when, in sentences. */
export function standingWords({ status, signOff, withdrawal }: Form): string {
  if (withdrawal !== undefined) {
    const { withdrawn, by, reason, replacement } = withdrawal;
    const instead = replacement === undefined ? 'Nothing replaces it.' : `Use version ${replacement} in its place.`;
    return `Withdrawn on ${withdrawn} by ${by}: ${reason.replace(/\.$/, '')}. Do not use it. ${instead}`;
  }
  if (status === 'retired') return 'Withdrawn. Do not use it.';
  if (signOff === undefined) return 'Draft: not signed off, and changed without notice. Do not put it into use.';
  const { author, reviewer, approver, approved, reviewDue } = signOff;
  return `Written by ${author}, reviewed by ${reviewer}, approved by ${approver} on ${approved}. Review due ${reviewDue}.`;
}
