import type { Form } from '../../schemas/form.ts';
import { formChanges } from '../forms/changes/form-changes.ts';
import { changesText } from '../forms/changes/words.ts';

/** Shows what changed between any two versions of a form, by the same rules as the pages and the command. */
class CompareVersions extends HTMLElement {
  connectedCallback(): void {
    const form = this.querySelector('form');
    if (form === null) throw new Error('compare-versions holds no form');
    form.hidden = false;
    this.querySelector<HTMLElement>('.without-scripts')?.remove();
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      void this.#compare(new FormData(form));
    });
  }

  async #compare(chosen: FormData): Promise<void> {
    try {
      const [before, after] = await Promise.all(['from', 'to'].map((name) => formAt(chosen.get(name))));
      if (before && after) this.#show(changesText(formChanges(before, after)));
    } catch {
      this.#show('The versions cannot be read just now. The changes of each version stand below.');
    }
  }

  #show(text: string): void {
    const lines = text.split('\n').map((line) => {
      const paragraph = document.createElement('p');
      paragraph.textContent = line.trim();
      if (line !== '' && !line.startsWith('  ')) paragraph.className = 'size';
      return paragraph;
    });
    this.querySelector('.answer')?.replaceChildren(...lines.filter((one) => one.textContent !== ''));
  }
}

async function formAt(address: FormDataEntryValue | null): Promise<Form> {
  if (typeof address !== 'string') throw new Error('No version is chosen.');
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address} answered ${answer.status}`);
  return (await answer.json()) as Form;
}

customElements.define('compare-versions', CompareVersions);
