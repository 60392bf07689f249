import type { Form, FormField, FormItem, FormSection } from '../../schemas/form.ts';

/** What of a form is needed to read its answers: all but its safety lines and rights. A Form is one as it stands. */
export interface FormSlice extends Pick<Form, 'id' | 'title' | 'url' | 'version' | 'status' | 'hash'> {
  sections: SliceSection[];
}

interface SliceSection extends Pick<FormSection, 'linkId' | 'title'> {
  items: Pick<FormItem, 'title' | 'fields'>[];
}

/** The slice alone, for a page that carries it: what it does not need costs every visitor. */
export function sliceOf({ id, title, url, version, status, hash, sections }: Form): FormSlice {
  return { id, title, url, version, status, hash, sections: sections.map(sectionSlice) };
}

function sectionSlice({ linkId, title, items }: FormSection): SliceSection {
  return { linkId, title, items: items.map((item) => ({ title: item.title, fields: item.fields.map(fieldSlice) })) };
}

/** Codes of others and citations belong to the blank form; an answer needs neither. */
function fieldSlice(field: FormField): FormField {
  const slice = { ...field };
  delete slice.code;
  delete slice.codeDisplay;
  delete slice.source;
  return slice;
}

/** Every field of a form in its order. */
export function fieldsOf({ sections }: FormSlice): FormField[] {
  return sections.flatMap(({ items }) => items.flatMap(({ fields }) => fields));
}
