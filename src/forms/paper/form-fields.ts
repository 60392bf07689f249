import type { Form } from '../../../schemas/form.ts';
import type { FieldSpec } from '../../pdf/form/field-spec.ts';
import { type Answer, answersOfForm } from '../answers.ts';
import { acceptedRange } from '../records.ts';

/** The name of a PDF field: the linkId with `_` for `.`, since a dot would make a hierarchy. */
export const fieldName = (linkId: string): string => linkId.replaceAll('.', '_');

const tooltip = (answer: Answer): string =>
  answer.type === 'number' ? `${answer.label}, in ${answer.unitLabel}, from ${acceptedRange(answer)}` : answer.label;

/** A reason is a list, to save room; what is examined is boxes. */
const codedKind = ({ linkId, field }: Answer): 'list' | 'radio' =>
  field.kind === 'finding' && linkId === field.reason ? 'list' : 'radio';

function fieldSpec(answer: Answer): FieldSpec {
  const common = { name: fieldName(answer.linkId), tooltip: tooltip(answer) };
  // Words on a short line turn to a second before their type is too small to read.
  if (answer.type === 'text') return { kind: 'text', ...common, multiline: true };
  if (answer.type === 'number') return { kind: 'text', ...common };
  const options = answer.options.map(({ code, label }) => ({ code, display: label }));
  return { kind: codedKind(answer), ...common, options };
}

/** One PDF field for each blank of the form, in the order in which they are filled. */
export const formFieldSpecs = (form: Form): FieldSpec[] => answersOfForm(form).map(({ answer }) => fieldSpec(answer));
