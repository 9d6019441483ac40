import type { SizeOrSpan, Span } from '../judging/index.js';
import { guardFields, guardSpan } from '../judging/internal.js';
import type {
  Density,
  Flow,
  Length,
  Rate,
  Ratio,
  Stiffness,
  Time,
  Volume,
} from '../quantities/index.js';
import {
  countedDrops,
  countingTime,
  drippingEdge,
  dripRate,
  dropShare,
  liquidDensity,
  singleDrop,
  surfaceTension,
} from './domains.js';
import { petrolDensity } from './petrol.js';

/** Standard gravity, ISO 80000-3 [m/s²]. */
const GRAVITY = 9.80665;

/** Surface tension of petrol near 20 °C, as octane's. From memory [N/m]. */
const PETROL_TENSION = 0.0216 as Stiffness;

/** Share of Tate's weight that falls, from memory: Harkins and Brown measured 0.6 to 0.7 at such edges [-]. */
const FALLS = 0.65 as Ratio;

/**
 * One drop of petrol: 0.018 to 0.050 mL. The least is clean petrol off an edge of 3 mm by {@link dropVolume}, and
 * 0.030 mL is what falls off one of 5 mm. The most is the pharmacy's rule of 20 drops to the millilitre, which is for
 * water (USP 32, chapter 1101: an edge of 3 mm, drops of 45 to 55 mg). Count drops into a measure to know yours [m³].
 */
export const petrolDrop: Span<Volume> = { min: 0.018e-6 as Volume, max: 0.05e-6 as Volume };

const DROP = ['edge', 'surfaceTension', 'density', 'falls'] as const;

/**
 * Volume of a drop that falls off a round edge, by Tate's law: the weight that the surface tension holds at the
 * edge, times the share of it that falls.
 *
 *     dropVolume = falls * pi * edge * surfaceTension / (density * 9.80665 m/s²)
 *
 * By default it is a drop of clean petrol. Dirt, a ragged edge and a fast drip all change it: it tells how large a
 * drop can be, not how large yours is.
 *
 * @param drop - the edge it falls off, and the liquid
 * @returns volume of one drop [m³]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: Tate's law; the share after Harkins and Brown, J. Am. Chem. Soc. 41 (1919), from memory
 * @example
 * ```ts
 * format(dropVolume({ edge: mm(3) }), mL, 3); // "0.018 mL"
 * format(dropVolume({ edge: mm(5) }), mL, 3); // "0.030 mL"
 * ```
 */
export function dropVolume(drop: {
  /** Outer diameter of the edge that the drop hangs from [m]. */
  readonly edge: Length;
  /** Surface tension of the liquid; by default 0.0216 N/m, petrol's [N/m]. */
  readonly surfaceTension?: Stiffness;
  /** Density of the liquid; by default `petrolDensity` [kg/m³]. */
  readonly density?: Density;
  /** Share of Tate's weight that falls; by default 0.65 [-]. */
  readonly falls?: Ratio;
}): Volume {
  guardFields('drop', drop, DROP);
  const { surfaceTension: held = PETROL_TENSION, density = petrolDensity, falls = FALLS } = drop;
  const edge = drippingEdge('edge', drop.edge);
  const most = Math.PI * edge * surfaceTension('surfaceTension', held);
  const weight = liquidDensity('density', density) * GRAVITY;
  return ((dropShare('falls', falls) * most) / weight) as Volume;
}

const DRIP = ['drops', 'time', 'dropVolume'] as const;

/**
 * The flow of a dripping needle valve, from the least to the most that it can be. Unless you measure your drop, the
 * two are 2.8 to one apart: judge the most.
 *
 *     flow = drops * dropVolume / time
 *
 * @param drip - drops counted, for how long, and the volume of one; count drops into a measure to know it
 * @returns flow, least and most [m³/s]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or a span is
 * reversed
 * @see Source: definition; the drop as `petrolDrop`
 * @example
 * ```ts
 * const { min, max } = dripFlow({ drops: 12, time: minute(1) });
 * [format(min, mLPerHour), format(max, mLPerHour)]; // ["13.0 mL/h", "36.0 mL/h"]
 * ```
 */
export function dripFlow(drip: {
  /** How many drops fell; a mean of several counts need not be whole [-]. */
  readonly drops: number;
  /** How long they were counted [s]. */
  readonly time: Time;
  /** Volume of one drop, or the span it lies in; by default `petrolDrop` [m³]. */
  readonly dropVolume?: SizeOrSpan<Volume>;
}): Span<Flow> {
  guardFields('drip', drip, DRIP);
  const drops = countedDrops('drops', drip.drops as Ratio);
  const time = countingTime('time', drip.time);
  return flowOfDrops((drops / time) as Rate, drip.dropVolume);
}

/** The flow of so many drops in a time, as a sheet writes them. */
export function flowOfDrops(drops: Rate, dropVolume: SizeOrSpan<Volume> = petrolDrop): Span<Flow> {
  const rate = dripRate('drops', drops);
  const { min, max } = guardSpan('dropVolume', dropVolume, singleDrop, 'volume');
  return { min: (rate * min) as Flow, max: (rate * max) as Flow };
}
