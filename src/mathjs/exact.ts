import {
  coherentUnit,
  type Dimension,
  type Quantity,
  tradeUnit,
  type Unit,
  type UnitSystem,
  valueIn,
} from '../quantities/index.js';
import type { MathInstance, MathUnit } from './instance.js';
import { shortNumber } from './short-number.js';
import { coherentName, isPlain, nameOfUnit, unitByName } from './unit-names.js';

/**
 * Quantities and units of mathjs, each made of the other without losing a bit. mathjs multiplies by a rounded factor;
 * so a reading is taken back to the number that was typed, and then it is ours to convert. What was made here is
 * remembered as it was.
 */
export class Exact {
  readonly #made = new WeakMap<MathUnit, number>();
  readonly #results = new WeakSet<MathUnit>();
  readonly #samples = new Map<Dimension, MathUnit>();

  /** With `typed: false` every reading was made here, so that what mathjs made comes of arithmetic and is taken as it is. */
  constructor(
    private readonly math: MathInstance,
    private readonly typed = true,
  ) {}

  /** A quantity as a unit of mathjs, shown in the unit that the trade reads; a ratio is a number. */
  unit(value: number, dimension: Dimension, system: UnitSystem): MathUnit | number {
    if (isPlain(dimension)) return value;
    const made = this.unitOf(value, tradeUnit(dimension, system));
    this.#results.add(made);
    return made;
  }

  /** A quantity as a unit of mathjs, shown in the unit given. */
  unitOf(value: number, shown: Unit<Dimension>): MathUnit {
    const name = nameOfUnit(shown);
    const made =
      shown.dimension === 'temperature'
        ? this.math.unit(valueIn(value as Quantity<Dimension>, shown), name)
        : this.math.unit(value, coherentName(shown.dimension)).to(name);
    this.#made.set(made, value);
    return made;
  }

  /** The quantity that a unit of mathjs is, in SI. It must be of that dimension: see `is`. */
  valueOf(unit: MathUnit, dimension: Dimension): number {
    const made = this.#made.get(unit);
    if (made !== undefined) return made;
    const [own, name] = this.named(unit);
    if (own === undefined) return Number(unit.value);
    const number = unit.toNumber(name);
    if (!this.typed) {
      return dimension === 'temperature' ? own(number) : Number(unit.value);
    }
    const short = Number(number.toPrecision(15));
    const isTyped = this.math.unit(short, name).value === unit.value;
    if (isTyped || dimension === 'temperature' || typeof unit.value !== 'number') {
      return own(isTyped ? short : number);
    }
    return unit.value;
  }

  /** Whether a unit is a result as a function gave it, in a unit that nobody asked for. */
  isResult(unit: MathUnit): boolean {
    return this.#results.has(unit);
  }

  /** Whether a unit is as it was made here, and not what mathjs computed of others. */
  isMade(unit: MathUnit): boolean {
    return this.#made.has(unit);
  }

  /** Whether a unit may stand where a dimension is wanted. */
  is(unit: MathUnit, dimension: Dimension): boolean {
    if (isPlain(dimension)) return false;
    const [own] = this.named(unit);
    if (own !== undefined && own.dimension !== dimension) {
      // A kelvin is both: a temperature, and a difference of two.
      return own.symbol === 'K' && dimension === 'temperatureDifference';
    }
    return unit.equalBase(this.sample(dimension));
  }

  /** The dimension of a unit where nothing says which is wanted: that of its name, or the first that fits. */
  dimensionOf(unit: MathUnit): Dimension | undefined {
    const [own] = this.named(unit);
    if (own) return own.dimension;
    const all = Object.keys(coherentUnit) as Dimension[];
    return all.find((dimension) => this.is(unit, dimension));
  }

  /** A unit with its value as we print it. */
  text(unit: MathUnit): string {
    const [own, name] = this.named(unit);
    if (unit.value === null) return unit.toString();
    if (own === undefined) {
      const made = unit.formatUnits();
      return `${shortNumber(unit.toNumber(made), undefined)} ${made}`;
    }
    return `${shortNumber(unit.toNumber(name), own)} ${own.symbol}`;
  }

  /** Our unit of that name, if it is a single one. */
  named(unit: MathUnit): readonly [Unit<Dimension> | undefined, string] {
    const [only, another] = unit.units;
    if (only === undefined || another !== undefined || only.power !== 1) return [undefined, ''];
    const name = `${(only.prefix as { readonly name: string }).name}${only.unit.name}`;
    return [unitByName.get(name), name];
  }

  private sample(dimension: Dimension): MathUnit {
    const known = this.#samples.get(dimension);
    if (known) return known;
    const made = this.math.unit(1, coherentName(dimension));
    this.#samples.set(dimension, made);
    return made;
  }
}
