import type { Journey } from './once-around.js';

/** More cycles than this are no progress. */
const MOST_CYCLES = 60;
/** One that has not settled after these does so slowly. */
const MOST_QUICK = 5;

/** A place in the clearance. */
interface Place {
  readonly x: number;
  readonly y: number;
}

/** How it went. */
interface Settling {
  readonly outcome: 'settled' | 'too many steps' | 'too many cycles';
  readonly cycles: number;
  readonly steps: number;
}

/**
 * Follows cycles until one ends where it began, and where the next would begin: both to within
 * a share of the film there. A loaded bearing forgets where it came from within a cycle or two;
 * one that hardly carries anything takes many, and is helped on by a guess. That one is to be followed with
 * care: what is lost in a cycle adds up where little is forgotten.
 */
export function settle(
  tolerance: number,
  follow: (start: Place, slow: boolean) => Journey | undefined,
): Settling {
  const starts: Place[] = [];
  const ends: Place[] = [];
  let start: Place = { x: 0, y: 0 };
  let last = 1;
  let steps = 0;
  for (let cycles = 1; cycles <= MOST_CYCLES; cycles++) {
    const end = follow(start, cycles > MOST_QUICK);
    if (!end) return { outcome: 'too many steps', cycles, steps };
    steps += end.steps;
    starts.push(start);
    ends.push(end);
    const guess = guessReturn(starts, ends);
    const close = tolerance * (1 - Math.hypot(end.x, end.y));
    const apart = (other: Place) => Math.hypot(other.x - end.x, other.y - end.y);
    if (cycles > 1 && apart(start) <= close && apart(guess) <= close) {
      return { outcome: 'settled', cycles, steps };
    }
    // A guess from far away may lie anywhere, one outside of the clearance is none, and where each cycle
    // comes much nearer than the one before there is no need of one.
    const slow = cycles > 2 && apart(start) > 0.2 * last;
    last = apart(start);
    start = slow && Math.hypot(guess.x, guess.y) < 0.99 ? guess : end;
  }
  return { outcome: 'too many cycles', cycles: MOST_CYCLES, steps };
}

/**
 * Guesses where a journal comes back to where it started, from the places where it started and came to.
 * From two cycles on it draws a line through the last two, from three on a plane through the last three
 * (Anderson's mixing, the secant rule in the plane).
 */
function guessReturn(starts: readonly Place[], ends: readonly Place[]): Place {
  const count = starts.length;
  const change = (back: number) => {
    const start = starts[count - 1 - back];
    const end = ends[count - 1 - back];
    return start && end ? { x: end.x - start.x, y: end.y - start.y } : undefined;
  };
  const last = ends[count - 1] ?? { x: 0, y: 0 };
  const [now, before, long] = [change(0), change(1), change(2)];
  if (!now || !before) return last;
  const one = { x: now.x - before.x, y: now.y - before.y };
  const moved = (back: number) => ({
    x: last.x - (ends[count - 1 - back]?.x ?? 0),
    y: last.y - (ends[count - 1 - back]?.y ?? 0),
  });
  if (long) {
    const two = { x: now.x - long.x, y: now.y - long.y };
    const area = one.x * two.y - one.y * two.x;
    if (Math.abs(area) > 1e-3 * Math.hypot(one.x, one.y) * Math.hypot(two.x, two.y)) {
      const a = (now.x * two.y - now.y * two.x) / area;
      const b = (one.x * now.y - one.y * now.x) / area;
      return {
        x: last.x - a * moved(1).x - b * moved(2).x,
        y: last.y - a * moved(1).y - b * moved(2).y,
      };
    }
  }
  const square = one.x * one.x + one.y * one.y;
  if (square === 0) return last;
  const share = (now.x * one.x + now.y * one.y) / square;
  return { x: last.x - share * moved(1).x, y: last.y - share * moved(1).y };
}
