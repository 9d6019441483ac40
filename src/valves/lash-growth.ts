import type { Span } from '../judging/index.js';
import { guardFields, guardList } from '../judging/internal.js';
import type { MeanExpansion } from '../measuring/index.js';
import { guardExpansion, partTemperature } from '../measuring/internal.js';
import { celsius, type Length, type Ratio, type Temperature } from '../quantities/index.js';
import { rockerArmRatio, trainLength, trainTemperature, wantedLash } from './domains.js';

/** A piece of a valve train, or of what carries it, that warms up. */
export interface WarmLength {
  /** How long it is when cold, along the train [m]. */
  readonly length: Length;
  /** How it grows, for example from `meanExpansion`. */
  readonly expansion: MeanExpansion;
  /** How warm it runs, on average over its length [K]. */
  readonly temperature: Temperature;
}

/** One side of a lash: what opens it as it grows, and what closes it. */
export interface LashSide {
  /** What carries the train, such as the block or the push-rod tube and the head. It opens the lash. */
  readonly carrier: readonly WarmLength[];
  /** The train itself, such as the tappet and the valve. It closes the lash. */
  readonly train: readonly WarmLength[];
}

/**
 * A valve train. Without a rocker `carrier` is the block from the cam to the seat, and `train` are the tappet and the
 * valve from its seat to the end of its stem. With a rocker they are the head from the seat to the rocker shaft, and
 * the valve; what lies between the cam and the shaft stands in `rocker`.
 */
export interface ValveTrain extends LashSide {
  /** The rocker, with what lies between the cam and its shaft: block and head as the carrier, tappet and push rod as the train. */
  readonly rocker?: LashSide & {
    /** Arm on the valve's side over the arm on the push rod's [-]. */
    readonly ratio: Ratio;
  };
  /** How warm everything was when the lash was set; by default 20 °C [K]. */
  readonly measuredAt?: Temperature;
  /** Lash that is wanted hot, at the end of the valve's stem [m]. */
  readonly hotLash?: Length;
}

/** How the lash of a valve changes from cold to hot. */
export interface LashGrowth {
  /** How much more lash there is hot than cold, with the coefficients anywhere in their spans; negative if it closes [m]. */
  readonly growth: Span<Length>;
  /** What to set cold for the lash that is wanted hot. The most is the safe end: a valve without lash burns [m]. */
  readonly coldLash?: Span<Length>;
  /** The pieces that run outside the temperatures that their coefficients are means over, by their names in the argument. */
  readonly outsideRange: readonly string[];
}

const TRAIN = ['carrier', 'train', 'rocker', 'measuredAt', 'hotLash'] as const;
const ROCKER = ['carrier', 'train', 'ratio'] as const;
const PIECE = ['length', 'expansion', 'temperature'] as const;

/**
 * How the lash of a valve grows or shrinks from cold to hot, and what to set it to cold. Where the tappet
 * works on the stem, as in a side-valve engine, the block opens the lash and the valve closes it:
 *
 *     growth = blockLength * blockExpansion * (blockTemperature - measuredAt) - valveLength * valveExpansion * (valveTemperature - measuredAt)
 *     coldLash = hotLash - growth
 *
 * With a rocker, the head takes the place of the block, and what grows between the cam and the rocker shaft counts by the
 * ratio of the rocker:
 *
 *     rockerGrowth = headLength * headExpansion * (headTemperature - measuredAt) - valveLength * valveExpansion * (valveTemperature - measuredAt) + ratio * (tubeLength * tubeExpansion * (tubeTemperature - measuredAt) - rodLength * rodExpansion * (rodTemperature - measuredAt))
 *
 * The two pieces of a side should be about as long as each other; the tappet is one of them. The result is no better than
 * the temperatures, which are seldom known: the head of an exhaust valve is at 600 °C and more, its stem at far less, and
 * the mean over its length counts. Work it with the warmest valve that you believe in. While an engine warms up, the
 * valve is hot before the block is, and the lash may be less than it is both cold and hot. The maker's figure
 * comes first. Set lash on a stopped engine with its ignition off; a hot engine burns hands.
 *
 * @param valveTrain - the pieces with their lengths, how they grow and how warm they run
 * @returns growth of the lash, what to set cold if it was said what is wanted hot, and the pieces outside the range of
 * their coefficients [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a list is empty, a span
 * is reversed, or the range of a mean is reversed
 * @see Source: linear expansion; the coefficients name their own
 * @example
 * ```ts
 * const piece = (length: Length, of: EngineMaterial, degrees: number) => ({
 *   length, expansion: meanExpansion(of), temperature: celsius(degrees),
 * });
 * const { growth, coldLash } = lashGrowth({
 *   carrier: [piece(inch(6), 'grey iron', 110)],
 *   train: [piece(inch(2), 'steel', 90), piece(inch(4), 'austenitic valve steel', 220)],
 *   hotLash: thou(6),
 * });
 * // Hand-computed: 6 * 10.4e-6 * 90 - 2 * 12.1e-6 * 70 - 4 * 18.4e-6 * 200 = 5.6 - 1.7 - 14.7 thou
 * format(growth.min, thou); // "-10.8 thou"
 * coldLash && format(coldLash.max, thou); // "16.8 thou"
 * ```
 */
export function lashGrowth(valveTrain: ValveTrain): LashGrowth {
  guardFields('valveTrain', valveTrain, TRAIN);
  const { rocker, hotLash, measuredAt: cold = celsius(20) } = valveTrain;
  const measuredAt = partTemperature('measuredAt', cold);
  if (hotLash !== undefined) wantedLash('hotLash', hotLash);
  const outsideRange: string[] = [];
  const side = openingOf('', valveTrain, measuredAt, outsideRange);
  let { min, max } = side;
  if (rocker !== undefined) {
    guardFields('rocker', rocker, ROCKER);
    const ratio = rockerArmRatio('rocker.ratio', rocker.ratio);
    const far = openingOf('rocker.', rocker, measuredAt, outsideRange);
    min += ratio * far.min;
    max += ratio * far.max;
  }
  const growth = { min, max } as Span<Length>;
  if (hotLash === undefined) return { growth, outsideRange };
  const coldLash = { min: hotLash - max, max: hotLash - min } as Span<Length>;
  return { growth, coldLash, outsideRange };
}

/** How far one side opens: what its carrier grows, less what its train does. */
function openingOf(
  at: string,
  { carrier, train }: LashSide,
  measuredAt: Temperature,
  outsideRange: string[],
): { readonly min: number; readonly max: number } {
  const opens = grownBy(`${at}carrier`, carrier, measuredAt, outsideRange);
  const closes = grownBy(`${at}train`, train, measuredAt, outsideRange);
  return { min: opens.min - closes.max, max: opens.max - closes.min };
}

/** How much longer the pieces get together. Notes those that are warmer or colder than their coefficients are for. */
function grownBy(
  at: string,
  pieces: readonly WarmLength[],
  measuredAt: Temperature,
  outsideRange: string[],
): { readonly min: number; readonly max: number } {
  guardList(at, pieces, 1, 'piece with its length');
  let [min, max] = [0, 0];
  pieces.forEach((piece, i) => {
    const name = `${at}[${i}]`;
    guardFields(name, piece, PIECE);
    const length = trainLength(`${name}.length`, piece.length);
    const { coefficient, from, to } = guardExpansion(`${name}.expansion`, piece.expansion);
    const temperature = trainTemperature(`${name}.temperature`, piece.temperature);
    const warmed = length * (temperature - measuredAt);
    const [one, other] = [warmed * coefficient.min, warmed * coefficient.max];
    min += Math.min(one, other);
    max += Math.max(one, other);
    if (temperature < from || temperature > to) outsideRange.push(name);
  });
  return { min, max };
}
