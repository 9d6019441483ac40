import {
  guardFields,
  guardList,
  guardObject,
  guardText,
  guardTruth,
  guardWhole,
  guardWord,
  isSoundNumber,
} from '../../judging/internal.js';
import { type Dimension, type Quantity, RebuildInputError } from '../../quantities/index.js';

/** What is known of one cause of uncertainty, type A or type B. */
export type Spread<Q extends number> =
  | {
      /** Type A: the value is the mean of some readings. */
      readonly kind: 'readings';
      /** Standard deviation of one reading, in the unit of the quantity. */
      readonly standardDeviation: Q;
      /** How many readings the value is the mean of. */
      readonly readings: number;
      /** Those of the standard deviation, if it comes from other readings; by default the readings less one. */
      readonly degreesOfFreedom?: number;
    }
  | {
      /** Type A: the standard deviation of a mean, or whatever else was worked out of readings. */
      readonly kind: 'standard error';
      /** The standard deviation of the mean, in the unit of the quantity. */
      readonly standardError: Q;
      /** Its degrees of freedom; by default without number. */
      readonly degreesOfFreedom?: number;
    }
  | {
      /**
       * Type B: it lies between two limits. Anywhere alike (`rectangular`), rather in the middle
       * (`triangular`), or rather at the ends, as a thing that swings to and fro (`arcsine`).
       */
      readonly kind: 'rectangular' | 'triangular' | 'arcsine';
      /** Half the distance between the limits, in the unit of the quantity. */
      readonly halfWidth: Q;
      /** How well the limits are known; by default for certain. */
      readonly degreesOfFreedom?: number;
    }
  | {
      /** Type B: a certificate states an expanded uncertainty. */
      readonly kind: 'normal';
      /** The expanded uncertainty, in the unit of the quantity. */
      readonly expanded: Q;
      /** What it was expanded by. */
      readonly coverageFactor: number;
      /** How well it is known; by default for certain. */
      readonly degreesOfFreedom?: number;
    };

/** One line of an uncertainty budget. */
export type Contributor<D extends Dimension = 'length'> = {
  /** What it is called, in the trade's words: `'zero error'`. */
  readonly name: string;
  /** The same for every reading that this instrument takes today, so that it cancels in the difference of two. */
  readonly common?: boolean;
} & (
  | (Spread<Quantity<D>> & {
      /** None: it is in the unit of the result. */
      readonly sensitivity?: never;
    })
  // Of another dimension: a temperature, which its sensitivity turns into a length.
  | (Spread<number> & {
      /** How much the result changes for a unit of it, both in coherent SI units. */
      readonly sensitivity: number;
    })
);

const FIELDS = {
  readings: [
    'name',
    'kind',
    'standardDeviation',
    'readings',
    'degreesOfFreedom',
    'sensitivity',
    'common',
  ],
  'standard error': ['name', 'kind', 'standardError', 'degreesOfFreedom', 'sensitivity', 'common'],
  rectangular: ['name', 'kind', 'halfWidth', 'degreesOfFreedom', 'sensitivity', 'common'],
  triangular: ['name', 'kind', 'halfWidth', 'degreesOfFreedom', 'sensitivity', 'common'],
  arcsine: ['name', 'kind', 'halfWidth', 'degreesOfFreedom', 'sensitivity', 'common'],
  normal: [
    'name',
    'kind',
    'expanded',
    'coverageFactor',
    'degreesOfFreedom',
    'sensitivity',
    'common',
  ],
} as const satisfies Record<Spread<number>['kind'], readonly string[]>;
const KINDS = /* @__PURE__ */ Object.keys(FIELDS) as Spread<number>['kind'][];

/** The standard deviation of each distribution of half width 1. */
const DIVISORS = { rectangular: 3, triangular: 6, arcsine: 2 } as const;

/** What a contributor adds to a result: a standard deviation of it, with its degrees of freedom. */
export interface Contribution {
  readonly name: string;
  readonly standard: number;
  /** Infinite where they are without number. */
  readonly degrees: number;
  readonly common: boolean;
}

/** Refuses a budget that is none, and tells what each contributor adds. */
export function contributionsOf<D extends Dimension>(
  parameter: string,
  contributors: readonly Contributor<D>[],
): readonly Contribution[] {
  guardList(parameter, contributors, 1, 'contributors');
  const contributions = contributors.map((one, i) => contributionOf(`${parameter}[${i}]`, one));
  if (contributions.some(({ standard }) => standard > 0)) return contributions;
  throw new RebuildInputError({
    parameter,
    value: contributors,
    expected: 'at least one contributor that adds something',
    hint: 'Nothing is measured without an uncertainty: what is the division of the scale?',
  });
}

function contributionOf<D extends Dimension>(at: string, given: Contributor<D>): Contribution {
  guardObject(at, given);
  const kind = guardWord(`${at}.kind`, given.kind, KINDS);
  guardFields(at, given as Readonly<Record<string, unknown>>, FIELDS[kind] as readonly string[]);
  const name = guardText(`${at}.name`, given.name);
  const { common = false, sensitivity = 1 } = given;
  guardTruth(`${at}.common`, common);
  if (!isSoundNumber(sensitivity)) {
    throw refusedNumber(`${at}.sensitivity`, sensitivity, 'a finite number');
  }
  const standard = Math.abs(sensitivity) * standardOf(at, given as Spread<number>);
  if (!isSoundNumber(standard)) {
    throw refusedNumber(`${at}.sensitivity`, sensitivity, 'one whose product can be held');
  }
  return { name, standard, degrees: degreesOf(at, given as Spread<number>), common };
}

function standardOf(at: string, spread: Spread<number>): number {
  switch (spread.kind) {
    case 'readings': {
      const standard = guardNone(`${at}.standardDeviation`, spread.standardDeviation);
      const least = spread.degreesOfFreedom === undefined ? 2 : 1;
      guardWhole(`${at}.readings`, spread.readings, [least, MOST_READINGS], READINGS_HINT);
      return standard / Math.sqrt(spread.readings);
    }
    case 'standard error':
      return guardNone(`${at}.standardError`, spread.standardError);
    case 'normal': {
      const factor = spread.coverageFactor;
      if (!isSoundNumber(factor) || factor < 0.1) {
        throw refusedNumber(`${at}.coverageFactor`, factor, 'a coverage factor of 0.1 or more');
      }
      return guardNone(`${at}.expanded`, spread.expanded) / factor;
    }
    default:
      return guardNone(`${at}.halfWidth`, spread.halfWidth) / Math.sqrt(DIVISORS[spread.kind]);
  }
}

function degreesOf(at: string, spread: Spread<number>): number {
  const given = spread.degreesOfFreedom;
  if (given === undefined) return spread.kind === 'readings' ? spread.readings - 1 : Infinity;
  return guardDegrees(`${at}.degreesOfFreedom`, given);
}

/** Refuses degrees of freedom that are none. */
export function guardDegrees(parameter: string, degrees: number): number {
  if (isSoundNumber(degrees) && degrees >= 1) return degrees;
  throw new RebuildInputError({
    parameter,
    value: degrees,
    expected: '1 degree of freedom or more',
    hint: 'Give how many readings it was found from, less one.',
  });
}

function guardNone(parameter: string, value: number): number {
  if (isSoundNumber(value) && value >= 0) return value;
  throw refusedNumber(parameter, value, 'zero or more, in its coherent SI unit');
}

function refusedNumber(parameter: string, value: unknown, expected: string): RebuildInputError {
  return new RebuildInputError({
    parameter,
    value,
    expected,
    hint: 'An uncertainty has no sign. Wrap a length in its unit, e.g. inch(0.0001).',
  });
}

/** More than anybody takes of one size. */
export const MOST_READINGS = 10000;
const READINGS_HINT =
  'One reading alone tells nothing of its spread: give the degrees of freedom of a spread that was found before.';
