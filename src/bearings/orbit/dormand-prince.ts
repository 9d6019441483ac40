import type { Drift } from './drift.js';

/**
 * One step of the pair of formulas of order 5 and 4 by Dormand and Prince, and the polynomial of order 4
 * that goes with it. Set to a step it holds the end, how far off that may be, and with `within` any place on the
 * way. Nothing is allocated.
 *
 * Coefficients: Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, II.5 and II.6.
 */
export interface Step {
  /** Crank angle at the end. */
  end: number;
  /** Place at the end. */
  x: number;
  y: number;
  /** Drift at the end, which is where the next step begins. */
  along: number;
  across: number;
  /** How far off the end may be. */
  error: number;
  /** Takes a step from a place where the drift is known; the angle at its end is given to the last digit. */
  take(from: From, end: number): void;
  /** Place and drift at a share of the step. */
  at(share: number, place: From): void;
}

/** A place on the way, and the drift there. */
export interface From {
  angle: number;
  x: number;
  y: number;
  along: number;
  across: number;
}

/** A stepper for a drift. */
export function stepOf(drift: Drift): Step {
  let width = 0;
  const alongWay = wayOf();
  const acrossWay = wayOf();
  const step: Step = {
    end: 0,
    x: 0,
    y: 0,
    along: 0,
    across: 0,
    error: 0,
    take({ angle, x, y, along: ax, across: ay }, end) {
      const h = end - angle;
      drift.set(angle + h / 5, x + (h / 5) * ax, y + (h / 5) * ay);
      const bx = drift.along;
      const by = drift.across;
      drift.set(angle + 0.3 * h, x + h * third(ax, bx), y + h * third(ay, by));
      const cx = drift.along;
      const cy = drift.across;
      drift.set(angle + 0.8 * h, x + h * fourth(ax, bx, cx), y + h * fourth(ay, by, cy));
      const dx = drift.along;
      const dy = drift.across;
      drift.set(angle + (8 / 9) * h, x + h * fifth(ax, bx, cx, dx), y + h * fifth(ay, by, cy, dy));
      const ex = drift.along;
      const ey = drift.across;
      drift.set(end, x + h * sixth(ax, bx, cx, dx, ex), y + h * sixth(ay, by, cy, dy, ey));
      const fx = drift.along;
      const fy = drift.across;
      step.x = x + h * whole(ax, cx, dx, ex, fx);
      step.y = y + h * whole(ay, cy, dy, ey, fy);
      drift.set(end, step.x, step.y);
      step.along = drift.along;
      step.across = drift.across;
      const offX = off(ax, cx, dx, ex, fx, step.along);
      const offY = off(ay, cy, dy, ey, fy, step.across);
      step.error = h * Math.sqrt(offX * offX + offY * offY);
      width = h;
      step.end = end;
      lay(alongWay, x, step.x, h * ax, h * step.along, h * bend(ax, cx, dx, ex, fx, step.along));
      lay(acrossWay, y, step.y, h * ay, h * step.across, h * bend(ay, cy, dy, ey, fy, step.across));
    },
    at(share, place) {
      place.x = valueOn(alongWay, share);
      place.y = valueOn(acrossWay, share);
      place.along = slopeOn(alongWay, share) / width;
      place.across = slopeOn(acrossWay, share) / width;
    },
  };
  return step;
}

const third = (a: number, b: number) => (3 / 40) * a + (9 / 40) * b;
const fourth = (a: number, b: number, c: number) => (44 / 45) * a - (56 / 15) * b + (32 / 9) * c;
const fifth = (a: number, b: number, c: number, d: number) =>
  (19372 / 6561) * a - (25360 / 2187) * b + (64448 / 6561) * c - (212 / 729) * d;
const sixth = (a: number, b: number, c: number, d: number, e: number) =>
  (9017 / 3168) * a - (355 / 33) * b + (46732 / 5247) * c + (49 / 176) * d - (5103 / 18656) * e;
/** Order 5, from every drift but the second. */
const whole = (a: number, c: number, d: number, e: number, f: number) =>
  (35 / 384) * a + (500 / 1113) * c + (125 / 192) * d - (2187 / 6784) * e + (11 / 84) * f;
/** Order 5 less order 4. */
const off = (a: number, c: number, d: number, e: number, f: number, g: number) =>
  (71 / 57600) * a -
  (71 / 16695) * c +
  (71 / 1920) * d -
  (17253 / 339200) * e +
  (22 / 525) * f -
  g / 40;
/** The fifth term of the polynomial. */
const bend = (a: number, c: number, d: number, e: number, f: number, g: number) =>
  (-12715105075 / 11282082432) * a +
  (87487479700 / 32700410799) * c -
  (10690763975 / 1880347072) * d +
  (701980252875 / 199316789632) * e -
  (1453857185 / 822651844) * f +
  (69997945 / 29380423) * g;

/** The polynomial of a step, along or across. */
interface Way {
  start: number;
  rise: number;
  early: number;
  late: number;
  bend: number;
}

const wayOf = (): Way => ({ start: 0, rise: 0, early: 0, late: 0, bend: 0 });

function lay(
  way: Way,
  from: number,
  to: number,
  leaving: number,
  arriving: number,
  bent: number,
): void {
  way.start = from;
  way.rise = to - from;
  way.early = leaving - way.rise;
  way.late = way.rise - arriving - way.early;
  way.bend = bent;
}

function valueOn(way: Way, share: number): number {
  const rest = 1 - share;
  const inner = way.late + rest * way.bend;
  return way.start + share * (way.rise + rest * (way.early + share * inner));
}

function slopeOn(way: Way, share: number): number {
  const rest = 1 - share;
  const inner = way.late + rest * way.bend;
  const middle = way.early + share * inner;
  return way.rise + rest * middle + share * (rest * (inner - share * way.bend) - middle);
}
