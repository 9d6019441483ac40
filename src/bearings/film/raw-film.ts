import type { FilmGrid } from './film-grid.js';
import type { RawFilm } from './film-numbers.js';
import type { FilmPressure } from './solve-film.js';

/** Load, flow and pressure of a film that was solved on a grid. */
export function rawFilm(grid: FilmGrid, pressure: FilmPressure): RawFilm {
  return { ...loadOf(grid, pressure), ...flowOf(grid, pressure), ...midway(grid, pressure) };
}

/** Sum of pressure along the half bearing at one place around. */
function sumAlong({ along, width }: FilmGrid, pressure: FilmPressure, i: number): number {
  let sum = 0;
  for (let j = 0; j < along; j++) sum += (pressure[i * along + j] as number) * (width[j] as number);
  return sum;
}

/** Load along and across the line of centres. */
export function loadOf(grid: FilmGrid, pressure: FilmPressure): Pick<RawFilm, 'along' | 'across'> {
  let towards = 0;
  let across = 0;
  for (let i = 1; i < grid.around; i++) {
    const push = sumAlong(grid, pressure, i) * (grid.arc[i] as number);
    const angle = grid.angle[i] as number;
    towards -= push * Math.cos(angle);
    across += push * Math.sin(angle);
  }
  return { along: towards / 2, across: across / 2 };
}

function flowOf(grid: FilmGrid, pressure: FilmPressure): Pick<RawFilm, 'inflow' | 'outflow'> {
  const { around, gapBefore, easeAround } = grid;
  let outflow = 0;
  for (let i = 1; i < around; i++) outflow += overTheEnd(grid, pressure, i);
  // Between the widest gap and halfway to the first place, what leaves rises evenly from nothing.
  const firstOutflow = overTheEnd(grid, pressure, 1) / 8;
  const backflow = sumAlong(grid, pressure, 1) * (easeAround[1] as number);
  return {
    inflow: (gapBefore[1] as number) - backflow + firstOutflow,
    outflow: outflow + firstOutflow,
  };
}

/** Flow over the end: what comes from the last place, and what the rim itself gathers. */
function overTheEnd(grid: FilmGrid, pressure: FilmPressure, i: number): number {
  const { along, gapBefore, easeAlong, nearness, rim } = grid;
  const last = pressure[i * along + along - 1] as number;
  if (last === 0) return 0;
  const gathered = ((gapBefore[i] as number) - (gapBefore[i + 1] as number)) * rim;
  return (easeAlong[i] as number) * (nearness[along - 1] as number) * last + gathered;
}

function midway(
  { around, along, angle }: FilmGrid,
  pressure: FilmPressure,
): Pick<RawFilm, 'peak' | 'peakAt' | 'ruptureAt'> {
  const at = (i: number) => (i >= around ? 0 : (pressure[i * along] as number));
  let top = 1;
  let last = 1;
  for (let i = 1; i < around; i++) {
    if (at(i) > at(top)) top = i;
    if (at(i) > 0) last = i;
  }
  // The top of a parabola through the three highest.
  const [before, highest, after] = [at(top - 1), at(top), at(top + 1)];
  const shift = (before - after) / (2 * (before - 2 * highest + after));
  // Pressure dies out as the square of the distance.
  const [previous, end] = [Math.sqrt(at(last - 1)), Math.sqrt(at(last))];
  return {
    peak: highest - ((before - after) * shift) / 4,
    peakAt: between(angle, top + shift),
    ruptureAt: between(angle, last + end / (previous - end)),
  };
}

/** Angle at a place between two of the grid, by the parabola through the three nearest. */
function between(angle: Float64Array, place: number): number {
  const i = Math.min(Math.max(1, Math.round(place)), angle.length - 2);
  const [a, b, c] = [angle[i - 1], angle[i], angle[i + 1]] as unknown as [number, number, number];
  const off = place - i;
  return b + (off * (c - a)) / 2 + (off * off * (a - 2 * b + c)) / 2;
}
