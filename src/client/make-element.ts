import { choiceFromHash, choiceToHash, isChoice } from './make-address.ts';
import { MakeChooser } from './make-chooser.ts';
import { chosenManoeuvres, startingChoice, type MakeChoice } from './make-choice.ts';
import { MakeDesk } from './make-desk.ts';
import { makeFaults, type FaultPlace, type MakeFaults } from './make-faults.ts';
import type { MakeEnding } from './make-file-list.ts';
import type { FinishedFile } from './make-files.ts';
import type { LiveForm } from './make-live.ts';
import type { MakeFacts } from './make-messages.ts';

/** Shown in place of what a damaged link was to bring. */
const usable = 'adult-screening';

const nothingYet = 'Choose an examination, or tick manoeuvres: the form appears here.';

/**
 * Makes a form as one chooses. What is chosen and written stays in the page; only "Copy link" puts it into the address,
 * after `#`. Nothing is fetched before a control is used, unless a link asks for a form.
 *
 * Attributes: `data-files`, address of the page's data; `data-root`, address of the site.
 */
class FormMaker extends HTMLElement {
  readonly #desk = new MakeDesk();
  #facts: MakeFacts | undefined;
  #chooser: MakeChooser | undefined;
  #opening: Promise<void> | undefined;
  #choice = startingChoice();
  /** Places whose faults are told: those left, and all once a file was asked for. */
  readonly #told = new Set<FaultPlace>();
  #working = false;
  #again = false;

  connectedCallback(): void {
    this.#find('.maker').hidden = false;
    const form = this.#form;
    form.reset();
    form.addEventListener('submit', (event) => event.preventDefault());
    for (const kind of ['focusin', 'pointerdown'] as const) form.addEventListener(kind, () => void this.#open());
    form.addEventListener('input', ({ target }) => void this.#open().then(() => this.#changed(target)));
    form.addEventListener('focusout', ({ target }) => this.#left(target));
    this.#find('.copy').addEventListener('click', () => void this.#open().then(() => this.#copy()));
    this.#find('.clear').addEventListener('click', () => void this.#open().then(() => this.#clear()));
    for (const button of this.querySelectorAll<HTMLButtonElement>('[data-ending]'))
      button.addEventListener('click', () => void this.#take(button.dataset['ending'] as MakeEnding));
    addEventListener('hashchange', () => this.#takeFromAddress());
    this.#takeFromAddress();
  }

  #find(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (found === null) throw new Error(`The page that makes forms has no ${selector}.`);
    return found;
  }

  get #form(): HTMLFormElement {
    return this.#find('form') as HTMLFormElement;
  }

  /** Fetches what forms are made from, once; after a failure the next use tries again. */
  #open(): Promise<void> {
    return (this.#opening ??= this.#fetch());
  }

  async #fetch(): Promise<void> {
    this.ariaBusy = 'true';
    const failed = this.#find('.failed');
    try {
      const { files = '', root = '' } = this.dataset;
      this.#facts = await this.#desk.ask('open', { files, root });
      this.#chooser = new MakeChooser(this.#form, this.#facts);
      this.#chooser.show();
      failed.hidden = true;
    } catch {
      this.#opening = undefined;
      failed.textContent = 'What forms are made from could not be fetched. Try again, or take a stock form.';
      failed.hidden = false;
    } finally {
      this.ariaBusy = null;
    }
  }

  #takeFromAddress(): void {
    const hash = location.hash.slice(1);
    if (!isChoice(hash)) return;
    void this.#open().then(() => {
      if (this.#facts === undefined) return;
      const asked = choiceFromHash(this.#facts, hash);
      this.#set(asked ?? startingChoice(this.#facts.exams.find(({ id }) => id === usable)));
      if (asked === undefined)
        this.#note =
          'This link is damaged, or older than this library: not all of it can be read. A stock form is shown instead.';
    });
  }

  /** Said before the sum of the next form that is shown. */
  #note = '';

  #set(choice: MakeChoice): void {
    if (this.#chooser === undefined) return;
    this.#chooser.choice = choice;
    this.#told.clear();
    this.#refresh();
  }

  #changed(target: EventTarget | null): void {
    if (this.#chooser === undefined || !(target instanceof HTMLElement)) return;
    if (target.matches('.filter')) {
      this.#tellFound(this.#chooser.show());
      return;
    }
    this.#forget();
    if (target.matches('[name=exam]')) this.#chooser.begin(this.#choice);
    else if (target.matches('[name=manoeuvres]')) this.#chooser.show();
    this.#refresh();
  }

  #tellFound(found: number): void {
    this.#find('.found').textContent = found < 0 ? '' : found === 0 ? 'No manoeuvre has this name.' : `${found} found.`;
  }

  /** What stands in the address is no longer what is shown. */
  #forget(): void {
    if (isChoice(location.hash)) history.replaceState(null, '', location.pathname);
  }

  #left(target: EventTarget | null): void {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement)) return;
    if (target.type === 'checkbox' || target.matches('.filter')) return;
    this.#told.add(target.name as FaultPlace);
    this.#tellFaults();
  }

  /** Every fault of what is chosen; those of places that were not yet used are not told. */
  #tellFaults(): MakeFaults {
    if (this.#facts === undefined) return {};
    const faults = makeFaults(this.#choice.words, chosenManoeuvres(this.#facts, this.#choice).length);
    const told = Object.entries(faults).filter(([place]) => this.#told.has(place as FaultPlace));
    this.#chooser?.tell(Object.fromEntries(told));
    return faults;
  }

  #refresh(): void {
    if (this.#chooser === undefined) return;
    this.#choice = this.#chooser.choice;
    this.#tellFaults();
    this.#again = true;
    if (!this.#working) void this.#show();
  }

  /** One form at a time: what was chosen while one was made is made next. */
  async #show(): Promise<void> {
    this.#working = true;
    while (this.#again) {
      this.#again = false;
      await this.#showOnce();
    }
    this.#working = false;
  }

  async #showOnce(): Promise<void> {
    if (this.#facts === undefined) return;
    const some = chosenManoeuvres(this.#facts, this.#choice).length > 0;
    this.#find('.take').hidden = this.#find('.made-form').hidden = !some;
    if (!some) {
      this.#say(nothingYet);
      return;
    }
    try {
      this.#put(await this.#desk.ask('show', { choice: this.#choice, day: today() }));
    } catch (error) {
      this.#say(`The form could not be made: ${(error as Error).message}`);
    }
  }

  #put({ sum, html }: LiveForm): void {
    this.#find('.made-form h2').textContent = this.#choice.words.title || 'Without a title yet';
    this.#find('.parts').innerHTML = html;
    this.#say(`${this.#note} ${sum}`.trim());
    this.#note = '';
  }

  #say(words: string): void {
    this.#find('.said').textContent = words;
  }

  #tell(words: string): void {
    this.#find('.told').textContent = words;
  }

  async #take(ending: MakeEnding): Promise<void> {
    for (const place of ['title', 'purpose', 'leavesOut', 'publisher', 'url', 'manoeuvres'] as const)
      this.#told.add(place);
    const faults = this.#tellFaults();
    if (Object.keys(faults).length > 0) {
      this.#tell(`Not made yet. ${Object.values(faults).join(' ')}`);
      this.#chooser?.goTo(faults);
      return;
    }
    const slow = /pdf|zip/.test(ending) ? ' A PDF takes some seconds, of a long form up to a minute.' : '';
    this.#tell(`The file is being made.${slow}`);
    this.ariaBusy = 'true';
    try {
      const file = await this.#desk.ask('file', { choice: this.#choice, day: today(), ending });
      save(file);
      this.#tell(`${file.name} is downloaded, ${Math.max(1, Math.round(file.bytes.length / 1000))} KB.`);
    } catch (error) {
      this.#tell(`The file could not be made. ${(error as Error).message}`);
    } finally {
      this.ariaBusy = null;
    }
  }

  async #copy(): Promise<void> {
    if (this.#facts === undefined) return;
    if (chosenManoeuvres(this.#facts, this.#choice).length === 0) {
      this.#say('Nothing is chosen yet: there is no link to copy.');
      return;
    }
    history.replaceState(null, '', `${location.pathname}#${choiceToHash(this.#facts, this.#choice)}`);
    const copied = await copyText(location.href);
    const where = copied ? 'The link is copied, and' : 'Copying is not allowed here, but';
    this.#say(`${where} it stands in the address: what is chosen and what is written.`);
  }

  #clear(): void {
    this.#forget();
    const filter = this.#find('.filter') as HTMLInputElement;
    filter.value = '';
    this.#tellFound(-1);
    this.#tell('');
    this.#set(startingChoice());
  }
}

async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** The day on this computer's calendar, YYYY-MM-DD. */
function today(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function save({ name, mediaType, bytes }: FinishedFile): void {
  const url = URL.createObjectURL(new Blob([bytes], { type: mediaType }));
  const link = document.createElement('a');
  Object.assign(link, { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

customElements.define('form-maker', FormMaker);
