import type { FormField } from '../../schemas/form.ts';
import { numberFault } from '../forms/entered-number.ts';
import type { Filled } from '../forms/filled.ts';

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** The controls of a form that hold an answer now. */
export function answered(within: ParentNode): Control[] {
  const controls = [...within.querySelectorAll<Control>('input, select, textarea')];
  return controls.filter((control) => (isBox(control) ? control.checked : control.value.trim() !== ''));
}

/** The answers of a form as it stands, by linkId. */
export function filledOf(within: ParentNode): Filled {
  return new Map(answered(within).map(({ name, value }) => [name, value]));
}

/** Asks before the page is left with answers in it, and leaves none behind: "Back" must not bring back the last patient's. */
export function guardAnswers(within: Element): void {
  addEventListener('beforeunload', (event) => answered(within).length > 0 && event.preventDefault());
  addEventListener('pagehide', () => clearAnswers(within));
}

/** Makes everything within blank again, and tells it by an `input` event. */
export function clearAnswers(within: Element): void {
  for (const control of answered(within)) {
    if (isBox(control)) control.checked = false;
    else control.value = '';
  }
  within.dispatchEvent(new Event('input', { bubbles: true }));
}

/** Says beside each number whether it can be read and is in its range; nothing is refused for it. */
export function tellFaults(within: ParentNode, fields: readonly FormField[]): void {
  for (const field of fields) if (field.kind === 'quantity') tellFault(within, field);
}

function tellFault(within: ParentNode, field: Extract<FormField, { kind: 'quantity' }>): void {
  const control = within.querySelector<HTMLInputElement>(`input[name="${field.linkId}"]`);
  const place = control?.parentElement?.querySelector('.fault');
  if (!control || !place) return;
  const fault = control.value.trim() === '' ? '' : (numberFault(control.value, field) ?? '');
  control.ariaInvalid = fault === '' ? null : 'true';
  // Written only when it changes: a status is read out at every writing.
  if (place.textContent !== fault) place.textContent = fault;
}

function isBox(control: Control): control is HTMLInputElement {
  return control instanceof HTMLInputElement && ['radio', 'checkbox'].includes(control.type);
}
