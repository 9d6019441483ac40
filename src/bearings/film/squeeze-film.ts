import { richardson } from '../../numerics/index.js';
import { type FilmGrid, layGrid } from './film-grid.js';
import { loadOf } from './raw-film.js';
import { solveFilm } from './solve-film.js';

/**
 * The load that a film carries while the journal moves in it, at a speed of one radial clearance in a
 * unit of time, in units of 6 µ(r/c)² times diameter and length.
 */
export interface Squeeze {
  /** Towards the narrowest gap. */
  readonly towards: number;
  /** Across that, a quarter turn on in the sense that angles are counted. */
  readonly across: number;
}

/**
 * What a film carries while the journal moves in some direction, counted from that of the narrowest
 * gap. The oil does not turn: it is seen by one who turns halfway between journal and shell. Solved
 * on two grids and taken on from both, as by `solveReynolds`.
 */
export function squeezeFilm(
  eccentricity: number,
  lengthToDiameter: number,
  direction: number,
  placesAround: number,
): Squeeze {
  const on = (count: number) =>
    squeezeOn(layGrid(eccentricity, 1 / lengthToDiameter, count, count / 6), direction);
  const [coarse, fine] = [on(placesAround / 2), on(placesAround)];
  const beyond = (key: keyof Squeeze) => richardson(coarse[key], fine[key]);
  return { towards: beyond('towards'), across: beyond('across') };
}

function squeezeOn(grid: FilmGrid, direction: number): Squeeze {
  const [ahead, aside] = [Math.cos(direction), Math.sin(direction)];
  // The film is broken behind the journal, which is as far from the widest gap as its way is from the
  // narrowest one.
  const turned = turnedTo(grid, direction);
  const swept = turned.angleBefore.map((at) => ahead * Math.sin(at) - aside * Math.cos(at));
  const gathered = swept.map((here, i) => here - (swept[i + 1] ?? here));
  const half = turned.around / 2;
  const pressure = solveFilm(turned, gathered, (i) => Math.abs(i - half) < half / 2);
  const { along, across } = loadOf(turned, pressure);
  return { towards: 2 * along, across: -2 * across };
}

/** The same grid, begun at the place nearest after an angle. */
function turnedTo(grid: FilmGrid, angle: number): FilmGrid {
  const turn = 2 * Math.PI;
  const begin = ((angle % turn) + turn) % turn;
  const first = grid.angle.findIndex((place) => place >= begin) % grid.around;
  const turned = (values: Float64Array) =>
    values.map((_, i) => values[(i + first) % grid.around] as number);
  return {
    ...grid,
    angle: turned(grid.angle),
    angleBefore: turned(grid.angleBefore),
    arc: turned(grid.arc),
    gapBefore: turned(grid.gapBefore),
    easeAround: turned(grid.easeAround),
    easeAlong: turned(grid.easeAlong),
  };
}
