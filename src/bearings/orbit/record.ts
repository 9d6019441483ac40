import { CYCLE } from '../../motion/internal.js';
import { rootOfFalling, type State } from '../../numerics/index.js';
import type { Angle, Length, Ratio, Speed } from '../../quantities/index.js';
import type { OnPlace } from './once-around.js';
import type { Approach, OrbitPoint } from './orbit-types.js';

/** What is noted of a cycle, in radial clearances and radians of the crank. */
export interface Record {
  readonly onPlace: OnPlace;
  /** Begins a new cycle from a place, and forgets the one before. */
  readonly radial: number;
  begin(x: number, y: number): void;
  path(): readonly OrbitPoint[];
  least(): {
    readonly film: number;
    readonly angle: number;
    readonly x: number;
    readonly y: number;
  };
  approach(speed: number): Approach;
  /** Share of the cycle with a film below the limit. */
  shareThinner(): Ratio;
}

/** Notes a cycle as it is followed: the place at every even angle, and what stands out on the way. */
export function recordOf(even: number, radial: number, limit: number): Record {
  const pathX = new Float64Array(even);
  const pathY = new Float64Array(even);
  let mark = 0;
  const before: State = { t: 0, x: 0, y: 0, dx: 0, dy: 0 };
  const middle: State = { ...before };
  const least = { film: 1, angle: 0, x: 0, y: 0 };
  const fastest = { speed: 0, angle: 0, film: 1 };
  let thinner = 0;
  const offer = (angle: number, x: number, y: number) => {
    const film = filmAt(x, y);
    if (!(film > 0 && film < least.film)) return;
    least.film = film;
    least.angle = angle;
    least.x = x;
    least.y = y;
  };
  /** Where the film grows here but shrank before, it was thinnest in between. */
  const offerTurning = (end: number, look: Parameters<OnPlace>[2]) => {
    const closing = (angle: number) => {
      look(angle, middle);
      return closingAt(middle);
    };
    look(rootOfFalling(closing, before.t, end), middle);
    offer(middle.t, middle.x, middle.y);
  };
  return {
    radial,
    begin(x, y) {
      mark = 1;
      pathX[0] = x;
      pathY[0] = y;
      thinner = 0;
      Object.assign(before, { t: 0, x, y, dx: 0, dy: 0 });
      Object.assign(least, { film: filmAt(x, y), angle: 0, x, y });
      Object.assign(fastest, { speed: 0, angle: 0, film: least.film });
    },
    onPlace(place, isEven, look) {
      const { t: angle, x, y } = place;
      if (isEven && mark < even) {
        pathX[mark] = x;
        pathY[mark] = y;
        mark++;
      }
      const width = angle - before.t;
      const film = filmAt(x, y);
      thinner += width * shareBelow(filmAt(before.x, before.y), film, limit);
      const closing = closingAt(place);
      if (closing > fastest.speed) {
        fastest.speed = closing;
        fastest.angle = angle;
        fastest.film = film;
      }
      offer(angle, x, y);
      if (closing < 0 && closingAt(before) > 0) offerTurning(angle, look);
      before.t = angle;
      before.x = x;
      before.y = y;
      before.dx = place.dx;
      before.dy = place.dy;
    },
    path: () =>
      Array.from(pathX, (x, i): OrbitPoint => {
        const y = pathY[i] ?? 0;
        return {
          crankAngle: ((CYCLE * i) / even) as Angle,
          along: x as Ratio,
          across: y as Ratio,
          film: (radial * filmAt(x, y)) as Length,
        };
      }),
    least: () => least,
    approach: (speed) => ({
      speed: (fastest.speed * radial * speed) as Speed,
      crankAngle: (fastest.angle % CYCLE) as Angle,
      film: (radial * fastest.film) as Length,
    }),
    shareThinner: () => Math.min(1, thinner / CYCLE) as Ratio,
  };
}

/** Share of a step on which a film that goes evenly from one value to another is below a limit. */
function shareBelow(from: number, to: number, limit: number): number {
  const [low, high] = from < to ? [from, to] : [to, from];
  if (high < limit) return 1;
  return low >= limit ? 0 : (limit - low) / (high - low);
}

const filmAt = (x: number, y: number): number => 1 - Math.sqrt(x * x + y * y);

/** How fast the film shrinks. From the very middle it does whichever way the journal goes. */
function closingAt({ x, y, dx, dy }: State): number {
  const eccentricity = Math.sqrt(x * x + y * y);
  return eccentricity > 0 ? (x * dx + y * dy) / eccentricity : Math.sqrt(dx * dx + dy * dy);
}
