import type { Rule } from './rule.ts';

/** Reviews are kept up. */
export const overdueReview: Rule = {
  name: 'overdue-review',
  description:
    'A page whose review is due, or dated after today, earns a warning, not a fault: its text may still be right.',
  level: 'warning',
  check({ protocols, today }, report) {
    for (const { value, key } of protocols) {
      if (value.reviewDue <= value.reviewed)
        report(key(['reviewDue']), `reviewDue ${value.reviewDue} is not after reviewed ${value.reviewed}.`);
      else if (today !== undefined && value.reviewed > today)
        report(key(['reviewed']), `reviewed ${value.reviewed} is still to come. Write the day of the last review.`);
      else if (today !== undefined && value.reviewDue < today) {
        report(
          key(['reviewDue']),
          `The review of "${value.title}" was due on ${value.reviewDue}. Read it again, then set "reviewed" and "reviewDue".`,
        );
      }
    }
  },
};
