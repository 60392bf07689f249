/** Says what a paper copy is, by the code printed on it: looked up in the page's own table, so that nothing is sent. */
class CheckCopy extends HTMLElement {
  connectedCallback(): void {
    const form = this.querySelector('form');
    if (form === null) throw new Error('check-copy holds no form');
    form.hidden = false;
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      const typed = new FormData(form).get('code');
      this.#answer(typeof typed === 'string' ? typed : '');
    });
  }

  #answer(typed: string): void {
    const answer = this.querySelector('.answer');
    if (answer) answer.textContent = this.#words(typed.toLowerCase().replace(/[\s-]/g, ''));
  }

  #words(code: string): string {
    if (!/^[0-9a-f]{8}$/.test(code))
      return 'A code has eight signs: digits, and letters from a to f. Read it once more.';
    const rows = [...this.querySelectorAll<HTMLTableRowElement>(`tr[data-code="${code}"]`)];
    if (rows.length === 0)
      return `No form released here has the code ${code}. Read it once more. If it is right, the copy is an old draft, was altered, or was made by a clinic or service: do not use it until whoever is named on it confirms it.`;
    return rows
      .map((row) =>
        [...row.cells]
          .slice(1)
          .map((cell) => cell.textContent.trim())
          .join(', '),
      )
      .join(' ');
  }
}

customElements.define('check-copy', CheckCopy);
