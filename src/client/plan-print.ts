/** Class of the root while only the order of the sheet is printed, in large type. */
const wall = 'wall';

/** Two buttons: the whole sheet on paper, or its order alone in type that is read from across the room. */
class PrintSheet extends HTMLElement {
  connectedCallback(): void {
    for (const part of this.querySelectorAll<HTMLElement>('.with-scripts')) part.hidden = false;
    this.querySelector('.whole')?.addEventListener('click', () => print());
    this.querySelector('.large')?.addEventListener('click', () => this.#printLarge());
  }

  #printLarge(): void {
    const { classList } = document.documentElement;
    classList.add(wall);
    addEventListener('afterprint', () => classList.remove(wall), { once: true });
    print();
  }
}

customElements.define('print-sheet', PrintSheet);
