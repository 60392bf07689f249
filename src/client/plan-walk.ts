import { screenHtml, type Screen, type ScreenWords } from '../components/run-sheet-walk-html.ts';
import { keepAwake } from './plan-wake-lock.ts';

/** A sheet to go through. */
export interface Walk {
  screens: readonly Screen[];
  words: Omit<ScreenWords, 'skipped'>;
}

/** What is true, or begins, when one goes on. */
function nextWords(screen: Screen): string {
  if (screen.kind === 'move') return screen.block.changeSeconds > 0 ? 'Moved' : 'Ready';
  return { open: 'Begin', step: 'Done', end: 'Close' }[screen.kind];
}

/** How a step was left. */
type Mark = 'done' | 'skipped';

/**
 * A sheet step by step, one a screen. What was done and skipped stays in memory, and so does the place, until another
 * sheet is begun: a slip of the finger loses nothing.
 *
 * Keys: right arrow or space goes on, left arrow goes back, S skips, Escape leaves.
 */
export class RunSheetWalk extends HTMLElement {
  #walk: Walk = { screens: [], words: undefined as never };
  #at = 0;
  #marks = new Map<number, Mark>();
  #begun = 0;
  #release: (() => void) | undefined;
  #clock: ReturnType<typeof setInterval> | undefined;

  connectedCallback(): void {
    const on = (selector: string, act: () => void): void => this.#find(selector).addEventListener('click', act);
    on('.back', () => this.#go(this.#at - 1));
    on('.skip-step', () => this.#leave('skipped'));
    on('.next', () => (this.#screen?.kind === 'end' ? this.#dialog.close() : this.#leave('done')));
    on('.leave', () => this.#dialog.close());
    on('.show-time', () => this.#showTime(this.#find('time').hidden === true));
    this.#dialog.addEventListener('close', () => this.#over());
    document.addEventListener('keydown', (event) => this.#dialog.open && this.#key(event));
    this.#find('.screen').addEventListener('click', ({ target }) => this.#backToSkipped(target));
  }

  /** Begins a sheet, or goes on with the one that was left. */
  begin(walk: Walk): void {
    if (walk !== this.#walk) {
      this.#walk = walk;
      this.#marks.clear();
      this.#at = 0;
      this.#begun = Date.now();
    }
    this.#release = keepAwake();
    this.#clock = setInterval(() => this.#tick(), 1000);
    this.#dialog.showModal();
    this.#tick();
    this.#go(this.#at);
  }

  /** Shows the screen anew, when words for it have come. */
  refresh(): void {
    if (!this.#dialog.open) return;
    const reading = document.activeElement?.matches('h2') === true;
    this.#show();
    if (reading) this.#find('h2').focus();
  }

  get #dialog(): HTMLDialogElement {
    return this.#find('dialog') as HTMLDialogElement;
  }

  #find(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (found === null) throw new Error(`The walk has no ${selector}.`);
    return found;
  }

  #over(): void {
    clearInterval(this.#clock);
    this.#release?.();
    this.#release = undefined;
  }

  #go(to: number): void {
    if (to < 0 || to >= this.#walk.screens.length) return;
    this.#at = to;
    this.#show();
    this.#dialog.scrollTop = 0;
    this.#find('h2').focus();
  }

  /** Marks the step that is left, and goes on. */
  #leave(mark: Mark): void {
    if (this.#screen?.kind === 'step') this.#marks.set(this.#at, mark);
    this.#go(this.#at + 1);
  }

  get #screen(): Screen | undefined {
    return this.#walk.screens[this.#at];
  }

  #show(): void {
    const screen = this.#screen;
    if (screen === undefined) return;
    this.#find('.screen').innerHTML = screenHtml(screen, { ...this.#walk.words, skipped: this.#skipped }).html;
    // A page read on the way opens beside this one: leaving it would lose the marks.
    for (const link of this.querySelectorAll<HTMLAnchorElement>('.screen a')) link.target = '_blank';
    const mark = this.#marks.get(this.#at);
    this.#find('.mark-of-step').textContent = mark === undefined ? '' : `Marked as ${mark}.`;
    this.#find('.skip-step').hidden = screen.kind !== 'step';
    (this.#find('.back') as HTMLButtonElement).disabled = this.#at === 0;
    this.#find('.next').textContent = nextWords(screen);
  }

  get #skipped(): ScreenWords['skipped'] {
    return this.#walk.screens.flatMap((screen, i) =>
      screen.kind === 'step' && this.#marks.get(i) === 'skipped'
        ? [{ number: screen.placed.number, title: this.#walk.words.entry(screen.placed.entry.step.manoeuvre).title }]
        : [],
    );
  }

  #backToSkipped(target: EventTarget | null): void {
    const number = target instanceof HTMLElement ? Number(target.dataset['step']) : NaN;
    this.#go(this.#walk.screens.findIndex((screen) => screen.kind === 'step' && screen.placed.number === number));
  }

  #tick(): void {
    const seconds = Math.floor((Date.now() - this.#begun) / 1000);
    this.#find('time').textContent = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
  }

  #showTime(shown: boolean): void {
    this.#find('time').hidden = !shown;
    this.#find('.show-time').textContent = shown ? 'Hide time' : 'Show time';
  }

  #key(event: KeyboardEvent): void {
    // A key that is held down must not run through the steps.
    if (event.repeat) return;
    const onControl = event.target instanceof Element && event.target.closest('button, a') !== null;
    if (event.ctrlKey || event.metaKey || event.altKey || (onControl && event.key === ' ')) return;
    const act = this.#actOf(event.key.toLowerCase());
    if (act === undefined) return;
    event.preventDefault();
    act();
  }

  #actOf(key: string): (() => void) | undefined {
    if (key === 'arrowright' || key === ' ') return () => this.#leave('done');
    if (key === 'arrowleft') return () => this.#go(this.#at - 1);
    return key === 's' && this.#screen?.kind === 'step' ? () => this.#leave('skipped') : undefined;
  }
}

customElements.define('run-sheet-walk', RunSheetWalk);
