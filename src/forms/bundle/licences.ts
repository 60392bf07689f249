import type { Form } from '../../../schemas/form.ts';
import { editionWords } from '../edition.ts';
import { wrapped } from '../plain/wrap.ts';

/** What stands apart from the licence of the form's own words. */
const notices: readonly string[] = [
  'Figures and facts cited from published sources belong to nobody. Published scales and criteria belong to their owners, who are named below.',
  'UCUM unit codes: the Unified Code for Units of Measure is copyright Regenstrief Institute, Inc., and the UCUM Organization, used under their terms.',
  'FHIR and its code systems: HL7 International, CC0.',
  'Fonts in the PDF files: Fira Sans and Fira Sans Condensed, copyright 2012-2015 The Mozilla Foundation and Telefonica S.A.; Bitter, copyright 2011 The Bitter Project Authors. In subsets under the SIL Open Font License 1.1, https://openfontlicense.org.',
  'A filled form is a health record. Whoever puts the form into use is responsible for it under local law.',
];

/** Scales of the form with their sources, each once, in the form's order. */
function scales({ sections }: Form): string[] {
  const fields = sections.flatMap(({ items }) => items.flatMap((item) => item.fields));
  const named = fields.flatMap((field) =>
    field.kind === 'scale' ? [`${field.scaleTitle}: ${field.source ?? 'source not named'}`] : [],
  );
  return [...new Set(named)];
}

/** Who owns what in a form's files, as plain text: its own licence, then the notices of others. */
export function licences(form: Form): string {
  const owned = scales(form);
  const blocks = [
    [`Licence and notices of ${editionWords(form)}`],
    wrapped(`${form.publisher}. ${form.copyright}`),
    ...notices.map((notice) => wrapped(notice)),
    ...(owned.length === 0 ? [] : [['Scales on this form:', ...owned.flatMap((scale) => wrapped(scale, '- ', 2))]]),
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}
