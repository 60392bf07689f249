/** The page on which a form is filled in asks what the form asks; the other formats are held to it in tests/content/. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../schemas/form.ts';
import { present } from '../fixtures/present.ts';
import { byPage } from '../fixtures/told/by-page.ts';
import { expected } from '../fixtures/told/told.ts';
import { siteFolder } from '../site.ts';

const folder = (id: string): string => join(siteFolder('root'), 'forms', id);

/** The version of a form whose code the page gives. */
function formOf(id: string, html: string): Form {
  const versions = readdirSync(folder(id)).filter((name) => /^(?:next|\d+\.\d+\.\d+)$/.test(name));
  const files = versions.map((at) => join(folder(id), at, `${id}.form.json`));
  // A draft that asks and says what its release does has a page, but no files.
  const forms = files.filter(existsSync).map((file) => JSON.parse(readFileSync(file, 'utf8')) as Form);
  return present(forms.find(({ hash }) => new RegExp(`code\\s+${hash.slice(0, 8)}`).test(html)));
}

describe.each(['adult-screening', 'intake', 'bed-bound'])('the page of %s', (id) => {
  const html = readFileSync(join(folder(id), 'fill', 'index.html'), 'utf8');

  it('asks for every blank once, with the same label, side, unit, range and answers', () => {
    const keys = ['linkId', 'label', 'side', 'unitLabel', 'range', 'codes', 'words'] as const;
    const wanted = expected(formOf(id, html), keys).map((told) => ({
      ...told,
      label: told.label.replaceAll(/\s+/g, ' '),
    }));
    expect(byPage(html)).toEqual(wanted);
  });
});
