import type { UnitSystem } from '../../src/quantities/index.js';
import type { CardName } from '../../src/teaching/cards.js';
import type { Values } from '../cards.js';
import { byId } from './page.js';

/** The working with the numbers of the fields. What writes it out is large, and is loaded when it is first opened. */
export class Working {
  readonly #details = byId<HTMLDetailsElement>('working');
  readonly #lines = byId('working-lines');
  readonly #name: CardName;
  #values: Values | undefined;
  #system: UnitSystem = 'inch';

  constructor(name: CardName) {
    this.#name = name;
    this.#details.addEventListener('toggle', () => void this.#write());
  }

  /** Shows the working with these values, if it is open. */
  show(values: Values | undefined, system: UnitSystem): void {
    this.#values = values;
    this.#system = system;
    void this.#write();
  }

  async #write(): Promise<void> {
    if (!this.#details.open) return;
    const values = this.#values;
    if (!values) {
      this.#lines.replaceChildren('There is no result to work out.');
      return;
    }
    const { workingOf } = await import('./working-lines.js');
    if (values !== this.#values) return;
    this.#lines.replaceChildren(...workingOf(this.#name, values, this.#system));
  }
}
