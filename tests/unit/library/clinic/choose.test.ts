import { describe, expect, it } from 'vitest';
import { chosenClinic } from '../../../../src/library/clinic/choose.ts';
import { loadLibrary } from '../../../../src/library/load.ts';
import { requireEdition } from '../../../../src/forms/clinic/load.ts';
import { clinicFile, soundClinic } from '../../../fixtures/clinic.ts';
import { copyContent } from '../../../fixtures/content-copy.ts';
import { fixtureLibrary } from '../../../fixtures/library.ts';
import { present } from '../../../fixtures/present.ts';

describe('the setting CLINIC', () => {
  it('without a name, or empty, leaves the shared library', () => {
    expect(chosenClinic(fixtureLibrary, undefined)).toBeUndefined();
    expect(chosenClinic(fixtureLibrary, '')).toBeUndefined();
  });

  it('that names no clinic says so, with the list', () => {
    const copy = copyContent();
    copy.write(clinicFile, soundClinic);
    expect(() => requireEdition(copy.root, 'elmm')).toThrow(
      'CLINIC is "elmm", which is no clinic of content/clinics/. Did you mean "elm"? Clinics: elm.',
    );
    copy.remove();
    expect(() => requireEdition('tests/fixtures/content', 'elm')).toThrow(
      'There is none yet: write one with npm run new -- clinic ID.',
    );
  });
});

describe('a clinic in the content folder', () => {
  it('changes nothing of the shared library: not its hash, not a word', () => {
    const copy = copyContent();
    copy.write(clinicFile, soundClinic);
    const library = present(loadLibrary(copy.root, { version: fixtureLibrary.version }).library);
    copy.remove();
    expect(library.hash).toBe(fixtureLibrary.hash);
    expect(library.clinic).toBeUndefined();
    expect(library.tools).toEqual(fixtureLibrary.tools);
  });

  it.each([
    ['a script', '<svg viewBox="0 0 1 1"><script>x()</script></svg>', '"<script": the drawing runs, styles or fetches'],
    ['a handler', '<svg viewBox="0 0 1 1"><path onclick="x()"/></svg>', 'onclick='],
    ['a picture from elsewhere', '<svg viewBox="0 0 1 1"><image href="https://x.example/a.png"/></svg>', '"<image"'],
    ['a style', '<svg viewBox="0 0 1 1"><style>a{}</style></svg>', '"<style"'],
    [
      'text',
      '<svg viewBox="0 0 1 1"><text>Elm</text></svg>',
      '"<text": the drawing holds text, which would need a font',
    ],
    ['no viewBox', '<svg width="1"><path d="M0 0"/></svg>', 'does not begin with an <svg> that has a viewBox'],
    ['too much', `<svg viewBox="0 0 1 1"><path d="${'M0 0'.repeat(6000)}"/></svg>`, 'has 25 KB; at most 20 are taken'],
  ])('is refused with a logo that holds %s', (_, drawing, message) => {
    const copy = copyContent();
    copy.write(clinicFile, soundClinic.replace('paper: a4', 'logo: logo.svg\npaper: a4'));
    copy.write('clinics/elm/logo.svg', drawing);
    const { faults } = loadLibrary(copy.root);
    copy.remove();
    expect(faults.map(({ file, message: words }) => `${file} ${words}`)).toEqual([
      expect.stringContaining(message) as string,
    ]);
    expect(faults[0]?.file).toMatch(/clinics\/elm\/logo\.svg$/);
  });
});
