import type { Basis } from '../judging/index.js';
import {
  guardFields,
  guardList,
  guardText,
  guardWhole,
  stationAlong,
} from '../judging/internal.js';
import { type Length, type Ratio, RebuildInputError, type Torque } from '../quantities/index.js';
import { fastenerTorque } from './domains.js';
import { middleOutwards } from './sequence.js';

/** Where a bolt stands in its pattern. */
export interface BoltPlace {
  /** What it is called, as it is marked on the part. */
  readonly name: string;
  /** Along the joint, from a datum of the caller's own [m]. */
  readonly along: Length;
  /** Across it, from a datum of the caller's own [m]. */
  readonly across: Length;
}

/** Bolts that hold one part. */
export interface BoltsToTighten {
  /** All of them. */
  readonly bolts: readonly BoltPlace[];
  /** Torque at each fastener in the end [N·m]. */
  readonly torque: Torque;
  /** In how many rounds it is reached: 2 or 3; by default 3. */
  readonly rounds?: 2 | 3;
}

/** One round over all bolts. */
export interface TighteningRound {
  /** How much of the torque [-]. */
  readonly share: Ratio;
  /** Torque at each fastener [N·m]. */
  readonly torque: Torque;
}

/** In what order bolts are tightened, and in what rounds. */
export interface TighteningPlan {
  /** The names of the bolts in the order of every round. */
  readonly sequence: readonly string[];
  /** The rounds, from the first to the last. */
  readonly rounds: readonly TighteningRound[];
  /** Who says so. */
  readonly basis: Basis;
}

const TIGHTEN = ['bolts', 'torque', 'rounds'] as const;
const PLACE = ['name', 'along', 'across'] as const;
/** More than any head or pan has. */
const MOST_BOLTS = 200;

/**
 * The order in which the bolts of a part are tightened, and the rounds: from the middle outwards and crosswise, so that
 * the part is pressed flat and nothing is trapped between. The maker's sequence wins.
 *
 * The first bolt is nearest to the middle of the pattern. Of those as near, the next is the one farthest from the last,
 * then the one farthest from all that are tight. A last round at the full torque shows whether any has gone slack.
 *
 * @param part - its bolts with their places, the torque, and how many rounds
 * @returns the sequence and the rounds
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there are fewer than two
 * bolts, a bolt has no name, two bolts have one name, or two bolts are in one place
 * @see Source: common practice
 * @example
 * ```ts
 * const { sequence } = tighteningPlan({
 *   bolts: ['1', '2', '3', '4'].map((name, i) => ({
 *     name, along: inch(i % 2 === 0 ? 0 : 3), across: inch(i < 2 ? 0 : 3),
 *   })),
 *   torque: lbfFoot(30),
 * });
 * sequence; // ["1", "4", "2", "3"]
 * ```
 */
export function tighteningPlan(part: BoltsToTighten): TighteningPlan {
  guardFields('part', part, TIGHTEN);
  guardList('bolts', part.bolts, 2, 'bolts');
  guardWhole('bolts.length', part.bolts.length, [2, MOST_BOLTS], 'Plan one part at a time.');
  const places = part.bolts.map((bolt, i) => {
    guardFields(`bolts[${i}]`, bolt, PLACE);
    return {
      name: guardText(`bolts[${i}].name`, bolt.name),
      along: stationAlong(`bolts[${i}].along`, bolt.along),
      across: stationAlong(`bolts[${i}].across`, bolt.across),
    };
  });
  guardApart(places);
  const torque = fastenerTorque('torque', part.torque);
  const { rounds = 3 } = part;
  guardWhole('rounds', rounds, [2, 3], 'Two or three rounds.');
  return {
    sequence: middleOutwards(places).map(({ name }) => name),
    rounds: Array.from({ length: rounds }, (_, i) => ({
      share: ((i + 1) / rounds) as Ratio,
      torque: (i + 1 === rounds ? torque : (torque * (i + 1)) / rounds) as Torque,
    })),
    basis: {
      kind: 'common practice',
      rule: 'from the middle outwards and crosswise, in two or three rounds',
    },
  };
}

/** Refuses two bolts with one name, and two in one place. */
function guardApart(places: readonly BoltPlace[]): void {
  places.forEach((bolt, i) => {
    const other = places.findIndex(
      (one, j) => j < i && (one.name === bolt.name || apart(one, bolt) < 0.001),
    );
    if (other < 0) return;
    const named = places[other]?.name === bolt.name;
    throw new RebuildInputError({
      parameter: named ? `bolts[${i}].name` : `bolts[${i}].along`,
      value: named ? bolt.name : bolt.along,
      expected: named
        ? 'a name of its own'
        : `a place of its own, 1 mm or more from bolts[${other}]`,
      hint: 'Is a bolt written twice?',
    });
  });
}

const apart = (a: BoltPlace, b: BoltPlace) => Math.hypot(a.along - b.along, a.across - b.across);
