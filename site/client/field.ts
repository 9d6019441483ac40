import type { UnitSystem } from '../../src/quantities/index.js';
import { type CardLetter, type FormulaCard, unitOfLetter } from '../cards.js';
import { isRefusal, readField, refusalText } from '../reading.js';
import { type AnyUnit, say, symbolAfter, typed, unitNamed } from '../units.js';
import { byId } from './page.js';

/** A field of a formula: a letter, what is typed for it, and the unit that it is read in. */
export class Field {
  readonly letter: string;
  readonly about: CardLetter;
  readonly #card: FormulaCard;
  readonly #input: HTMLInputElement;
  readonly #select: HTMLSelectElement;
  readonly #hint: HTMLElement;
  readonly #refusal: HTMLElement;
  #unit: AnyUnit;
  #quantity: number | undefined;

  constructor(card: FormulaCard, letter: string, quantity: number, changed: () => void) {
    this.letter = letter;
    this.about = card.letters[letter] as CardLetter;
    this.#card = card;
    this.#input = byId(`field-${letter}`);
    this.#select = byId(`unit-${letter}`);
    this.#hint = byId(`hint-${letter}`);
    this.#refusal = byId(`refusal-${letter}`);
    this.#unit = unitNamed(this.#select.value);
    this.#quantity = quantity;
    this.#input.addEventListener('input', () => {
      this.#read();
      changed();
    });
    this.#select.addEventListener('change', () => {
      this.showIn(unitNamed(this.#select.value));
      changed();
    });
  }

  /** The quantity typed, in SI; undefined if it cannot be read. */
  get quantity(): number | undefined {
    return this.#quantity;
  }

  get unit(): AnyUnit {
    return this.#unit;
  }

  /** Puts a quantity into the field, rounded to what its unit is read to. */
  put(quantity: number): void {
    const text = typed(quantity, this.#unit);
    this.#input.value = text;
    this.#read();
  }

  /** Says what is wrong with the value beside the field, or nothing. */
  refuse(text: string): void {
    this.#refusal.textContent = text;
    if (text === '') this.#input.removeAttribute('aria-invalid');
    else this.#input.setAttribute('aria-invalid', 'true');
  }

  /** Reads in the units of a shop from now on. */
  readAs(system: UnitSystem): void {
    this.showIn(unitOfLetter(this.#card, this.letter, system));
  }

  /** Shows the same quantity in another unit. What cannot be read stays as it is typed. */
  showIn(unit: AnyUnit): void {
    this.#unit = unit;
    this.#select.value = unit.symbol;
    if (this.#quantity === undefined) this.#read();
    else this.#input.value = typed(this.#quantity, unit);
    const [least, most] = this.about.usual;
    const { domain } = this.about;
    const from = say(least, unit, 4).replace(symbolAfter(unit), '');
    const usual = least === most ? say(least, unit, 4) : `${from} to ${say(most, unit, 4)}`;
    const taken = `${say(domain.least, unit, 4).replace(symbolAfter(unit), '')} to ${say(domain.most, unit, 4)}`;
    this.#hint.textContent = `Usual: ${usual}. Taken: ${domain.orNone ? '0, or ' : ''}${taken}.`;
  }

  #read(): void {
    try {
      this.#quantity = readField(this.#input.value, this.#unit);
      this.refuse('');
    } catch (error) {
      if (!isRefusal(error)) throw error;
      this.#quantity = undefined;
      this.refuse(
        this.#input.value.trim() === '' ? 'A number is missing here.' : refusalText(error),
      );
    }
  }
}
