import { describe, expect, it } from 'vitest';
import type { Evidence } from '../../../schemas/evidence.ts';
import type { Line } from '../../../schemas/inline.ts';
import { evidenceText } from '../../../src/text/evidence-text.ts';
import { htmlText } from '../../../src/text/html.ts';
import { quantityText, rangeText, thin, unitLabel } from '../../../src/text/numbers.ts';
import { plainText } from '../../../src/text/plain.ts';
import { typstRuns } from '../../../src/text/typst.ts';
import { normalText, valueText } from '../../../src/text/value-text.ts';
import { fixtureLibrary as library, fixtureManoeuvre } from '../../fixtures/library.ts';

const bend = library.values[0];
const click = library.evidence[0];
if (bend === undefined || click === undefined) throw new Error('The fixture has lost its value or its evidence.');

const line: Line = [
  { type: 'text', text: 'a < b & ' },
  { type: 'strong', children: [{ type: 'text', text: 'bold' }] },
  { type: 'emphasis', children: [{ type: 'text', text: ' "slant"' }] },
  {
    type: 'link',
    to: { kind: 'web', url: 'https://example.org/?a=1&b=2' },
    children: [{ type: 'text', text: ' link' }],
  },
];

describe('numbers', () => {
  it('stand a thin space before their unit, none before a degree or percent sign', () => {
    expect(quantityText(3, 'cm')).toBe(`3${thin}cm`);
    expect(quantityText(45, 'deg')).toBe('45°');
    expect(quantityText(92, '%')).toBe('92%');
    expect(quantityText(7, '1')).toBe('7');
    expect(quantityText(-0.5, 'Cel')).toBe(`−0.5${thin}°C`);
  });

  it('make ranges with a dash, with words when an end is below zero', () => {
    expect(rangeText(12, 18, '/min')).toBe(`12–18${thin}/min`);
    expect(rangeText(-5, 20, 'cm')).toBe(`−5 to 20${thin}cm`);
  });

  it('show units as people write them', () => {
    expect(['mm[Hg]', 'cm[H2O]', 'kg/m2', 'cm'].map(unitLabel)).toEqual(['mmHg', 'cmH₂O', 'kg/m²', 'cm']);
  });
});

describe('a value', () => {
  it('shows the figure of other sources beside its own', () => {
    expect(valueText(bend)).toBe('70° (elsewhere 80°)');
    expect(normalText(bend)).toBe('at least 70° (elsewhere 80°)');
  });

  it('shows every point of a series with its condition', () => {
    const points = [
      { at: 'supine', value: 5.4 },
      { at: 'at 30°', value: 8 },
    ];
    const { value: _value, normal: _normal, ...common } = bend as Extract<typeof bend, { kind: 'limit' }>;
    expect(valueText({ ...common, kind: 'series', unit: 'cm', others: [], points })).toBe(
      `5.4${thin}cm supine; 8${thin}cm at 30°`,
    );
  });
});

describe('evidence in words', () => {
  const with_ = (more: Partial<Evidence>): Evidence => ({ ...click, ...more });

  it('says the direction first and the ratio second', () => {
    expect(evidenceText(click, library.evidence)).toBe(
      'A click on bending: a torn ligament is more likely, LR+ 6.2 (1.3–18); when absent, less likely, LR− 0.5.',
    );
  });

  it('claims no direction when the interval holds 1', () => {
    const text = evidenceText(with_({ present: { value: 2, low: 0.8, high: 5 } }), library.evidence);
    expect(text).toContain('a torn ligament is not clearly more or less likely, LR+ 2 (0.8–5)');
  });

  it('claims no direction when the ratio hardly differs from 1', () => {
    expect(evidenceText(with_({ present: { value: 0.97 } }), library.evidence)).toContain(
      'is about as likely as before, LR+ 0.97',
    );
  });

  it('names the condition when only absence was studied', () => {
    const { present: _present, ...rest } = click;
    expect(evidenceText(rest as Evidence, library.evidence)).toBe(
      'A click on bending: when absent, a torn ligament is less likely, LR− 0.5.',
    );
  });

  it('shows both figures where sources disagree', () => {
    const other = with_({ id: 'other', population: 'Adults elsewhere', present: { value: 1.1 } });
    const text = evidenceText(with_({ disagreesWith: ['other'] }), [other]);
    expect(text).toMatch(/LR− 0\.5\. Another source: LR\+ 1\.1, LR− 0\.5 in adults elsewhere\.$/);
  });

  it('names the condition of other sources where it differs', () => {
    const torn = with_({ id: 'torn', population: 'Adults elsewhere', condition: 'a complete tear' });
    const same = with_({ id: 'same', population: 'Adults here' });
    const text = evidenceText(with_({ disagreesWith: ['torn', 'same'] }), [torn, same]);
    expect(text).toContain('Other sources: LR+ 6.2 (1.3–18), LR− 0.5 for a complete tear in adults elsewhere; ');
    expect(text).toMatch(/; LR\+ 6\.2 \(1\.3–18\), LR− 0\.5 in adults here\.$/);
  });
});

describe('a line of prose', () => {
  it('is plain text', () => {
    expect(plainText(line, library)).toBe('a < b & bold "slant" link');
  });

  it('is safe HTML with resolved addresses', () => {
    expect(htmlText(line, library, (to) => (to.kind === 'web' ? to.url : ''))).toBe(
      'a &lt; b &amp; <strong>bold</strong><em> &quot;slant&quot;</em><a href="https://example.org/?a=1&amp;b=2" rel="external noreferrer"> link</a>',
    );
  });

  it('asks for the address of every reference', () => {
    const asked: string[] = [];
    const normal = fixtureManoeuvre('wrist-bend').normal.flat();
    htmlText(normal, library, (to) => {
      asked.push('id' in to ? `${to.kind}:${to.id}` : to.url);
      return '#';
    });
    expect(asked).toEqual(['value:wrist-bend', 'manoeuvre:wrist-look', 'scale:strength']);
  });

  it('is runs of data for the typesetter, never its code', () => {
    expect(typstRuns(line, library)).toEqual([
      { text: 'a < b & ' },
      { text: 'bold', bold: true },
      { text: ' "slant"', italic: true },
      { text: ' link' },
    ]);
  });
});
