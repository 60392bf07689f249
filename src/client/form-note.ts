import { fieldsOf, type FormSlice } from '../forms/form-slice.ts';
import { noteOf } from '../forms/note.ts';
import { questionnaireResponse } from '../forms/response.ts';
import { answered, clearAnswers, filledOf, guardAnswers, tellFaults } from './form-answers.ts';

/**
 * The note of the form on its page, made anew at each change, and what is done with it: copied, downloaded as a
 * QuestionnaireResponse, printed, cleared. Answers live in the form's own fields alone and go when the page does.
 *
 * Holds the form's slice as JSON; `data-file` is the name of the download.
 */
class FormNote extends HTMLElement {
  #slice: FormSlice | undefined;

  connectedCallback(): void {
    this.#slice = JSON.parse(this.#find('script', HTMLScriptElement).text) as FormSlice;
    this.#find('.without-scripts', HTMLElement).remove();
    this.#find('.with-scripts', HTMLElement).hidden = false;
    this.#form.addEventListener('input', () => this.#refresh());
    this.#form.addEventListener('change', () => this.#tellFaults());
    this.#form.addEventListener('click', ({ target }) => this.#clearItem(target));
    this.#on('.copy', () => void this.#copy());
    this.#on('.download', () => this.#download());
    this.#on('.print', () => print());
    this.#on('.clear', () => this.#clearAll());
    guardAnswers(this.#form);
    addEventListener('pageshow', () => {
      this.#refresh();
      this.#tellFaults();
    });
    this.#refresh();
  }

  get #mustSlice(): FormSlice {
    if (this.#slice === undefined) throw new Error('The form has not been read.');
    return this.#slice;
  }

  get #form(): HTMLFormElement {
    const form = document.querySelector('form.answers');
    if (!(form instanceof HTMLFormElement)) throw new Error('The page has no form.');
    return form;
  }

  #find<Kind extends HTMLElement>(selector: string, kind: new () => Kind): Kind {
    const found = this.querySelector(selector);
    if (!(found instanceof kind)) throw new Error(`The note has no ${selector}.`);
    return found;
  }

  #on(selector: string, act: () => void): void {
    this.#find(selector, HTMLButtonElement).addEventListener('click', act);
  }

  #tell(words: string): void {
    this.#find('[role=status]', HTMLElement).textContent = words;
  }

  #refresh(): void {
    this.#find('.note-text', HTMLTextAreaElement).value = noteOf(this.#mustSlice, filledOf(this.#form));
    for (const button of this.#form.querySelectorAll<HTMLButtonElement>('.clear-item'))
      button.hidden = answered(button.parentElement ?? button).length === 0;
    this.#tell('');
  }

  #tellFaults(): void {
    tellFaults(this.#form, fieldsOf(this.#mustSlice));
  }

  async #copy(): Promise<void> {
    const area = this.#find('.note-text', HTMLTextAreaElement);
    if (area.value === '') {
      this.#tell('Nothing is marked yet: there is no note to copy.');
      return;
    }
    area.select();
    try {
      await navigator.clipboard.writeText(area.value);
      this.#tell('The note is copied. On a shared computer, clear the clipboard and its history when you are done.');
    } catch {
      area.focus();
      this.#tell('The browser did not let the page copy. The note is selected: copy it by hand.');
    }
  }

  #download(): void {
    const filled = filledOf(this.#form);
    if (filled.size === 0) {
      this.#tell('Nothing is marked yet: there are no answers to download.');
      return;
    }
    const response = questionnaireResponse(this.#mustSlice, filled, new Date().toISOString());
    const url = URL.createObjectURL(
      new Blob([`${JSON.stringify(response, undefined, 2)}\n`], { type: 'application/fhir+json' }),
    );
    const link = document.createElement('a');
    Object.assign(link, { href: url, download: this.dataset['file'] ?? 'response.json' }).click();
    setTimeout(() => URL.revokeObjectURL(url), 1000);
    this.#tell(downloadWords(this.#form.querySelectorAll('[aria-invalid=true]').length));
  }

  #clearItem(target: EventTarget | null): void {
    const button = target instanceof Element ? target.closest('.clear-item') : null;
    const item = button?.closest('.item');
    if (!item) return;
    clearAnswers(item);
    this.#tellFaults();
    item.querySelector<HTMLElement>('a')?.focus();
  }

  #clearAll(): void {
    if (answered(this.#form).length === 0) {
      this.#tell('Nothing is marked.');
      return;
    }
    if (!confirm('Clear all answers? They are kept nowhere and cannot be brought back.')) return;
    clearAnswers(this.#form);
    this.#tellFaults();
    this.#tell('All answers are cleared.');
  }
}

/** What is said of a download in which so many numbers are not right. */
function downloadWords(wrong: number): string {
  const done = 'The answers are downloaded. They are a health record: keep or delete the file as local rules say.';
  if (wrong === 0) return done;
  const numbers = wrong === 1 ? 'One number is' : `${wrong} numbers are`;
  return `${done} ${numbers} out of range or cannot be read: what cannot be read is not in the file, and a record system may refuse the rest.`;
}

customElements.define('form-note', FormNote);
