/**
 * A notice that shows itself once the day in `data-due` (YYYY-MM-DD) is past. The site is the same bytes whenever it is
 * built, so only the reader's own calendar can tell.
 */
class ReviewDue extends HTMLElement {
  connectedCallback(): void {
    this.hidden = (this.dataset['due'] ?? '') >= dayOf(new Date());
  }
}

/** The day where the reader is, as YYYY-MM-DD. */
function dayOf(date: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

customElements.define('review-due', ReviewDue);
