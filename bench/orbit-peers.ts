import { createRequire } from 'node:module';
import * as mathjs from 'mathjs';
import { driftOf } from '../src/bearings/orbit/drift.js';
import { finiteMobility } from '../src/bearings/orbit/finite-mobility.js';
import { tableOf } from '../src/bearings/orbit/load-table.js';
import type { bigEndOrbit } from './built.js';

type BigEnd = Parameters<typeof bigEndOrbit>[0];

const CYCLE = 4 * Math.PI;
/** The path is told at every two degrees. */
const EVEN = CYCLE / 360;

/** How fast the journal moves at a crank angle and a place. */
type Speed = (angle: number, place: readonly number[]) => [number, number];

/** Follows the journal for some cycles from the middle on; gives the least film of the last [1]. */
export type Follower = (speed: Speed, cycles: number, tolerance: number) => number;

/** The equations that `bigEndOrbit` follows, in radial clearances and radians of the crank. */
export function speedOf({ journal, length, clearance, viscosity, loads }: BigEnd): Speed {
  const readiness = (clearance / journal) ** 2 / (viscosity * length * journal * loads.speed);
  const drift = driftOf(tableOf(loads), readiness, finiteMobility(length / journal));
  return (angle, [x = 0, y = 0]) => {
    // A step too long leaves the clearance, where nothing is a number, and neither peer recovers from
    // that. They are given the edge instead, and see that the step was too long.
    const held = Math.min(1, (1 - 1e-9) / Math.hypot(x, y));
    drift.set(angle % CYCLE, x * held, y * held);
    return [drift.dx, drift.dy];
  };
}

const filmAt = ([x = 0, y = 0]: readonly number[]) => 1 - Math.hypot(x, y);

/** What is used of odex; its own types do not pass a strict compiler. */
interface Odex {
  absoluteTolerance: number;
  relativeTolerance: number;
  denseOutput: boolean;
  grid(step: number, out: (angle: number, place: number[]) => void): unknown;
  solve(speed: Speed, from: number, start: number[], to: number, out: unknown): unknown;
}
const { Solver }: { Solver: new (size: number) => Odex } = createRequire(import.meta.url)('odex');

/** Extrapolation of high order (Gragg, Bulirsch and Stoer). */
export const byOdex: Follower = (speed, cycles, tolerance) => {
  const solver = new Solver(2);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = 0;
  solver.denseOutput = true;
  let least = 1;
  const out = solver.grid(EVEN, (angle, place) => {
    if (angle >= (cycles - 1) * CYCLE) least = Math.min(least, filmAt(place));
  });
  solver.solve(speed, 0, [0, 0], cycles * CYCLE, out);
  return least;
};

// Not among the types of mathjs.
const { solveODE } = mathjs as unknown as {
  solveODE: (
    speed: Speed,
    span: [number, number],
    start: [number, number],
    options: { method: 'RK45'; tol: number; firstStep: number; maxIter: number },
  ) => { t: number[]; y: number[][] };
};

/** The same pair of formulas as ours (Dormand and Prince). */
export const byMathjs: Follower = (speed, cycles, tolerance) => {
  const options = { method: 'RK45' as const, tol: tolerance, firstStep: EVEN, maxIter: 1e6 };
  const { t, y } = solveODE(speed, [0, cycles * CYCLE], [0, 0], options);
  return t.reduce(
    (least, angle, i) =>
      angle < (cycles - 1) * CYCLE ? least : Math.min(least, filmAt(y[i] ?? [])),
    1,
  );
};
