import type { ClinicCheck } from './clinic-check.ts';

/** Each of a clinic's forms is made once, from a shared form whose version is pinned, and has an address of its own. */
export const ownForms: ClinicCheck = ({ value, at }, { tables }, report) => {
  const addresses = new Map<string, string>(
    tables.forms.map(({ value: form }) => [form.url, `the shared form "${form.id}"`]),
  );
  for (const other of tables.clinics)
    for (const form of other.value.id === value.id ? [] : other.value.forms)
      addresses.set(form.url, `the form "${form.form}" of the clinic "${other.value.id}"`);
  value.forms.forEach(({ form, url }, index) => {
    const place = (key: string) => at(['forms', index, key]);
    if (value.forms.findIndex((each) => each.form === form) < index)
      report(place('form'), `The clinic's form of "${form}" is written twice. Keep one entry.`);
    else if (value.pins[form] === undefined)
      report(
        place('form'),
        `The clinic's form of "${form}" is built on no version. Write "${form}: VERSION" under "pins".`,
      );
    const owner = addresses.get(url);
    if (owner !== undefined)
      report(place('url'), `The address "${url}" is that of ${owner}. Give this form one of its own.`);
    addresses.set(url, `the form "${form}" of this clinic`);
  });
};
