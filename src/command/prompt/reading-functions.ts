import type { MathJsInstance } from 'mathjs';
import {
  type Exact,
  isMathUnit,
  type MathUnit,
  nameOfUnit,
  unitByName,
  withArticle,
  wrongUnit,
} from '../../mathjs/internal.js';
import {
  celsiusDifference,
  type Dimension,
  fahrenheitDifference,
  kelvinDifference,
  litre,
  type Quantity,
  RebuildInputError,
  type Unit,
} from '../../quantities/index.js';
import { ambiguousSpellings } from '../../quantities/internal.js';
import { asMixed, type Bare, lengthLacksUnit, numberLacksUnit } from './lacks-unit.js';
import { WrongStatement } from './wrong-statement.js';

/** Their names at the prompt, where nobody types a word with a line before it. */
export const READING = {
  of: '_of',
  to: '_to',
  minus: '_minus',
  plus: '_plus',
  times: '_times',
  over: '_over',
} as const;

/** Differences that are read in the degrees of a scale. */
const DIFFERENCE: Readonly<Record<string, Unit<'temperatureDifference'>>> = {
  '°C': celsiusDifference,
  '°F': fahrenheitDifference,
};
const differenceOf = (scale: Unit<Dimension>): Unit<'temperatureDifference'> =>
  DIFFERENCE[scale.symbol] ?? kelvinDifference;

type Operator = (a: unknown, b: unknown) => unknown;
/** A sum or a difference, and both of its values as they were typed. */
type Adding = (a: unknown, b: unknown, left: string, right: string) => unknown;

interface Written {
  readonly left: string;
  readonly right: string;
  readonly sign: '+' | '-';
}

/**
 * What the prompt puts where mathjs would be a bit off or wrong: a number with its unit, a conversion, and sums of
 * temperatures, of which mathjs makes another temperature.
 */
export function readingFunctions(
  math: MathJsInstance,
  exact: Exact,
): Readonly<Record<string, Operator | Adding>> {
  const multiply = math.multiply as Operator;
  const divide = math.divide as Operator;
  const [add, subtract] = [math.add as Operator, math.subtract as Operator];

  const of: Operator = (value, name) => {
    const unit = unitByName.get(name as string);
    refuseAmbiguous(name as string);
    const made = (number: number) => unit && exact.unitOf(unit(number), unit);
    if (typeof value === 'number' && unit) return made(value);
    return multiply(value, math.unit(name as string));
  };

  const to: Operator = (value, name) => {
    const wanted = unitByName.get(name as string);
    refuseAmbiguous(name as string);
    if (typeof value === 'number') throw wrongUnit('to', value, [wanted?.dimension ?? 'length']);
    if (!isMathUnit(value) || !wanted) {
      return (math.to as Operator)(value, math.unit(name as string));
    }
    const own = exact.dimensionOf(value);
    // A difference in degrees of a scale is the difference that they are.
    const isApart = own === 'temperatureDifference' && wanted.dimension === 'temperature';
    if (own === 'gaugePressure' && wanted.dimension === 'pressure') {
      const asked = nameOfUnit(wanted);
      const onGauge = unitByName.has(`${asked}Gauge`)
        ? `to ${asked}Gauge, or for the absolute one `
        : '';
      throw new WrongStatement(
        `${exact.text(value)} is a gauge pressure: write ${onGauge}absolutePressure(…, standardAtmosphere) to ${name as string}`,
      );
    }
    if (own === 'pressure' && wanted.dimension === 'gaugePressure') {
      throw new WrongStatement(
        `${exact.text(value)} is an absolute pressure: write gaugePressure(…, standardAtmosphere) to ${name as string}`,
      );
    }
    const unit: Unit<Dimension> = isApart ? differenceOf(wanted) : wanted;
    if (!exact.is(value, unit.dimension))
      throw wrongUnit('to', exact.text(value), [unit.dimension]);
    return exact.unitOf(exact.valueOf(value, unit.dimension), unit);
  };

  const scaleOf = (value: unknown): Unit<Dimension> | undefined => {
    const [unit] = isMathUnit(value) ? exact.named(value) : [];
    return unit?.dimension === 'temperature' ? unit : undefined;
  };
  const apart = (value: unknown): number | undefined =>
    isMathUnit(value) && exact.is(value, 'temperatureDifference')
      ? exact.valueOf(value, 'temperatureDifference')
      : undefined;
  const kelvins = (value: unknown) => exact.valueOf(value as never, 'temperature');
  const warmer = (value: unknown, by: number, scale: Unit<Dimension>) => {
    const sum = kelvins(value) + by;
    scale(0);
    return exact.unitOf(sum as Quantity<'temperature'>, scale);
  };

  /** Refuses a plain number beside a size. */
  const lacksUnit = (bare: Bare, size: MathUnit, orMixed: string) => {
    const [unit] = exact.named(size);
    if (unit?.dimension === 'length') return lengthLacksUnit(bare, unit, orMixed);
    const scale = scaleOf(size);
    const name = scale ? nameOfUnit(differenceOf(scale)) : exact.text(size).replace(/^\S+ /, '');
    return numberLacksUnit(bare, [name]);
  };

  const refuseKinds = (a: unknown, b: unknown, { left, right, sign }: Written) => {
    if (typeof a === 'number' && isMathUnit(b)) {
      const orMixed = sign === '+' ? asMixed(a, b, exact) : '';
      throw lacksUnit({ value: a, written: left }, b, orMixed);
    }
    if (typeof b === 'number' && isMathUnit(a))
      throw lacksUnit({ value: b, written: right }, a, '');
    if (!isMathUnit(a) || !isMathUnit(b) || a.equalBase(b)) return;
    const [one, other] = [exact.dimensionOf(a), exact.dimensionOf(b)];
    if (!one || !other) return;
    throw new WrongStatement(
      `${withArticle(one)} and ${withArticle(other)} are not of one kind: neither adds to the other`,
    );
  };

  /** A volume that was typed, in its measure: a part of a quart of oil is not said in cubic inches. */
  const measured = (value: unknown) => {
    if (!isMathUnit(value) || !exact.isMade(value) || exact.isResult(value)) return undefined;
    const [unit] = exact.named(value);
    // Small litres are said in mL.
    if (unit?.dimension !== 'volume' || unit === litre) return undefined;
    return {
      size: exact.valueOf(value, 'volume'),
      made: (size: number) => exact.unitOf(size, unit),
    };
  };

  const minus: Adding = (a, b, left, right) => {
    const [scale, other] = [scaleOf(a), scaleOf(b)];
    refuseKinds(a, b, { left, right, sign: '-' });
    const [whole, less] = [measured(a), measured(b)];
    if (whole && less) return whole.made(whole.size - less.size);
    if (!scale) return subtract(a, b);
    if (other) return exact.unitOf(kelvins(a) - kelvins(b), differenceOf(scale));
    const by = apart(b);
    return by === undefined ? subtract(a, b) : warmer(a, -by, scale);
  };

  const plus: Adding = (a, b, left, right) => {
    const [scale, other] = [scaleOf(a), scaleOf(b)];
    if (scale && other) throw twoTemperatures(exact.text(b as never));
    const by = apart(scale ? b : a);
    if ((scale || other) && by !== undefined) {
      return warmer(scale ? a : b, by, (scale ?? other) as Unit<Dimension>);
    }
    refuseKinds(a, b, { left, right, sign: '+' });
    const [whole, more] = [measured(a), measured(b)];
    if (whole && more) return whole.made(whole.size + more.size);
    return add(a, b);
  };

  /** Half of 100 °C is no temperature that anybody means: the zero of the scale is only a mark on it. */
  const refuseScales = (values: readonly unknown[], done: 'multiplied' | 'divided') => {
    for (const each of values) {
      if ((scaleOf(each)?.offset ?? 0) === 0 || (each as MathUnit).value === null) continue;
      throw new WrongStatement(
        `a temperature cannot be ${done}; a difference of two can, such as 60 celsiusDifference`,
      );
    }
  };
  /** A product is shown in the unit that the trade says it in, whichever its factors were converted to. */
  const product = (made: unknown) =>
    isMathUnit(made) ? Object.assign(made, { fixPrefix: false }) : made;
  /** Both ends of a span by one number or size; below zero they change places. */
  const ofEnds = ([min, max]: readonly [unknown, unknown], by: unknown, work: Operator) => {
    const [least, most] = [work(min, by), work(max, by)];
    const isBelow = (isMathUnit(by) ? Number(by.value) : Number(by)) < 0;
    return isBelow ? { min: most, max: least } : { min: least, max: most };
  };
  const times: Operator = (a, b) => {
    refuseScales([a, b], 'multiplied');
    const [one, other] = [endsOf(a), endsOf(b)];
    if (one && isOne(b)) return ofEnds(one, b, times);
    if (other && isOne(a)) return ofEnds(other, a, times);
    const whole = measured(a) ?? measured(b);
    const by = typeof a === 'number' ? a : b;
    if (whole && typeof by === 'number') return whole.made(whole.size * by);
    return product(multiply(a, b));
  };
  const over: Operator = (a, b) => {
    refuseScales([a, b], 'divided');
    const ends = endsOf(a);
    if (ends && isOne(b)) return ofEnds(ends, b, over);
    const whole = measured(a);
    if (whole && typeof b === 'number') return whole.made(whole.size / b);
    return product(divide(a, b));
  };

  return {
    [READING.of]: of,
    [READING.to]: to,
    [READING.minus]: minus,
    [READING.plus]: plus,
    [READING.times]: times,
    [READING.over]: over,
  };
}

const isOne = (value: unknown): boolean => typeof value === 'number' || isMathUnit(value);

/** Both ends of a span of sizes, which is that and nothing else. */
function endsOf(value: unknown): readonly [min: unknown, max: unknown] | undefined {
  if (typeof value !== 'object' || value === null || Object.keys(value).join() !== 'min,max') {
    return undefined;
  }
  const { min, max } = value as { readonly min: unknown; readonly max: unknown };
  return isOne(min) && isOne(max) ? [min, max] : undefined;
}

/** An ounce, a pint, a quart or a gallon that does not say whose. */
function refuseAmbiguous(name: string): void {
  const bare = name.replace(/s$/, '');
  if (bare === 'ton') {
    throw new WrongStatement(
      `${name}: this may be a short ton (2000 lb), a long ton (2240 lb) or a tonne (1000 kg); say it in lb or kg`,
    );
  }
  if (name === 'oz' || !Object.hasOwn(ambiguousSpellings, bare)) return;
  throw new RebuildInputError({
    parameter: name,
    value: name,
    shown: 'this',
    expected: 'one measure',
    problem: `may be ${ambiguousSpellings[bare]}`,
    hint: 'Say which.',
  });
}

const twoTemperatures = (second: string): WrongStatement =>
  new WrongStatement(
    `${second} cannot be added to a temperature; a difference can, such as 25 celsiusDifference`,
  );
