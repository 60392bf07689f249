import { describe, expect, it, test } from 'vitest';
import { americanSpelling } from '../../../src/search/spelling.ts';

/** The left as Oxford's dictionaries spell it for Britain, the right as Merriam-Webster's does (from memory). */
const pairs = [
  ['oedema', 'edema'],
  ['goitre', 'goiter'],
  ['haematoma', 'hematoma'],
  ['haemorrhage', 'hemorrhage'],
  ['anaemia', 'anemia'],
  ['ischaemic', 'ischemic'],
  ['faeces', 'feces'],
  ['caecum', 'cecum'],
  ['oesophagus', 'esophagus'],
  ['diarrhoea', 'diarrhea'],
  ['dyspnoea', 'dyspnea'],
  ['apnoea', 'apnea'],
  ['tumour', 'tumor'],
  ['colour', 'color'],
  ['centimetre', 'centimeter'],
  ['fibre', 'fiber'],
  ['naevus', 'nevus'],
  ['leuconychia', 'leukonychia'],
  ['foetor', 'fetor'],
  ['manoeuvre', 'maneuver'],
  ['manoeuvring', 'maneuvering'],
  ['centred', 'centered'],
  ['rhinorrhoea', 'rhinorrhea'],
  ['aetiology', 'etiology'],
  ['coeliac', 'celiac'],
  ['distension', 'distention'],
  ['gynaecomastia', 'gynecomastia'],
  ['paralysed', 'paralyzed'],
] as const;

describe('American spelling', () => {
  test.each(pairs)('of %s is %s', (british, american) => {
    expect(americanSpelling(british)).toBe(american);
  });

  it('keeps a capital', () => {
    expect(americanSpelling('Oedema of the leg')).toBe('Edema of the leg');
  });

  it('leaves other words alone', () => {
    const text = 'Shoes, poem, aorta, hour, four, metric, symmetry, fibrosis';
    expect(americanSpelling(text)).toBe(text);
  });
});
