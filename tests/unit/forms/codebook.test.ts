import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../../schemas/form.ts';
import { codebook, codebookColumns } from '../../../src/forms/codebook.ts';
import { loincNotice } from '../../../src/forms/loinc.ts';
import { fixtureForm } from './fixtures.ts';

const form = fixtureForm();
const csv = codebook(form);
const rows = parse<Record<string, string>>(csv, { columns: true });
const row = (id: string) => rows.find((each) => each['id'] === id);

describe('the codebook', () => {
  it('is CSV as RFC 4180 has it: a header, the same number of cells in each row, lines ending in CR LF', () => {
    expect(csv.startsWith(`${codebookColumns.join(',')}\r\n`)).toBe(true);
    expect(csv.endsWith('\r\n')).toBe(true);
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(rows.every((each) => Object.keys(each).length === codebookColumns.length)).toBe(true);
  });

  it('describes a quantity', () => {
    expect(row('quantity-none')).toMatchObject({
      ...{ section: 'Neck', label: 'Fixture quantity, asked none', kind: 'quantity', unit: 'cm', unit_label: 'cm' },
      ...{ min: '-5', max: '20', options: '', side: 'none', normal: 'at most 3\u202fcm' },
      source: 'Nobody N. On fixtures. 2020; table 1',
    });
  });

  it('describes a finding, its reason and its detail, in that order', () => {
    const three = rows.filter(({ record, side }) => record === 'finding-both' && side === 'right');
    expect(three.map(({ id, kind, options, shown_when }) => [id, kind, options, shown_when])).toEqual([
      ['finding-both.right', 'finding', 'N=Normal | A=Abnormal | not-performed=Not examined', ''],
      [
        'finding-both.right.reason',
        'choice',
        'declined=Declined | unable=Unable | not-indicated=Not indicated | no-time=No time | part-absent=Part absent',
        'finding-both.right=not-performed',
      ],
      ['finding-both.right.detail', 'text', '', 'finding-both.right=A'],
    ]);
  });

  it('spells out grades with their source', () => {
    expect(row('scale-left.left')).toMatchObject({
      ...{ kind: 'scale', side: 'left', options: '0=0 – nothing | 4+=4+ – nearly all | 5=5 – all', normal: '5 – all' },
      source: 'Nobody N. On fixtures. 2020; table 2',
    });
  });

  it('gives a LOINC code with its official name and notice', () => {
    expect(row('pulse-rate')).toMatchObject({ code: '8867-4', code_name: 'Heart rate' });
    expect(row('pulse-rate')?.['copyright']).toContain(loincNotice);
  });

  it('says in every row which form it belongs to', () => {
    expect(rows.every(({ form: url, hash }) => url === form.url && hash === form.hash)).toBe(true);
  });

  it('keeps commas, quotation marks and line breaks inside their cell', () => {
    const text = JSON.stringify(form).replaceAll('Fixture finding, asked none', 'One, \\"two\\"\\nthree');
    const first = parse<Record<string, string>>(codebook(JSON.parse(text) as Form), { columns: true })[0];
    expect(first?.['label']).toBe('One, "two"\nthree');
  });

  it('is the same each time', () => {
    expect(codebook(fixtureForm())).toBe(csv);
  });
});
