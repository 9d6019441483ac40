import type { Length, Limits, Span } from 'crankwright';
import { erf } from 'mathjs';
import type { PlanOptions } from '../../src/planning/plan-options.js';
import type { Shed } from './full.js';

/** What a clearance must keep from its limits to hold with the chance that was asked for. */
export interface Guard {
  readonly standard: number;
  readonly chance: number;
}

/** The chance that a standard normal value is above x. */
const above = (x: number) => (1 - erf(x / Math.SQRT2)) / 2;

/** The value that a standard normal one is above with a chance, by halving. */
function quantileOf(tail: number): number {
  let [low, high] = [0, 9];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (above(middle) > tail) low = middle;
    else high = middle;
  }
  return low;
}

/** How far an instrument of a shed may be off, 95 times in 100. */
export function offBy(shed: Shed, name: 'micrometer' | 'boreGauge' | 'wallGauge' | 'depthGauge') {
  const instrument = shed.instruments?.[name];
  if (instrument === undefined) return 0;
  if ('within' in instrument) return instrument.within;
  throw new Error('brute force knows only instruments whose error is stated');
}

/** The guards of the clearances of a shed; none if no chance was asked for. */
export function guardsOf(shed: Shed, { holdsWith: chance }: Pick<PlanOptions, 'holdsWith'>) {
  const [mic, bore, wall, depth] = (
    ['micrometer', 'boreGauge', 'wallGauge', 'depthGauge'] as const
  ).map((name) => offBy(shed, name)) as [number, number, number, number];
  const of = (...expanded: readonly number[]): Guard | undefined =>
    chance === undefined ? undefined : { standard: Math.hypot(...expanded) / 2, chance };
  return {
    // housing - two walls by one gauge - journal
    oil: of(bore, 2 * wall, mic),
    // one size of a hole, one of what goes in it
    hole: of(bore, mic),
    // two widths, each by itself, and the washers
    endPlay: of(depth, depth, mic),
  };
}

export type Guards = ReturnType<typeof guardsOf>;

/** How far a clearance stays inside its limits at its worse end, after the guard band; -Infinity where it is too likely to fail. */
export function roomIn(
  clearance: Span<Length>,
  { min, max }: Limits<Length>,
  guard: Guard | undefined,
): number {
  const rooms = [
    min === undefined ? Infinity : clearance.min - min,
    max === undefined ? Infinity : max - clearance.max,
  ];
  if (guard === undefined) return Math.min(...rooms);
  const { standard, chance } = guard;
  const fails = rooms.map((room) => (room === Infinity ? 0 : above((room + 1e-9) / standard)));
  if (fails.reduce((a, b) => a + b, 0) > 1 - chance) return -Infinity;
  return Math.min(...rooms) - quantileOf(1 - chance) * standard;
}
