import type { RecordSides } from '../../schemas/common.ts';
import type { Library } from '../../schemas/library.ts';
import type { Record } from '../../schemas/record.ts';
import { rangeText } from '../text/numbers.ts';
import { byId } from '../text/references.ts';
import { normalText } from '../text/value-text.ts';
import { midSentence } from './labels.ts';

const sidesWords: { [side in RecordSides]: string } = {
  none: '',
  both: 'right and left',
  left: 'left',
  right: 'right',
  either: 'with the side used',
};

/** What is written down for a record, in words: its kind with options, unit and range, then its sides. */
export function recordKindWords(record: Record, library: Pick<Library, 'scales'>): string {
  const sides = sidesWords[record.sides];
  return sides === '' ? kindWords(record, library) : `${kindWords(record, library)}; ${sides}`;
}

function kindWords(record: Record, { scales }: Pick<Library, 'scales'>): string {
  switch (record.kind) {
    case 'finding':
      return 'Normal, abnormal or not examined';
    case 'scale':
      return `Grade, ${byId(scales, record.scale)
        .grades.map((grade) => grade.code)
        .join(', ')}`;
    case 'choice':
      return `One of: ${record.options.join('; ')}`;
    case 'quantity':
      return `Number, ${rangeText(record.min, record.max, record.unit)}`;
    case 'text':
      return 'Words';
  }
}

/** The normal answer of a record in words, where it has one that is plain text; a finding's own words are a line. */
export function recordNormalWords(record: Record, library: Pick<Library, 'scales' | 'values'>): string | undefined {
  switch (record.kind) {
    case 'scale':
      return byId(library.scales, record.scale)
        .grades.filter((grade) => grade.normal)
        .map((grade) => `${grade.code}, ${midSentence(grade.meaning)}`)
        .join('; ');
    case 'choice':
      return record.normal;
    case 'quantity':
      return record.value === undefined ? undefined : normalText(byId(library.values, record.value));
    default:
      return undefined;
  }
}
