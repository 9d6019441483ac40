/** Two rates of change, dx/dt and dy/dt: set to a time and a place, it holds them. Nothing is allocated. */
export interface VectorField {
  /** dx/dt. */
  dx: number;
  /** dy/dt. */
  dy: number;
  set(t: number, x: number, y: number): void;
}

/** A place on the way, and the rates of change there. */
export interface State {
  t: number;
  x: number;
  y: number;
  dx: number;
  dy: number;
}

/** One step: its end with the rates of change there, with which the next step begins. */
export interface Step extends State {
  /** How far off the end may be. */
  error: number;
  /** Takes a step from a place where the rates are known; the time at its end is given to the last digit. */
  take(from: State, end: number): void;
  /** Place and rates at a share of the step. */
  at(share: number, state: State): void;
}

/**
 * The pair of formulas of order 5 and 4 by Dormand and Prince for two equations, and the polynomial of
 * order 4 that goes with it. Set to a step it holds the end, how far off that may be, and with `at` any place
 * on the way. Nothing is allocated.
 *
 * Coefficients: Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, II.5 and II.6.
 */
export function dormandPrince(field: VectorField): Step {
  let width = 0;
  const wayX = wayOf();
  const wayY = wayOf();
  const step: Step = {
    t: 0,
    x: 0,
    y: 0,
    dx: 0,
    dy: 0,
    error: 0,
    take({ t, x, y, dx: x1, dy: y1 }, end) {
      const h = end - t;
      field.set(t + h / 5, x + (h / 5) * x1, y + (h / 5) * y1);
      const x2 = field.dx;
      const y2 = field.dy;
      field.set(t + 0.3 * h, x + h * stage3(x1, x2), y + h * stage3(y1, y2));
      const x3 = field.dx;
      const y3 = field.dy;
      field.set(t + 0.8 * h, x + h * stage4(x1, x2, x3), y + h * stage4(y1, y2, y3));
      const x4 = field.dx;
      const y4 = field.dy;
      field.set(t + (8 / 9) * h, x + h * stage5(x1, x2, x3, x4), y + h * stage5(y1, y2, y3, y4));
      const x5 = field.dx;
      const y5 = field.dy;
      field.set(end, x + h * stage6(x1, x2, x3, x4, x5), y + h * stage6(y1, y2, y3, y4, y5));
      const x6 = field.dx;
      const y6 = field.dy;
      step.x = x + h * stage7(x1, x3, x4, x5, x6);
      step.y = y + h * stage7(y1, y3, y4, y5, y6);
      field.set(end, step.x, step.y);
      step.dx = field.dx;
      step.dy = field.dy;
      const errorX = errorOf(x1, x3, x4, x5, x6, step.dx);
      const errorY = errorOf(y1, y3, y4, y5, y6, step.dy);
      step.error = h * Math.sqrt(errorX * errorX + errorY * errorY);
      width = h;
      step.t = end;
      lay(wayX, x, step.x, h * x1, h * step.dx, h * bendOf(x1, x3, x4, x5, x6, step.dx));
      lay(wayY, y, step.y, h * y1, h * step.dy, h * bendOf(y1, y3, y4, y5, y6, step.dy));
    },
    at(share, state) {
      state.x = valueOn(wayX, share);
      state.y = valueOn(wayY, share);
      state.dx = slopeOn(wayX, share) / width;
      state.dy = slopeOn(wayY, share) / width;
    },
  };
  return step;
}

// What each stage starts from, by the number of the stage, out of the rates of the stages before it.
const stage3 = (k1: number, k2: number) => (3 / 40) * k1 + (9 / 40) * k2;
const stage4 = (k1: number, k2: number, k3: number) =>
  (44 / 45) * k1 - (56 / 15) * k2 + (32 / 9) * k3;
const stage5 = (k1: number, k2: number, k3: number, k4: number) =>
  (19372 / 6561) * k1 - (25360 / 2187) * k2 + (64448 / 6561) * k3 - (212 / 729) * k4;
const stage6 = (k1: number, k2: number, k3: number, k4: number, k5: number) =>
  (9017 / 3168) * k1 -
  (355 / 33) * k2 +
  (46732 / 5247) * k3 +
  (49 / 176) * k4 -
  (5103 / 18656) * k5;
/** The last stage is the result of order 5; the second counts for nothing in it. */
const stage7 = (k1: number, k3: number, k4: number, k5: number, k6: number) =>
  (35 / 384) * k1 + (500 / 1113) * k3 + (125 / 192) * k4 - (2187 / 6784) * k5 + (11 / 84) * k6;
/** Order 5 less order 4. */
const errorOf = (k1: number, k3: number, k4: number, k5: number, k6: number, k7: number) =>
  (71 / 57600) * k1 -
  (71 / 16695) * k3 +
  (71 / 1920) * k4 -
  (17253 / 339200) * k5 +
  (22 / 525) * k6 -
  k7 / 40;
/** The fifth term of the polynomial. */
const bendOf = (k1: number, k3: number, k4: number, k5: number, k6: number, k7: number) =>
  (-12715105075 / 11282082432) * k1 +
  (87487479700 / 32700410799) * k3 -
  (10690763975 / 1880347072) * k4 +
  (701980252875 / 199316789632) * k5 -
  (1453857185 / 822651844) * k6 +
  (69997945 / 29380423) * k7;

/** The polynomial of a step, in one coordinate. */
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
