import type { ClinicCheck } from './clinic-check.ts';

/** Each urgency has one entry, and an entry says whom to call. */
export const contacts: ClinicCheck = ({ value, at }, _content, report) => {
  value.contacts.forEach(({ urgency, day, outOfHours }, index) => {
    const first = value.contacts.findIndex((each) => each.urgency === urgency);
    if (first < index)
      report(
        at(['contacts', index, 'urgency']),
        `The contacts for "${urgency}" are given already, in entry ${first + 1}. Keep one entry for each urgency.`,
      );
    if (day === undefined && outOfHours === undefined)
      report(
        at(['contacts', index, 'urgency']),
        `The contacts for "${urgency}" name nobody. Write "day", "outOfHours" or both, or leave the entry out: blank lines are printed then.`,
      );
  });
};
