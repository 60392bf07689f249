import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Form, FormItem } from '../../../../schemas/form.ts';
import { codebook } from '../../../../src/forms/codebook.ts';
import { formHash } from '../../../../src/forms/form-hash.ts';
import { sheetOf } from '../../../../src/forms/paper/sheet.ts';
import { formText } from '../../../../src/forms/plain/text.ts';
import { questionnaire } from '../../../../src/forms/questionnaire.ts';
import { loadReleases } from '../../../../src/forms/releases/load.ts';
import { planRequest } from '../../../../src/plan/plan.ts';
import { plainText } from '../../../../src/text/plain.ts';
import { soundClinic } from '../../../fixtures/clinic.ts';
import { type ClinicCopy, clinicCopy } from '../../../fixtures/clinic-copy.ts';
import { present } from '../../../fixtures/present.ts';

let copy: ClinicCopy;
let form: Form;
beforeAll(() => {
  copy = clinicCopy();
  form = copy.elm().draft('whole');
});
afterAll(() => copy.remove());

const itemOf = ({ sections }: Form, id: string): FormItem =>
  present(sections.flatMap(({ items }) => items).find(({ manoeuvre }) => manoeuvre === id));
const records = (item: FormItem): string[] => [...new Set(item.fields.map(({ record }) => record))];

describe("the clinic's form", () => {
  it('is the same for the same content', () => {
    expect(copy.elm().draft('whole')).toEqual(form);
  });

  it('is whole, with what is added in its place and what is hidden gone', () => {
    expect(records(itemOf(form, 'wrist-look'))).toEqual(['wrist-shape', 'elm-cast', 'wrist-note']);
    expect(records(itemOf(form, 'wrist-bend'))).toEqual(['wrist-angle', 'wrist-strength', 'elm-girth']);
    expect(
      itemOf(form, 'wrist-bend')
        .fields.map(({ linkId }) => linkId)
        .slice(-2),
    ).toEqual(['elm-girth.right', 'elm-girth.left']);
    expect(itemOf(form, 'wrist-look').fields.find(({ record }) => record === 'elm-cast')?.label).toBe(
      'Cast or splint (Elm, optional)',
    );
  });

  it('bears its own identity and the release that it is made from', () => {
    expect(form).toMatchObject({
      url: 'https://elm.example/forms/whole',
      version: '1.0.0',
      title: 'Whole examination (Elm)',
      status: 'draft',
      date: '2026-02-10',
      publisher: 'Elm House (invented)',
      derivedFrom: { clinic: 'elm', by: 'Elm', url: 'https://fingerbreadth.example/forms/whole', version: '1.0.0' },
    });
    expect(form.copyright).toContain('Adapted by Elm House (invented) from “Whole examination” 1.0.0');
  });

  it('keeps every caution and red flag of every item that it shares', () => {
    const pinned = present(copy.elm().library.forms[0]);
    expect(pinned.manoeuvres).toEqual(form.sections.flatMap(({ items }) => items.map(({ manoeuvre }) => manoeuvre)));
    expect(itemOf(form, 'wrist-bend').cautions.length).toBeGreaterThan(0);
    expect(form.notPart).toEqual([
      expect.objectContaining({
        manoeuvre: 'wrist-bend',
        whole: false,
        asked: ['Click: side used', 'Click'],
      }) as object,
    ]);
  });

  it('marks the local note as the clinic’s own, in every format', () => {
    expect(itemOf(form, 'wrist-look').localNote).toEqual({ by: 'Elm', words: 'The good lamp is in room 2.' });
    const words = 'Local note, Elm: The good lamp is in room 2.';
    expect(formText(form)).toContain(words);
    expect(JSON.stringify(questionnaire(form))).toContain(words);
    expect(JSON.stringify(sheetOf(form, 'a4'))).toContain('The good lamp is in room 2.');
  });

  it('lists what it leaves out in every format', () => {
    expect(formText(form)).toContain('NOT PART OF THIS CLINIC’S FORM');
    expect(JSON.stringify(questionnaire(form).item?.at(-1))).toContain('only Click: side used; Click');
    expect(sheetOf(form, 'a4').notPart?.items).toEqual(['Bend the wrists: only Click: side used; Click']);
  });

  it('holds the added fields in the codebook once each', () => {
    for (const linkId of ['elm-cast', 'elm-girth.right', 'elm-girth.left'])
      expect(
        codebook(form)
          .split('\n')
          .filter((line) => line.startsWith(`${linkId},`)),
      ).toHaveLength(1);
    expect(codebook(form)).not.toContain('wrist-click');
  });

  it('prints whom to call, with a blank where nobody is given, and has none of it in its hash', () => {
    const text = formText(form).replaceAll(/\s+/g, ' ');
    expect(text).toContain(
      'Whom to call at Elm: - Now: by day duty desk, ext. 0000; out of hours night desk, ext. 0000.',
    );
    expect(text).toContain('- Today: by day senior on duty, ext. 0000; out of hours ____________________.');
    expect(text).toContain('- Risk of self-harm: ____________________.');
    expect(form.clinic?.name).toBe('Elm House (invented)');
    expect(formHash(form)).toBe(form.hash);
    expect(JSON.stringify(questionnaire(form))).not.toContain('ext. 0000');
  });

  it('is a Questionnaire of its own, derived from the shared release', () => {
    expect(questionnaire(form)).toMatchObject({
      id: 'elm-whole',
      name: 'ElmWhole',
      url: 'https://elm.example/forms/whole',
      derivedFrom: ['https://fingerbreadth.example/forms/whole|1.0.0'],
    });
  });
});

describe('a hidden manoeuvre', () => {
  it('leaves the form and the run sheet, and stays listed with its cautions and red flags', () => {
    const other = clinicCopy();
    const whole = itemOf(other.elm().draft('whole'), 'wrist-look');
    other.change(
      'hiddenRecords: [wrist-click]\n    added:\n      - manoeuvre: wrist-look\n        after: wrist-shape\n',
      'hidden: [wrist-look]\n    added:\n      - manoeuvre: wrist-bend\n',
    );
    const { draft, library } = other.elm();
    const hiding = draft('whole');
    expect(hiding.sections.flatMap(({ items }) => items.map(({ manoeuvre }) => manoeuvre))).not.toContain('wrist-look');
    expect(planRequest(library, { form: 'whole' }).steps.map(({ manoeuvre }) => manoeuvre)).not.toContain('wrist-look');
    const [omission] = present(hiding.notPart);
    expect(omission).toMatchObject({ whole: true, cautions: whole.cautions, redFlags: whole.redFlags });
    expect(whole.redFlags.length).toBeGreaterThan(0);
    for (const said of [formText(hiding).replaceAll(/\s+/g, ' '), JSON.stringify(questionnaire(hiding))])
      for (const line of [...whole.cautions, ...whole.redFlags.map(({ finding }) => finding)])
        expect(said).toContain(line);
    expect(sheetOf(hiding, 'a4').annex.at(-1)?.title).toBe('Not part of this clinic’s form');
    expect(library.protocols.flatMap(({ manoeuvres }) => manoeuvres).some(({ id }) => id === 'wrist-look')).toBe(true);
    other.remove();
  });
});

describe('the library of an edition', () => {
  it('has another hash, the clinic, its order and not its left-out tools', () => {
    const { library } = copy.elm();
    expect(library.clinic?.id).toBe('elm');
    expect(library.tools).toEqual([]);
    const bend = present(
      library.protocols.flatMap(({ manoeuvres }) => manoeuvres).find(({ id }) => id === 'wrist-bend'),
    );
    expect(bend.after).toContain('wrist-look');
    expect(() =>
      library.protocols.map(({ manoeuvres }) =>
        manoeuvres.map((one) => one.technique.map((line) => plainText(line, library))),
      ),
    ).not.toThrow();
  });

  it('has a pinned form without one of its own as it was released, not a word changed, under the clinic’s name', () => {
    const other = clinicCopy();
    other.write('clinics/elm/clinic.yaml', soundClinic.slice(0, soundClinic.indexOf('forms:')));
    const released = present(loadReleases(other.root).forms.get('whole'))[0];
    other.publish('1.1.0');
    const edition = other.elm();
    other.remove();
    const { clinic, ...pinned } = present(edition.released.get('whole'))[0];
    expect(pinned).toEqual(released);
    expect(clinic?.contacts).toHaveLength(2);
    expect(edition.released.get('whole')?.map(({ version }) => version)).toEqual(['1.0.0']);
    expect(edition.library.forms[0]).toMatchObject({ version: '1.0.0', url: released.url });
  });
});
