import type { Form } from '../../schemas/form.ts';

const statusWords = { draft: ', draft', active: '', retired: ', withdrawn' } as const;

/** Which form and which version of it, in words: "adult-screening 1.0.0, draft"; a clinic's own form has its name before it. */
export const editionWords = ({ id, version, status, derivedFrom }: Form): string =>
  `${derivedFrom === undefined ? '' : `${derivedFrom.by} `}${id} ${version}${statusWords[status]}`;

/** Said on every page of a form. */
export const formSafety =
  'For trained staff. Follow local protocol. Not a diagnosis. A filled form is a health record.';

/** The short code printed on every sheet: the first eight digits of the content's hash. */
export const shortCode = (hash: string): string => hash.slice(0, 8);
