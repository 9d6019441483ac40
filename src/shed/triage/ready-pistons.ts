import { oversizeSteps } from '../../cylinders/index.js';
import { NANOMETRE, shifted, spanOf } from '../../judging/internal.js';
import { withStandard } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import { smallestOf } from '../../quantities/internal.js';
import { accuracyOf, at20C, type Known, own } from '../../reading/index.js';
import { pistonsOf } from '../places-of.js';
import type { PistonSetPart } from '../shed.js';
import type { Misread } from './misread-types.js';
import type { Shop } from './ways.js';

/** A piston that was measured. */
interface Read {
  readonly place: string;
  /** The largest that it reads [m]. */
  readonly size: Length;
}

/** The pistons whose sizes can hardly be right, by their bore or by the other pistons of the set. */
export function pistonsMisread(set: PistonSetPart, shop: Shop): readonly Misread[] {
  const read = (set.pistons ?? []).flatMap(({ name: place, diameter }): readonly Read[] =>
    diameter === undefined
      ? []
      : [{ place, size: spanOf(at20C(diameter, 'pistons', accuracyOf(shop))).max }],
  );
  const large = tooLarge(read, set, shop);
  const others = without(read, large);
  const apart = apartFromTheirs(others, shop);
  return [...large, ...apart, ...tooSmall(without(others, apart), set, shop)];
}

const without = (read: readonly Read[], misread: readonly Misread[]): readonly Read[] =>
  read.filter(({ place }) => !misread.some((each) => each.place === place));

/** The pistons that read as large as the bore they are made for, or larger: no piston is. */
function tooLarge(
  read: readonly Read[],
  { oversize }: PistonSetPart,
  { engine }: Shop,
): readonly Misread[] {
  if (oversize === undefined) return [];
  const bore = shifted(engine.bores.standard, oversize);
  return read
    .filter(({ size }) => size >= bore.min - NANOMETRE)
    .map((one): Misread => ({ kind: 'as large as its bore', ...one, oversize, bore }));
}

/** The pistons that differ from the middle one of their set as no pistons of one set do; of two, the smaller one is odd. */
function apartFromTheirs(read: readonly Read[], shop: Shop): readonly Misread[] {
  const middle = [...read].sort((a, b) => a.size - b.size)[Math.floor(read.length / 2)];
  if (middle === undefined) return [];
  const { min = 0, max = 0 } = clearanceIn(shop) ?? {};
  const most = Math.max(halfStep(shop), max - min);
  return read
    .filter(({ size }) => Math.abs(size - middle.size) > most + NANOMETRE)
    .map((one): Misread => ({ kind: 'apart from its set', ...one, other: middle }));
}

/** The pistons that read further under the bore they are made for than the largest clearance and half a step. */
function tooSmall(
  read: readonly Read[],
  { oversize }: PistonSetPart,
  shop: Shop,
): readonly Misread[] {
  const { max } = clearanceIn(shop) ?? {};
  if (oversize === undefined || max === undefined) return [];
  const bore = shifted(shop.engine.bores.standard, oversize);
  const least = bore.min - max - halfStep(shop);
  return read
    .filter(({ size }) => size < least - NANOMETRE)
    .map((one): Misread => ({ kind: 'far under its bore', ...one, oversize, bore }));
}

const clearanceIn = ({ engine }: Shop) => own(engine.bores.pistonClearance).limits;

/** Half the smallest oversize, which no two pistons of a set differ by (common practice of this library) [m]. */
function halfStep({ engine, units }: Shop): number {
  const steps = withStandard(engine.bores.steps ?? oversizeSteps(units));
  return smallestOf(steps.filter((step) => step > 0)) / 2;
}

/** The sizes of the pistons of a set [m]; one that cannot be right is not known. */
export function pistonSizes(set: PistonSetPart, shop: Shop): readonly Known[] {
  const wrong = pistonsMisread(set, shop).map(({ place }) => place);
  return pistonsOf(set, shop.engine).map(({ name, diameter }) =>
    diameter === undefined || wrong.includes(name)
      ? undefined
      : spanOf(at20C(diameter, 'pistons', accuracyOf(shop))),
  );
}
