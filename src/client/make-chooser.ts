import {
  chosenManoeuvres,
  examOf,
  startingChoice,
  wordFields,
  wordsOf,
  type MakeChoice,
  type MakeWords,
  type WordField,
  withTicked,
} from './make-choice.ts';
import type { FaultPlace, MakeFaults } from './make-faults.ts';
import type { MakeFacts } from './make-messages.ts';

type Field = HTMLInputElement | HTMLTextAreaElement;

/** The controls that say what a form holds and what it says of itself. Reads and writes them; keeps nothing itself. */
export class MakeChooser {
  readonly form: HTMLFormElement;
  readonly #facts: MakeFacts;
  readonly #boxes: HTMLInputElement[];

  constructor(form: HTMLFormElement, facts: MakeFacts) {
    this.form = form;
    this.#facts = facts;
    this.#boxes = [...form.querySelectorAll<HTMLInputElement>('input[name=manoeuvres]')];
  }

  /** What is chosen and written. */
  get choice(): MakeChoice {
    const exam = this.#select('exam').value;
    const start = this.#select('start').value;
    const ticked = this.#boxes.flatMap(({ checked, value }) => (checked ? [value] : []));
    const begun = { exam: exam === '' ? undefined : exam, start: start === '' ? undefined : start, words: this.#words };
    return withTicked(this.#facts, { ...begun, without: [], added: [] }, ticked);
  }

  /** Sets every control to a choice. */
  set choice(choice: MakeChoice) {
    this.#select('exam').value = choice.exam ?? '';
    this.#select('start').value = choice.start ?? '';
    for (const field of wordFields) this.#field(field).value = choice.words[field];
    const ids = new Set(chosenManoeuvres(this.#facts, choice));
    for (const box of this.#boxes) box.checked = ids.has(box.value);
    this.show();
  }

  /**
   * Another examination was chosen: it brings its manoeuvres and its words. What the maker wrote stays. Without one,
   * what was ticked stays, to be chosen from one by one.
   * @param before what was chosen until now
   */
  begin(before: MakeChoice): void {
    const exam = this.#facts.exams.find(({ id }) => id === this.#select('exam').value);
    const { words, ...fresh } = startingChoice(exam);
    const own = wordsOf(examOf(this.#facts, before));
    const written = wordFields.filter((field) => before.words[field] !== own[field]);
    const kept = Object.fromEntries(written.map((field) => [field, before.words[field]]));
    const ticked = exam === undefined ? { added: chosenManoeuvres(this.#facts, before), start: before.start } : {};
    this.choice = { ...fresh, ...ticked, words: { ...words, ...kept } };
  }

  /** Shows how many are ticked in each system, and of the manoeuvres those that the look-up lets through; says how many. */
  show(): number {
    const words = this.#filter.toLowerCase().split(/\s+/).filter(Boolean);
    let found = 0;
    for (const box of this.#boxes) {
      const label = box.closest('label');
      const name = `${label?.textContent} ${this.#facts.names[box.value] ?? ''}`.toLowerCase();
      const shown = words.every((word) => name.includes(word));
      if (label !== null) label.hidden = !shown;
      if (shown) found++;
    }
    for (const system of this.form.querySelectorAll('details')) showSystem(system, words.length > 0);
    return words.length > 0 ? found : -1;
  }

  get #filter(): string {
    return this.form.querySelector<HTMLInputElement>('.filter')?.value ?? '';
  }

  /** Says beside each field what is amiss with it, and nothing beside the others. */
  tell(faults: MakeFaults): void {
    for (const place of this.form.querySelectorAll<HTMLElement>('.fault')) {
      const words = faults[place.dataset['for'] as FaultPlace] ?? '';
      if (place.textContent !== words) place.textContent = words;
    }
    for (const field of wordFields) {
      if (faults[field] === undefined) this.#field(field).removeAttribute('aria-invalid');
      else this.#field(field).setAttribute('aria-invalid', 'true');
    }
  }

  /** Goes to the first field with a fault. */
  goTo(faults: MakeFaults): void {
    if (faults.manoeuvres !== undefined) this.#select('exam').focus();
    else wordFields.flatMap((field) => (faults[field] === undefined ? [] : [this.#field(field)]))[0]?.focus();
  }

  get #words(): MakeWords {
    return Object.fromEntries(wordFields.map((field) => [field, this.#field(field).value])) as MakeWords;
  }

  #select(name: string): HTMLSelectElement {
    return this.form.elements.namedItem(name) as HTMLSelectElement;
  }

  #field(name: WordField): Field {
    return this.form.elements.namedItem(name) as Field;
  }
}

function showSystem(system: HTMLDetailsElement, filtered: boolean): void {
  const labels = [...system.querySelectorAll<HTMLElement>('label')];
  const ticked = system.querySelectorAll(':checked').length;
  const count = system.querySelector('.count');
  const words = ticked === 0 ? `${labels.length}` : `${ticked} of ${labels.length} ticked`;
  if (count && count.textContent !== words) count.textContent = words;
  const some = labels.some((label) => !label.hidden);
  system.hidden = !some;
  // What a look-up opened it closes again.
  if (filtered && some && !system.open) system.dataset['opened'] = '';
  if (filtered && some) system.open = true;
  else if ('opened' in system.dataset) {
    system.open = false;
    delete system.dataset['opened'];
  }
}
