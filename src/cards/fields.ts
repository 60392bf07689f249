import type { Library } from '../../schemas/library.ts';
import type { Record } from '../../schemas/record.ts';
import { unitLabel } from '../text/numbers.ts';
import { byId } from '../text/references.ts';

const sideWords: Readonly<globalThis.Record<Record['sides'], string>> = {
  none: '',
  both: ', right and left',
  left: ', left',
  right: ', right',
  either: ', and which side',
};

const asked = (record: Record, scales: Library['scales']): string => {
  switch (record.kind) {
    case 'scale':
      return `: ${byId(scales, record.scale)
        .grades.map(({ code }) => code)
        .join(' / ')}`;
    case 'quantity': {
      const unit = unitLabel(record.unit);
      return unit === '' ? '' : ` (${unit})`;
    }
    default:
      return '';
  }
};

/** What to write down for one record: "Height above the sternal angle (cm), and which side". */
export function fieldText(record: Record, scales: Library['scales']): string {
  const answer = asked(record, scales);
  return record.kind === 'quantity'
    ? `${record.label}${answer}${sideWords[record.sides]}`
    : `${record.label}${sideWords[record.sides]}${answer}`;
}
