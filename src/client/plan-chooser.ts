import type { Library } from '../../schemas/library.ts';
import type { PlanRequest } from '../../schemas/plan.ts';
import { limits } from './plan-address.ts';

/** Something that can be ticked. */
interface Choice {
  id: string;
  label: string;
}

const kinds = ['form', 'systems', 'manoeuvres'] as const;

/** The controls that say what a sheet is for. Reads and writes them; keeps nothing itself. */
export class PlanChooser {
  readonly form: HTMLFormElement;
  readonly #library: Library;
  /** What a manoeuvre is also called. */
  readonly #names: (id: string) => string;

  /** Fills the lists from the Library. */
  constructor(form: HTMLFormElement, library: Library, names: (id: string) => string) {
    this.form = form;
    this.#library = library;
    this.#names = names;
    const option = ({ id, label }: Choice): HTMLOptionElement => new Option(label, id);
    const titled = ({ id, title }: { id: string; title: string }): Choice => ({ id, label: title });
    this.#select('form').append(...library.forms.map(titled).map(option));
    this.#select('start').append(...library.positions.map(option));
    // The preparation is on every sheet, so it is not offered.
    const offered = library.protocols
      .flatMap(({ manoeuvres }) => manoeuvres)
      .filter(({ scope }) => scope !== 'preparation');
    const systems = library.protocols.filter(({ system }) => offered.some((one) => one.system === system));
    this.fill('systems', systems.map(titled));
    this.fill('manoeuvres', offered.map(titled));
    this.fill('without', library.instruments);
    this.fill('cannot', library.positions);
  }

  /** Offers things to tick, those ticked before still ticked. */
  fill(of: 'systems' | 'manoeuvres' | 'without' | 'cannot' | 'last', choices: readonly Choice[]): void {
    const ticked = this.#ticked(of);
    const labels = choices.map(({ id, label }) => {
      const box = Object.assign(document.createElement('input'), { type: 'checkbox', name: of, value: id });
      box.checked = ticked.includes(id);
      const made = document.createElement('label');
      made.className = 'tick';
      made.append(box, ` ${label}`);
      return made;
    });
    this.form.querySelector(`[data-of=${of}]`)?.replaceChildren(...labels);
  }

  /** What is chosen; undefined when nothing says what to examine. Numbers out of range are passed over. */
  get request(): PlanRequest | undefined {
    const kind = kinds.find((one) => one === this.#radio.value) ?? 'form';
    const examined = kind === 'form' ? [this.#select('form').value] : this.#ticked(kind);
    if (examined.length === 0) return undefined;
    const start = this.#select('start').value;
    return {
      ...(kind === 'form' ? { form: examined[0] ?? '' } : { [kind]: examined }),
      ...(start !== '' && { start }),
      ...this.#number('minutes'),
      ...this.#list('without'),
      ...this.#list('cannot'),
      ...this.#list('last'),
      ...this.#list('avoidSides'),
      ...this.#number('pace'),
    };
  }

  /** Sets every control to a request. */
  set request(request: PlanRequest | undefined) {
    this.form.reset();
    if (request === undefined) return;
    this.#radio.value = kinds.find((kind) => request[kind] !== undefined) ?? 'form';
    if (request.form !== undefined) this.#select('form').value = request.form;
    this.#select('start').value = request.start ?? '';
    for (const name of ['minutes', 'pace'] as const) this.#input(name).value = String(request[name] ?? '');
    this.offerForLast(request.last ?? []);
    this.#tick(request);
  }

  #tick(request: PlanRequest): void {
    for (const name of ['systems', 'manoeuvres', 'without', 'cannot', 'last', 'avoidSides'] as const)
      for (const box of this.#boxes(name)) box.checked = request[name]?.some((id) => id === box.value) ?? false;
    for (const details of this.form.querySelectorAll('details'))
      details.open ||= details.querySelector(':checked') !== null;
  }

  /** Offers manoeuvres to be left for last, in page order. */
  offerForLast(ids: readonly string[]): void {
    const offered = new Set([...ids, ...this.#ticked('last')]);
    const all = this.#library.protocols.flatMap(({ manoeuvres }) => manoeuvres);
    this.fill(
      'last',
      all.filter(({ id }) => offered.has(id)).map(({ id, title }) => ({ id, label: title })),
    );
  }

  /** Shows what belongs to the kind that is chosen, and of the manoeuvres those that the filter lets through. */
  show(): void {
    for (const part of this.form.querySelectorAll<HTMLElement>('[data-kind]'))
      part.hidden = part.dataset['kind'] !== this.#radio.value;
    const words = (this.form.querySelector<HTMLInputElement>('.filter')?.value ?? '').toLowerCase().split(/\s+/);
    for (const box of this.#boxes('manoeuvres')) {
      const label = box.closest('label');
      const name = `${label?.textContent} ${this.#names(box.value)}`.toLowerCase();
      if (label !== null) label.hidden = !box.checked && !words.every((word) => name.includes(word));
    }
  }

  get kind(): string {
    return this.#radio.value;
  }

  get #radio(): RadioNodeList {
    return this.form.elements.namedItem('kind') as RadioNodeList;
  }

  #select(name: string): HTMLSelectElement {
    return this.form.elements.namedItem(name) as HTMLSelectElement;
  }

  #input(name: string): HTMLInputElement {
    return this.form.elements.namedItem(name) as HTMLInputElement;
  }

  #boxes(name: string): HTMLInputElement[] {
    return [...this.form.querySelectorAll<HTMLInputElement>(`input[name=${name}]`)];
  }

  #ticked(name: string): string[] {
    return this.#boxes(name).flatMap((box) => (box.checked ? [box.value] : []));
  }

  #list(name: string): Partial<PlanRequest> {
    const ids = this.#ticked(name);
    return ids.length > 0 ? { [name]: ids } : {};
  }

  #number(name: keyof typeof limits): Partial<PlanRequest> {
    const value = this.#input(name).valueAsNumber;
    return value > 0 && value <= limits[name] ? { [name]: value } : {};
  }
}
