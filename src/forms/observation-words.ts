/** How an item was done, as an observer marks it; nothing is marked for the observer. */
export type Rating = 'described' | 'differs' | 'not-seen';

/** The marks in the order shown, with what each means. */
export const ratings: readonly { code: Rating; label: string; meaning: string }[] = [
  { code: 'described', label: 'As described', meaning: 'done in the way that the page of the manoeuvre describes' },
  { code: 'differs', label: 'Differs', meaning: 'done in another way: write how, whether better or worse' },
  { code: 'not-seen', label: 'Not seen', meaning: 'left out, or out of the observer’s sight' },
];

/** The further mark, which goes with any of them. */
export const prompted = { label: 'Prompted', meaning: 'the observer had to say or hint that it should be done' };

/** What a mark at an item means. */
export const criticalWords =
  'Safety-critical: a sensitive examination, one in which the patient stands, consent, the end, or one that can show what must be acted on now and that has a caution saying never or stop. The observer steps in at once where it is about to go wrong, and says so on the sheet. An item without the mark can harm too.';

/** The judgement of the whole: made first, by itself, and never a sum of the items. */
export const judgement = {
  label: 'Judgement of the whole',
  meaning:
    'Made before the items are counted, from the patient’s safety and comfort and from whether the findings could be relied on. It is no sum of the items: one unsafe act can outweigh all of them.',
  options: [
    { code: 'safe', label: 'Safe, and the findings can be relied on' },
    { code: 'safe-with-gaps', label: 'Safe, but some findings must be checked by another' },
    { code: 'not-safe', label: 'Not safe yet: only with somebody who can step in' },
  ],
} as const;

/** Lines for words, in the order asked. */
export const remarks = [
  { code: 'went-well', label: 'What went well' },
  { code: 'next-time', label: 'What to do otherwise next time' },
  { code: 'stepped-in', label: 'Where the observer stepped in, and why' },
] as const;

/** What the head of a sheet asks for; of the patient, nothing. */
export const headLines = [
  { code: 'learner', label: 'Learner' },
  { code: 'observer', label: 'Observer, role' },
  { code: 'date', label: 'Date, time' },
  { code: 'place', label: 'Place' },
] as const;

/** Said at the head of every sheet. */
export const watchNotice =
  'No patient’s name or number on this sheet. The patient agrees beforehand to being examined by a learner and to being watched, and may end both at any time. A learner’s sheet is personal data: kept, shown and destroyed by the local rules.';
