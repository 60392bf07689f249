import type { Library } from '../../schemas/library.ts';
import type { Plan, PlanRequest } from '../../schemas/plan.ts';
import { minutesText, otherOrders, type OtherOrders } from '../components/run-sheet.ts';
import { sheetHtml } from '../components/run-sheet-html.ts';
import { screensOf } from '../components/run-sheet-walk-html.ts';
import { sheetCode, sheetEdition } from '../components/sheet-code.ts';
import { blocksOf, coverAtEnd, type Block } from '../plan/blocks.ts';
import { planRequest } from '../plan/plan.ts';
import { countWords } from '../sheets/proof-words.ts';
import { behindHash, isRequest, requestFromHash, requestToHash, withoutLimits } from './plan-address.ts';
import { PlanChooser } from './plan-chooser.ts';
import { PlanData } from './plan-data.ts';
import { askedText, fullRequest, titleOf } from './plan-request.ts';
import type { RunSheetWalk, Walk } from './plan-walk.ts';

/** Milliseconds for the first answer, and for a better one when the first was not proven. */
const quick = { milliseconds: 40 };
const thorough = { milliseconds: 300 };

/** Milliseconds without a choice before what can wait is worked out. */
const pause = 400;

/** A sheet that was made. */
interface Made {
  chosen: PlanRequest;
  full: PlanRequest;
  plan: Plan;
  blocks: Block[];
  others: OtherOrders | undefined;
}

/**
 * Makes a run sheet as one chooses. What is chosen stays in the page; only "Copy link" puts it into the address, after
 * `#`, and what it tells of the patient only when that is ticked.
 *
 * Attributes: `data-files`, address of the page's data; `data-root`, address of the site.
 */
class RunSheetMaker extends HTMLElement {
  #data!: PlanData;
  #chooser!: PlanChooser;
  #made: Made | undefined;
  #walk: Walk | undefined;
  #frame = 0;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  connectedCallback(): void {
    this.ariaBusy = 'true';
    void this.#open()
      .catch(() => (this.#find('.failed').hidden = false))
      .finally(() => (this.ariaBusy = null));
  }

  async #open(): Promise<void> {
    this.#data = await PlanData.open(this.dataset['files'] ?? '', this.dataset['root'] ?? '');
    const form = this.#find('form') as HTMLFormElement;
    this.#chooser = new PlanChooser(form, this.#data.library, (id) => this.#data.names(id));
    this.#listen(form);
    this.#find('.maker').hidden = false;
    this.#takeFromAddress();
    await this.#data.ask('notes').catch(() => undefined);
    this.#complete();
  }

  #listen(form: HTMLFormElement): void {
    form.addEventListener('submit', (event) => event.preventDefault());
    form.addEventListener('input', ({ target }) => this.#changed(target));
    this.#find('.copy').addEventListener('click', () => void this.#copy());
    this.#find('.clear').addEventListener('click', () => this.#clear());
    this.#find('.walk-through').addEventListener('click', () => this.#begin());
    addEventListener('hashchange', () => isRequest(behindHash(location.hash)) && this.#takeFromAddress());
  }

  #find(selector: string): HTMLElement {
    const found = this.querySelector<HTMLElement>(selector);
    if (found === null) throw new Error(`The page of run sheets has no ${selector}.`);
    return found;
  }

  #takeFromAddress(): void {
    const hash = behindHash(location.hash);
    const asked = isRequest(hash) ? requestFromHash(hash, this.#data.known) : undefined;
    this.#chooser.request = asked;
    this.#make();
    if (isRequest(hash) && asked === undefined)
      this.#say(`This link is damaged, or older than this library. ${this.#title} is shown instead.`);
  }

  get #title(): string {
    return this.#find('.sheet h2').textContent;
  }

  #say(words: string): void {
    this.#find('.said').textContent = words;
  }

  /** One sheet a frame at most. What stands in the address is no longer what is shown, so it goes. */
  #changed(target: EventTarget | null): void {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    if (target.matches('.limits')) return;
    if (target.matches('.filter')) return void this.#filter();
    this.#forget();
    this.#chooser.show();
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => this.#make());
  }

  #forget(): void {
    if (isRequest(behindHash(location.hash))) history.replaceState(null, '', location.pathname);
  }

  #filter(): void {
    this.#chooser.show();
    void this.#data.ask('names').then(
      () => this.#chooser.show(),
      () => undefined,
    );
  }

  /** Makes the sheet and shows it; the browser's own record of times tells how long that took. */
  #make(): void {
    performance.mark('choice');
    this.#chooser.show();
    const chosen = this.#chooser.request;
    this.#made = chosen && this.#planned(chosen);
    this.#walk = undefined;
    this.#show();
    this.#say(this.#sum());
    performance.measure('run-sheet', 'choice');
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => this.#complete(), pause);
  }

  #planned(chosen: PlanRequest, options = quick): Made {
    const full = fullRequest(this.#data.library, chosen);
    const plan = planRequest(this.#data.library, full, options);
    return { chosen, full, plan, blocks: blocksOf(plan), others: undefined };
  }

  /** What can wait: a proof that was not had in time, the orders to compare with, what can be left for last. */
  #complete(): void {
    clearTimeout(this.#waiting);
    if (this.#made === undefined) return;
    const { positionSeconds, kept = true } = this.#made.plan.optimal;
    if (!positionSeconds || !kept) {
      this.#made = this.#planned(this.#made.chosen, thorough);
      this.#walk = undefined;
    }
    const { full, plan } = this.#made;
    this.#made.others = otherOrders(this.#data.library, full, plan);
    this.#chooser.offerForLast(plan.steps.map(({ manoeuvre }) => manoeuvre));
    this.#show();
    if (plan.leftOut.length > 0)
      void this.#data.ask('alternatives').then(
        () => this.#show(),
        () => undefined,
      );
  }

  #sum(): string {
    if (this.#made === undefined) return 'Tick what is to be examined.';
    const { totals, leftOut } = this.#made.plan;
    const left = leftOut.length > 0 ? `; ${leftOut.length} left out` : '';
    return `${minutesText(totals.seconds)}, ${countWords(totals.positionChanges, 'change')} of position${left}.`;
  }

  #show(): void {
    const made = this.#made;
    this.#find('.sheet').hidden = made === undefined;
    if (made === undefined) return;
    const { library, notes, words } = this.#data;
    const form = this.#form;
    const { plan, blocks, others } = made;
    this.#find('.sheet h2').textContent = titleOf(library, made.chosen);
    this.#find('.sheet .aim').textContent = form?.purpose ?? '';
    this.#find('.sheet .asked').textContent = askedText(library, made.chosen);
    (this.#find('.walk-through') as HTMLButtonElement).disabled = blocks.length === 0;
    const [mustNotMiss, leavesOut] = [form?.mustNotMiss ?? [], form?.leavesOut];
    const view = { id: 'sheet', plan, blocks, mustNotMiss, leavesOut, others, notes, level: 3 };
    const { html } = sheetHtml(view, words);
    this.#find('.parts').innerHTML = html;
    // What is printed meanwhile is not yet whole, and has no code.
    this.#writeFoot(others === undefined || notes === 'awaited' ? undefined : html);
  }

  get #form(): Library['forms'][number] | undefined {
    return this.#data.library.forms.find(({ id }) => id === this.#made?.chosen.form);
  }

  /** Version and code for the foot of every printed page. */
  #writeFoot(whole: string | undefined): void {
    const head = ['.aim', '.asked'].map((part) => this.#find(`.sheet ${part}`).textContent);
    const [library, title, form] = [this.#data.library.version, this.#title, this.#form];
    const code = whole && sheetCode(head, whole);
    document.documentElement.dataset['edition'] = sheetEdition({ library, title, form, code });
  }

  async #copy(): Promise<void> {
    const request = this.#chooser.request;
    if (request === undefined) return;
    const all = (this.#find('.limits') as HTMLInputElement).checked;
    const linked = all ? request : withoutLimits(request);
    history.replaceState(null, '', `${location.pathname}#${requestToHash(linked)}`);
    const left = Object.keys(linked).length < Object.keys(request).length;
    const copied = await copyText(location.href);
    const where = copied ? 'The link is copied, and' : 'Copying is not allowed here, but';
    this.#say(
      `${where} it stands in the address.${left ? ' What is chosen under “This patient, this room” is not in it.' : ''}`,
    );
  }

  #clear(): void {
    this.#forget();
    this.#chooser.request = undefined;
    this.#make();
  }

  #begin(): void {
    if (this.#made === undefined) return;
    const { plan, blocks } = this.#made;
    const tell = (id: string): readonly string[] => this.#data.tell(id);
    const data = this.#data;
    // The words are asked for at every screen: what was still on its way at the beginning may have come.
    const words = { ...data.words, tell };
    this.#walk ??= {
      screens: screensOf(blocks, {
        layOut: plan.layOut,
        mustNotMiss: this.#form?.mustNotMiss ?? [],
        bare: coverAtEnd(plan),
        leftOut: plan.leftOut.map(({ manoeuvre }) => manoeuvre),
      }),
      words,
    };
    const element = document.querySelector<RunSheetWalk>('run-sheet-walk');
    element?.begin(this.#walk);
    for (const file of ['tell', 'notes'] as const)
      void data.ask(file).then(
        () => {
          element?.refresh();
          if (file === 'notes') this.#show();
        },
        () => undefined,
      );
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

customElements.define('run-sheet-maker', RunSheetMaker);
