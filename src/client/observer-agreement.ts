import { agreementLines, agreementOf, type Compared, type Ratings } from '../forms/observation-agreement.ts';
import { ratings } from '../forms/observation-words.ts';
import { guardAnswers } from './form-answers.ts';

/**
 * Counts, as they are chosen, the items that two observers marked the same, and lists those that they did not. Warns
 * before the page is left with anything filled in, here or on the sheet.
 */
class ObserverAgreement extends HTMLElement {
  connectedCallback(): void {
    for (const part of this.querySelectorAll<HTMLElement>('.with-scripts')) part.hidden = false;
    const page = document.querySelector('main') ?? this;
    page.addEventListener('input', () => this.#count());
    guardAnswers(page);
    this.#count();
  }

  get #rows(): HTMLTableRowElement[] {
    return [...this.querySelectorAll<HTMLTableRowElement>('tr[data-manoeuvre]')];
  }

  #count(): void {
    const lines = agreementLines(agreementOf(this.#rows.map(itemOf), this.#ratings(0), this.#ratings(1)));
    const items = lines.map((line) => {
      const item = document.createElement('li');
      item.textContent = line;
      return item;
    });
    this.querySelector('.agreement')?.replaceChildren(...items);
  }

  #ratings(observer: number): Ratings {
    return new Map(
      this.#rows.flatMap((row) => {
        const chosen = row.querySelectorAll('select').item(observer).value;
        const rating = ratings.find(({ code }) => code === chosen);
        return rating === undefined ? [] : [[row.dataset['manoeuvre'] ?? '', rating.code] as const];
      }),
    );
  }
}

function itemOf({ dataset, cells }: HTMLTableRowElement): Compared['item'] {
  return {
    manoeuvre: dataset['manoeuvre'] ?? '',
    title: cells.item(0)?.querySelector('.item-name')?.textContent ?? '',
    number: Number(dataset['number']),
    critical: dataset['critical'] !== undefined,
  };
}

customElements.define('observer-agreement', ObserverAgreement);
