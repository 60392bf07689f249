import { added } from '../clinic/added.ts';
import type { ClinicCheck } from '../clinic/clinic-check.ts';
import { contacts } from '../clinic/contacts.ts';
import { hidden } from '../clinic/hidden.ts';
import { identity } from '../clinic/identity.ts';
import { order } from '../clinic/order.ts';
import { ownForms } from '../clinic/own-forms.ts';
import type { Rule } from './rule.ts';

const checks: readonly ClinicCheck[] = [identity, contacts, hidden, order, ownForms, added];

/** Editions add, hide and reorder without touching what is shared, and hide nothing that keeps a patient safe. */
export const clinics: Rule = {
  name: 'clinic',
  description:
    "A clinic's edition is found by its folder, names each contact once, contradicts no order, prefixes what it adds, and hides nothing that keeps a patient safe.",
  check(content, report) {
    for (const entry of content.tables.clinics) for (const check of checks) check(entry, content, report);
  },
};
