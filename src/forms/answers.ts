import type { Form, FormField, FormItem, FormSection } from '../../schemas/form.ts';
import {
  abnormalOption,
  type AnswerOption,
  findingOptions,
  notExaminedOption,
  ownOption,
  reasonOptions,
} from './answer-options.ts';
import { choiceSystem, codeSystems, scaleSystem } from './code-systems.ts';

/** The answer that must have been given before another may be. */
export interface Condition {
  linkId: string;
  option: AnswerOption;
}

interface Common {
  linkId: string;
  /** Label with its side. */
  label: string;
  /** The field that it belongs to. */
  field: FormField;
  /** What tells it from the field itself: "detail", "reason not examined". */
  part?: string;
  when?: Condition;
}

/** One blank of a form. A finding has three: the finding itself, its detail, and the reason for not examining. */
export type Answer =
  | (Common & { type: 'coded'; options: readonly AnswerOption[] })
  | (Common & { type: 'number'; unit: string; unitLabel: string; min: number; max: number })
  | (Common & { type: 'text' });

type Finding = Extract<FormField, { kind: 'finding' }>;
type Optioned = Extract<FormField, { options: unknown }>;

/** The blanks of one field, in the order in which they are filled. */
export function answersOf(field: FormField): Answer[] {
  const own = { linkId: field.linkId, label: field.label, field };
  switch (field.kind) {
    case 'finding':
      return [{ ...own, type: 'coded', options: findingOptions }, reasonAnswer(field), detailAnswer(field)];
    case 'scale':
    case 'choice':
      return [{ ...own, type: 'coded', options: optionsOf(field) }];
    case 'quantity': {
      const { unit, unitLabel, min, max } = field;
      return [{ ...own, type: 'number', unit, unitLabel, min, max }];
    }
    case 'text':
      return [{ ...own, type: 'text' }];
  }
}

/** Every blank of a form with the section and item that hold it, in the order in which they are filled. */
export function answersOfForm(form: Form): { section: FormSection; item: FormItem; answer: Answer }[] {
  return form.sections.flatMap((section) =>
    section.items.flatMap((item) =>
      item.fields.flatMap((field) => answersOf(field).map((answer) => ({ section, item, answer }))),
    ),
  );
}

function detailAnswer(field: Finding): Answer {
  return { ...partOf(field, field.detail, 'detail', abnormalOption), type: 'text' };
}

function reasonAnswer(field: Finding): Answer {
  const part = partOf(field, field.reason, 'reason not examined', notExaminedOption);
  return { ...part, type: 'coded', options: reasonOptions };
}

/** A blank that another answer of the same finding opens. */
function partOf(field: Finding, linkId: string, part: string, option: AnswerOption): Common {
  return { linkId, label: `${field.label}: ${part}`, field, part, when: { linkId: field.linkId, option } };
}

function optionsOf(field: Optioned): AnswerOption[] {
  const system = optionSystem(field);
  return field.options.map(({ code, display }) => ownOption(system, code, display));
}

function optionSystem(field: Optioned): string {
  if (field.kind === 'scale') return scaleSystem(field.scale);
  return field.linkId === `${field.record}.side` ? codeSystems.side : choiceSystem(field.record);
}
