import { solveBanded } from '../../numerics/index.js';
import type { FilmGrid } from './film-grid.js';

/** Pressure in a film, place by place along, then around, in units of 6 µω(r/c)². */
export type FilmPressure = Float64Array;

/**
 * Pressure in a film that cannot be pulled on. At every place either the film has broken and the
 * pressure is zero, or as much oil flows out as in. Which of the two is guessed, the film is solved
 * at once, and the guess is corrected wherever it was wrong, until it is right everywhere (an active set): both conditions
 * then hold to the last digits, whatever the step of an iteration would have been.
 */
export function solveFilm(
  grid: FilmGrid,
  gathered: Float64Array,
  guess: (around: number, along: number) => boolean,
): FilmPressure {
  const { around, along } = grid;
  const film = new Uint8Array(around * along);
  for (let i = 1; i < around; i++) {
    for (let j = 0; j < along; j++) film[i * along + j] = guess(i, j) ? 1 : 0;
  }
  const inflow = inflowOf(grid, gathered);
  const band = new Float64Array(film.length * (along + 1));
  const pressure = new Float64Array(film.length);
  do {
    fillBand(grid, film, band);
    solveBanded(band, along, film, inflow, pressure);
  } while (updateActiveSet(grid, film, inflow, pressure));
  return pressure;
}

/** What a turning journal drags into each place around more than out of it. */
export const dragged = ({ gapBefore }: FilmGrid): Float64Array =>
  gapBefore.map((gap, i) => gap - (gapBefore[i + 1] ?? gap));

/** What gathers at each place, from what does around, per length along. */
function inflowOf({ around, along, width }: FilmGrid, gathered: Float64Array): Float64Array {
  const inflow = new Float64Array(around * along);
  for (let i = 1; i < around; i++) {
    for (let j = 0; j < along; j++) {
      inflow[i * along + j] = (gathered[i] as number) * (width[j] as number);
    }
  }
  return inflow;
}

/**
 * The lower half of the equations' matrix: a row for each place, in it what couples it to the
 * `along` places before and, last, to itself. A place without film stands alone.
 */
function fillBand(grid: FilmGrid, film: Uint8Array, band: Float64Array): void {
  const { around, along, easeAround, easeAlong, width, nearness } = grid;
  band.fill(0);
  for (let i = 1; i < around; i++) {
    const before = easeAround[i] as number;
    const both = before + (easeAround[i + 1] as number);
    const sideways = easeAlong[i] as number;
    for (let j = 0; j < along; j++) {
      const place = i * along + j;
      const self = place * (along + 1) + along;
      if (film[place] === 0) continue;
      const inward = j === 0 ? 0 : sideways * (nearness[j - 1] as number);
      const wide = width[j] as number;
      band[self] = both * wide + inward + sideways * (nearness[j] as number);
      if (film[place - along] === 1) band[self - along] = -before * wide;
      // With one place along, the place before is the one before around.
      if (j > 0 && film[place - 1] === 1) band[self - 1] = -inward;
    }
  }
}

/** Breaks the film where it is pulled on, and closes it where oil gathers. Tells whether it had to. */
function updateActiveSet(
  { around, along, easeAround, easeAlong, width, nearness }: FilmGrid,
  film: Uint8Array,
  inflow: Float64Array,
  pressure: Float64Array,
): boolean {
  let changed = false;
  const old = film.slice();
  for (let i = 1; i < around; i++) {
    for (let j = 0; j < along; j++) {
      const place = i * along + j;
      if (old[place] === 1) {
        if ((pressure[place] as number) >= 0) continue;
        film[place] = 0;
        changed = true;
        continue;
      }
      const sideways = easeAlong[i] as number;
      const from = (neighbour: number, ease: number) =>
        old[neighbour] === 1 ? ease * (pressure[neighbour] as number) : 0;
      const gathers =
        (inflow[place] as number) +
        from(place - along, (easeAround[i] as number) * (width[j] as number)) +
        from(place + along, (easeAround[i + 1] as number) * (width[j] as number)) +
        (j === 0 ? 0 : from(place - 1, sideways * (nearness[j - 1] as number))) +
        (j === along - 1 ? 0 : from(place + 1, sideways * (nearness[j] as number)));
      if (gathers <= 0) continue;
      film[place] = 1;
      changed = true;
    }
  }
  return changed;
}
