import { CYCLE } from '../../motion/internal.js';
import { dormandPrince, type State, type VectorField } from '../../numerics/index.js';

/** Where a cycle ended, and in how many steps. */
export interface Journey {
  readonly x: number;
  readonly y: number;
  readonly steps: number;
}

/**
 * Told of every even angle and of the end of every step, in order. May look at any angle between the
 * place before and this one.
 */
export type OnPlace = (
  place: Readonly<State>,
  even: boolean,
  look: (angle: number, into: State) => void,
) => void;

/** More tries than this in a cycle are no progress. */
const MOST_TRIES = 20_000;
/** A share of the error allowed that is none: the next step may be as long as steps ever become. */
const NO_ERROR = 1e-9;

/**
 * Follows the journal once around the cycle. Each step is cut until its error is a small share of the
 * film there, so that the film keeps its digits where it is thin; a step that would leave the
 * clearance has no error that is a number, and is cut too. Gives nothing if it gets stuck.
 */
export function onceAround(
  drift: VectorField,
  start: { readonly x: number; readonly y: number },
  { even, tolerance }: { readonly even: number; readonly tolerance: number },
  onPlace: OnPlace,
): Journey | undefined {
  const step = dormandPrince(drift);
  drift.set(0, start.x, start.y);
  const here: State = { t: 0, ...start, dx: drift.dx, dy: drift.dy };
  const there: State = { ...here };
  const look = (angle: number, into: State) => {
    into.t = angle;
    step.at((angle - here.t) / (step.t - here.t), into);
  };
  let width = CYCLE / even;
  let mark = 1;
  let steps = 0;
  for (let tries = 0; here.t < CYCLE; tries++) {
    if (tries > MOST_TRIES) return undefined;
    const end = Math.min(here.t + width, CYCLE);
    step.take(here, end);
    const h = end - here.t;
    const film = 1 - Math.sqrt(step.x * step.x + step.y * step.y);
    const error = step.error / (tolerance * film);
    if (!(film > 0 && error <= 1)) {
      width = h * (error > 1 && error < 1e6 ? Math.max(0.1, 0.9 * error ** -0.2) : 0.1);
      continue;
    }
    for (; mark <= even && (CYCLE * mark) / even < end; mark++) {
      look((CYCLE * mark) / even, there);
      onPlace(there, true, look);
    }
    const isEven = mark <= even && (CYCLE * mark) / even === end;
    if (isEven) mark++;
    there.t = end;
    there.x = step.x;
    there.y = step.y;
    there.dx = step.dx;
    there.dy = step.dy;
    onPlace(there, isEven, look);
    Object.assign(here, there);
    width = h * Math.min(5, 0.9 * Math.max(error, NO_ERROR) ** -0.2);
    steps++;
  }
  return { x: here.x, y: here.y, steps };
}
