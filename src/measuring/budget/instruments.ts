import {
  guardFields,
  guardObject,
  guardWhole,
  guardWord,
  namedFrom,
} from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import { instrumentError, scaleDivision } from '../domains.js';
import { type Contributor, contributionsOf, guardDegrees, MOST_READINGS } from './contributor.js';
import { repeatability } from './repeatability.js';
import { type WarmthOfReading, warmthContributors } from './temperature.js';

/** How closely the instrument repeats itself in the hand that reads it: repeat readings of one thing, or what came of them. */
export type RepeatReadings =
  | readonly Length[]
  | {
      /** Standard deviation of one reading [m]. */
      readonly standardDeviation: Length;
      /** Readings that it was found from, less one. */
      readonly degreesOfFreedom: number;
    };

/** What is told of every instrument. */
export interface AnyInstrument {
  /** The division of its scale, or its last digit [m]. */
  readonly division: Length;
  /** How closely it repeats itself [m]. */
  readonly repeats: RepeatReadings;
  /** How many readings each size is the mean of; by default one. */
  readonly readings?: number;
  /** How warm it and the part may be. Left out, the budget says nothing of warmth. */
  readonly warmth?: WarmthOfReading;
}

/** An instrument, as its owner describes it. */
export type Instrument =
  | (AnyInstrument & {
      /** One that was set to zero, or on a standard. */
      readonly kind: 'micrometer' | 'depth gauge';
      /** How far its zero may be off, either way [m]. */
      readonly zeroError: Length;
    })
  | (AnyInstrument & {
      /** One that was set with another instrument. */
      readonly kind: 'bore gauge';
      /** The budget of the micrometer, or of the ring, that it was set with. */
      readonly setWith: readonly Contributor[];
    })
  | (AnyInstrument & {
      /** One that shows how far a thing moves, and is not set to a size. */
      readonly kind: 'dial indicator';
      /** How far its travel may be off, either way [m]. */
      readonly travelError: Length;
    })
  | (AnyInstrument & {
      /** Blades, of which one goes and the next does not: the division is the step between them. */
      readonly kind: 'feeler gauge';
      /** How far a blade may be from its mark, either way [m]. */
      readonly bladeError: Length;
    });

const FIELDS = {
  micrometer: ['kind', 'division', 'zeroError', 'repeats', 'readings', 'warmth'],
  'depth gauge': ['kind', 'division', 'zeroError', 'repeats', 'readings', 'warmth'],
  'bore gauge': ['kind', 'division', 'setWith', 'repeats', 'readings', 'warmth'],
  'dial indicator': ['kind', 'division', 'travelError', 'repeats', 'readings', 'warmth'],
  'feeler gauge': ['kind', 'division', 'bladeError', 'repeats', 'readings', 'warmth'],
} as const satisfies Record<Instrument['kind'], readonly string[]>;
const KINDS = /* @__PURE__ */ Object.keys(FIELDS) as Instrument['kind'][];
const REPEATED = ['standardDeviation', 'degreesOfFreedom'] as const;

/**
 * The uncertainty budget of an instrument: its resolution, half a division either way; how closely it repeats
 * itself; its zero, or what it was set with; and how warm it and the part may be. What is the same for every
 * reading is marked `common`: the zero, all of the instrument that a bore gauge was set with, the warmth.
 *
 * @param instrument - its kind, its division, repeat readings, its errors and the warmth
 * @returns a list of contributors, for `expandedUncertainty` and `readingUncertainty`
 * @throws {RebuildInputError} when a field is misspelt, the kind of instrument is unknown, a value is not finite or out of
 * range, there are fewer than two repeat readings, there are no degrees of freedom, or the budget that it was set with is none
 * @see Source: JCGM 100:2008, 4.3.7 and F.2.2; the list of contributors is common practice
 * @example
 * ```ts
 * const micrometer = instrumentBudget({
 *   kind: 'micrometer', division: inch(0.0001), zeroError: inch(0.0001),
 *   repeats: [2.1241, 2.1242, 2.1241, 2.124, 2.1241].map(inch),
 * });
 * const bore = instrumentBudget({
 *   kind: 'bore gauge', division: inch(0.0001), setWith: micrometer,
 *   repeats: { standardDeviation: inch(0.0001), degreesOfFreedom: 9 },
 * });
 * format(readingUncertainty(micrometer).size, inch, 5); // "0.00021 in"
 * format(readingUncertainty(bore).size, inch, 5); // "0.00030 in"
 * ```
 */
export function instrumentBudget(instrument: Instrument): readonly Contributor[] {
  guardObject('instrument', instrument);
  const kind = guardWord('instrument.kind', instrument.kind, KINDS);
  guardFields(
    'instrument',
    instrument as unknown as Readonly<Record<string, unknown>>,
    FIELDS[kind] as readonly string[],
  );
  const division = scaleDivision('instrument.division', instrument.division);
  const { warmth } = instrument;
  return [
    { name: 'resolution', kind: 'rectangular', halfWidth: (division / 2) as Length },
    repeatsOf(instrument),
    ...errorsOf(instrument),
    ...(warmth === undefined ? [] : warmthContributors('instrument.warmth', warmth)),
  ];
}

function repeatsOf({ repeats, readings = 1 }: AnyInstrument): Contributor {
  guardWhole('instrument.readings', readings, [1, MOST_READINGS], 'How many are averaged?');
  const at = 'instrument.repeats';
  const names = { name: 'repeatability', kind: 'readings', readings } as const;
  if (Array.isArray(repeats)) {
    const found = namedFrom(
      () => ({ readings: at }),
      () => repeatability(repeats as readonly Length[]),
    );
    const { standardDeviation, degreesOfFreedom } = found;
    return { ...names, standardDeviation, degreesOfFreedom };
  }
  const told = repeats as Exclude<RepeatReadings, readonly Length[]>;
  guardFields(at, told, REPEATED);
  const standardDeviation = instrumentError(`${at}.standardDeviation`, told.standardDeviation);
  const degreesOfFreedom = guardDegrees(`${at}.degreesOfFreedom`, told.degreesOfFreedom);
  return { ...names, standardDeviation, degreesOfFreedom };
}

function errorsOf(instrument: Instrument): readonly Contributor[] {
  const limits = (name: string, field: string, halfWidth: Length, common: boolean) =>
    [
      {
        name,
        kind: 'rectangular',
        halfWidth: instrumentError(`instrument.${field}`, halfWidth),
        ...(common && { common }),
      },
    ] as const;
  switch (instrument.kind) {
    case 'bore gauge':
      contributionsOf('instrument.setWith', instrument.setWith);
      return instrument.setWith.map((one) => ({
        ...one,
        name: `setting: ${one.name}`,
        common: true,
      }));
    case 'dial indicator':
      return limits('travel error', 'travelError', instrument.travelError, false);
    case 'feeler gauge':
      return limits('blade error', 'bladeError', instrument.bladeError, false);
    default:
      return limits('zero error', 'zeroError', instrument.zeroError, true);
  }
}
