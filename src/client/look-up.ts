import { countsOf, lookUp, type Answer, type Ground } from '../search/look-up.ts';
import type { Hit, SearchIndex } from '../search/search-index.ts';
import { putIntoAddress, takeFromAddress } from './look-up-address.ts';
import { answerWords } from './look-up-words.ts';
import { resultItem } from './result-item.ts';
import { correct, openIndex } from './search-index.ts';

/** Milliseconds without a key before an answer is looked for. */
const pause = 80;

/** How many results are shown at first, and added at each asking. */
const portion = 8;

/**
 * Look-up as one types, round a form that works alone. What is typed and chosen stays in the page's memory; only the
 * button that says so puts it into the address, after `#`.
 *
 * Attributes: `data-index`, address of the search index; `data-terms`, address of the known words; `data-edition`.
 */
class LookUp extends HTMLElement {
  #index: Promise<SearchIndex> | undefined;
  /** What stands in the list; undefined when a later look-up has overtaken it. */
  #answer: Promise<Answer | undefined> = Promise.resolve(undefined);
  #waiting: ReturnType<typeof setTimeout> | undefined;
  #turn = 0;

  connectedCallback(): void {
    this.addEventListener('focusin', () => void this.#open().catch(() => undefined));
    this.addEventListener('input', () => this.#soon());
    this.addEventListener('keydown', (event) => this.#key(event));
    this.addEventListener('submit', (event) => {
      event.preventDefault();
      void this.#openFirst();
    });
    for (const part of this.querySelectorAll<HTMLElement>('.with-scripts')) part.hidden = false;
    if (this.#selects.length > 0) this.#useAddress();
    if (this.#input.value !== '') this.#now();
  }

  /** The page that is for look-up alone takes its words from the address, and can put them there. */
  #useAddress(): void {
    this.#find('.to-address', HTMLElement).addEventListener('click', () => {
      putIntoAddress({ words: this.#input.value, chosen: this.#chosen });
      this.#tell('The address of this page now holds this look-up.');
    });
    this.#find('.clear', HTMLElement).addEventListener('click', () => this.#clear());
    addEventListener('hashchange', () => this.#takeFromAddress());
    this.#takeFromAddress();
  }

  #takeFromAddress(): void {
    const asked = takeFromAddress();
    if (asked !== undefined) {
      this.#input.value = asked.words;
      for (const select of this.#selects) select.value = asked.chosen[select.name] ?? '';
    }
    this.#now();
  }

  get #input(): HTMLInputElement {
    return this.#find('input', HTMLInputElement);
  }

  get #selects(): HTMLSelectElement[] {
    return [...this.querySelectorAll('select')];
  }

  get #links(): HTMLAnchorElement[] {
    return [...this.querySelectorAll<HTMLAnchorElement>('.results a')];
  }

  get #chosen(): Record<string, string> {
    const chosen = this.#selects.filter(({ value }) => value !== '');
    return Object.fromEntries(chosen.map(({ name, value }) => [name, value]));
  }

  #find<Kind extends HTMLElement>(selector: string, kind: new () => Kind): Kind {
    const found = this.querySelector(selector);
    if (!(found instanceof kind)) throw new Error(`Look-up has no ${selector}.`);
    return found;
  }

  #tell(...words: (string | Node)[]): void {
    this.#find('[role=status]', HTMLElement).replaceChildren(...words);
  }

  #open(): Promise<SearchIndex> {
    this.#index ??= openIndex(this.dataset['index'] ?? '', this.dataset['edition'] ?? '');
    this.#index.catch(() => (this.#index = undefined));
    return this.#index;
  }

  async #ground(): Promise<Ground> {
    const terms = this.dataset['terms'] ?? '';
    return {
      index: await this.#open(),
      chosen: this.#chosen,
      correct: (words) => correct(words, terms).catch(() => undefined),
    };
  }

  #soon(): void {
    clearTimeout(this.#waiting);
    this.#turn += 1;
    this.#waiting = setTimeout(() => this.#now(), pause);
  }

  #now(): void {
    clearTimeout(this.#waiting);
    this.#waiting = undefined;
    this.#turn += 1;
    this.#answer = this.#ask(this.#turn).catch(() => {
      this.#find('.failed', HTMLElement).hidden = false;
      this.#find('.results', HTMLElement).replaceChildren();
      this.#tell();
      return undefined;
    });
  }

  async #ask(turn: number): Promise<Answer | undefined> {
    const typed = this.#input.value.trim();
    const ground = await this.#ground();
    const answer = await lookUp(typed, ground);
    const looked = answer.meant ?? typed;
    const items = await this.#items(answer.hits.slice(0, portion), looked);
    if (turn !== this.#turn) return undefined;
    this.#find('.failed', HTMLElement).hidden = true;
    this.#find('.results', HTMLElement).replaceChildren(...items);
    const narrowed = Object.keys(this.#chosen).length > 0;
    this.#tell(...answerWords(typed, answer, narrowed, () => this.#accept(answer)));
    this.#offerMore(answer.hits, looked);
    void this.#count(looked, ground, turn);
    return answer;
  }

  async #items(hits: readonly Hit[], typed: string): Promise<HTMLLIElement[]> {
    const marks = [...this.#find('template', HTMLTemplateElement).content.querySelectorAll('svg')];
    const pages = await Promise.all(hits.map((hit) => hit.data()));
    return pages.map((page) => {
      const mark = marks.find(({ dataset }) => dataset['position'] === page.meta['position']);
      return resultItem(page, typed, mark?.cloneNode(true));
    });
  }

  #offerMore(hits: readonly Hit[], typed: string): void {
    const button = this.#find('.more', HTMLButtonElement);
    button.hidden = this.#links.length >= hits.length;
    button.onclick = () => void this.#showMore(hits, typed);
  }

  async #showMore(hits: readonly Hit[], typed: string): Promise<void> {
    const turn = this.#turn;
    const shown = this.#links.length;
    const items = await this.#items(hits.slice(shown, shown + portion), typed);
    if (turn !== this.#turn) return;
    this.#find('.results', HTMLElement).append(...items);
    this.#links[shown]?.focus();
    this.#offerMore(hits, typed);
  }

  async #count(typed: string, ground: Ground, turn: number): Promise<void> {
    for (const select of this.#selects) {
      const counts = await countsOf(select.name, typed, ground);
      if (turn !== this.#turn) return;
      for (const option of select.querySelectorAll<HTMLOptionElement>('[value]:not([value=""])')) {
        const count = counts[option.value] ?? 0;
        option.textContent = `${option.value} (${count})`;
        option.disabled = count === 0 && !option.selected;
      }
    }
  }

  /** Enter: opens the first page that has all the words; words put right, or pages with some, are looked at first. */
  async #openFirst(): Promise<void> {
    if (this.#waiting !== undefined) this.#now();
    const answer = await this.#answer;
    const [first] = this.#links;
    if (answer === undefined || first === undefined) return;
    if (answer.meant !== undefined) this.#accept(answer);
    else if (answer.partly) first.focus();
    else location.assign(first.href);
  }

  #accept({ meant = '' }: Answer): void {
    this.#input.value = meant;
    this.#input.focus();
    this.#now();
  }

  #clear(): void {
    this.#input.value = '';
    for (const select of this.#selects) select.value = '';
    if (location.hash.startsWith('#q=')) putIntoAddress(undefined);
    this.#input.focus();
    this.#now();
  }

  #key(event: KeyboardEvent): void {
    const links = this.#links;
    const at = links.findIndex((link) => link === event.target);
    if (at < 0 && event.target !== this.#input) return;
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (event.key === 'Escape') this.#clear();
    else if (step === undefined || (step > 0 && at === links.length - 1)) return;
    else (links[at + step] ?? this.#input).focus();
    event.preventDefault();
  }
}

customElements.define('look-up', LookUp);
