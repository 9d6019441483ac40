import { guardFields, guardWhole, showIn } from '../judging/internal.js';
import { type Angle, degree, type Length, RebuildInputError } from '../quantities/index.js';
import { type DialReading, guardDial, lobesShown, widestGap } from './trace.js';
import { wavesIn } from './waves.js';

/** One undulation number of a part: so many lobes, evenly spaced. */
export interface Lobes {
  /** How many lobes go round. One is no lobe but the part standing off its axis [-]. */
  readonly lobes: number;
  /** How far the top of a lobe stands above the mean, on the radius; the lobes are twice as high as that [m]. */
  readonly amplitude: Length;
  /** Where the first lobe has its top, counted from the mark on the part [rad]. */
  readonly at: Angle;
}

/** What a trace is made of. */
export interface Harmonics {
  /** The mean that the waves go about [m]. */
  readonly mean: Length;
  /** Every undulation number from one up. */
  readonly harmonics: readonly Lobes[];
  /** Largest less smallest of what these lobes leave unexplained; absent where nothing could be left [m]. */
  readonly left?: Length;
}

/** What may be told about the lobes. */
export interface HarmonicsOptions {
  /** The highest undulation number; by default 15, or what the readings show if that is less. */
  readonly most?: number;
}

const OPTIONS = ['most'] as const;
const USUAL_MOST = 15;
/** More than this are no lobes but roughness. */
const MOST = 500;

/**
 * How many lobes a part has, how high and where: the waves round it that come nearest to a trace by least
 * squares. Readings may be equally spaced or not, and stand in any order.
 *
 * How many lobes can be told depends on the widest gap between neighbouring readings: half a wave must be wider than
 * it. A gap of 10° shows up to 17 lobes, one of 45° up to three. What has more lobes than that is
 * there all the same, and is mistaken for fewer lobes: only readings closer together tell.
 *
 * A micrometer sees even lobes at twice their height, and odd ones not at all ({@link twoPointOutOfRound}). What a
 * dial over a V-block makes of them is {@link vBlockFactor}.
 *
 * @param readings - at least three, all round the part, as it turned about its own axis
 * @param options - up to how many lobes
 * @returns mean, and amplitude and place of the lobes of each number
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there are fewer than
 * three readings, an angle was read twice, the readings leave half a turn out, or more lobes are asked for than
 * they show
 * @see Source: Fourier's series, by least squares; worked checks in tests/published/roundness.test.ts
 * @example
 * ```ts
 * const threeLobes = Array.from({ length: 12 }, (_, i) => ({
 *   angle: degree(30 * i), reading: thou(Math.cos((3 * i * Math.PI) / 6)),
 * }));
 * const [eccentric, oval, lobed] = harmonics(threeLobes).harmonics;
 * lobed?.lobes; // 3
 * lobed && format(lobed.amplitude, thou); // "1.0 thou"
 * ```
 */
export function harmonics(
  readings: readonly DialReading[],
  options: HarmonicsOptions = {},
): Harmonics {
  guardFields('options', options, OPTIONS);
  guardDial('readings', readings, 3, 'readings, all round the part');
  const shown = guardShown('readings', readings, 'Lobes');
  const hint = 'Read at more angles, closer together, to see more lobes.';
  const { most = Math.min(USUAL_MOST, shown) } = options;
  guardWhole('options.most', most, [1, Math.min(shown, MOST)], hint);
  const { mean, waves, left } = wavesIn(readings, most);
  return {
    mean,
    harmonics: waves.map(({ times, amplitude, crest }) => ({
      lobes: times,
      amplitude,
      at: crest as Angle,
    })),
    ...(readings.length > 2 * most + 1 && { left }),
  };
}

/** The most lobes that readings show. Refuses readings that do not even show where the part leans to. */
export function guardShown(
  parameter: string,
  readings: readonly DialReading[],
  what: string,
): number {
  const angles = readings.map(({ angle }) => angle);
  const shown = lobesShown(angles);
  if (shown >= 1) return shown;
  const gap = widestGap(angles);
  throw new RebuildInputError({
    parameter,
    value: gap,
    shown: `a gap of ${showIn(gap as Angle, degree)}`,
    expected: 'readings all round, with gaps of less than half a turn',
    problem: 'between neighbouring readings is half a turn or more',
    hint: `${what} cannot be told from one side: read all round, at 0, 120 and 240 degrees at least.`,
  });
}
