import * as mathjs from 'mathjs';
import { CholeskyDecomposition, LuDecomposition, Matrix } from 'ml-matrix';
import { type FilmGrid, layGrid } from '../src/bearings/film/film-grid.js';
import { infiniteRupture } from '../src/bearings/film/infinite-film.js';
import { rawFilm } from '../src/bearings/film/raw-film.js';

/** A symmetric system, column by column, the way sparse solvers take it. */
interface System {
  readonly values: number[];
  readonly index: number[];
  /** Where each column begins among the values, and where the last one ends. */
  readonly ptr: number[];
  readonly right: number[];
}

/** A general solver of linear systems. */
export type Solver = (system: System) => readonly number[];

// Not among the types of mathjs; `sparse()` would read all the noughts first.
const { SparseMatrix } = mathjs as unknown as {
  SparseMatrix: new (
    data: Pick<System, 'values' | 'index' | 'ptr'> & { size: [number, number] },
  ) => mathjs.Matrix<number>;
};

/** In the order of the grid, which keeps the band narrow; the diagonal is good enough a pivot. */
export const mathjsSparse: Solver = ({ right, ...columns }) => {
  const matrix = new SparseMatrix({ ...columns, size: [right.length, right.length] });
  const solved = mathjs.lusolve(matrix, right, 0, 0.001).toArray();
  return (solved as number[][]).map(([pressure = Number.NaN]) => pressure);
};

export const denseCholesky: Solver = (system) =>
  new CholeskyDecomposition(denseOf(system)).solve(Matrix.columnVector(system.right)).to1DArray();

export const denseLu: Solver = (system) =>
  new LuDecomposition(denseOf(system)).solve(Matrix.columnVector(system.right)).to1DArray();

function denseOf({ values, index, ptr, right }: System): Matrix {
  const matrix = Matrix.zeros(right.length, right.length);
  for (let column = 0; column < right.length; column++) {
    for (let k = at(ptr, column); k < at(ptr, column + 1); k++) {
      matrix.set(at(index, k), column, at(values, k));
    }
  }
  return matrix;
}

/** The Sommerfeld number as `solveReynolds` finds it, its systems solved by another. */
export function sommerfeldBy(
  solver: Solver,
  eccentricity: number,
  lengthToDiameter: number,
  around = 48,
): number {
  const lay = (count: number) => layGrid(eccentricity, 1 / lengthToDiameter, count, count / 6);
  const [coarse, fine] = [lay(around / 2), lay(around)];
  const last = infiniteRupture(eccentricity);
  const rough = filmBy(solver, coarse, (i) => at(coarse.angle, i) < last);
  const nearest = (i: number, j: number) => (i >> 1) * coarse.along + (j >> 1);
  const exact = filmBy(solver, fine, (i, j) => at(rough, nearest(i, j)) > 0);
  const [once, twice] = [rawFilm(coarse, rough), rawFilm(fine, exact)];
  const beyond = (key: 'along' | 'across') => twice[key] + (twice[key] - once[key]) / 3;
  return 1 / (12 * Math.PI * Math.hypot(beyond('along'), beyond('across')));
}

/** Pressure place by place; the film is mended until it is pulled on nowhere, and gathers oil nowhere. */
function filmBy(solver: Solver, grid: FilmGrid, guess: (i: number, j: number) => boolean) {
  const { around, along, gapBefore, width } = grid;
  const count = around * along;
  const ways = Array.from({ length: count }, (_, place) => waysFrom(grid, place));
  const inflow = Float64Array.from(ways, (_, place) => {
    const i = Math.floor(place / along);
    return (at(gapBefore, i) - at(gapBefore, i + 1)) * at(width, place % along);
  });
  const film = Uint8Array.from(ways, (_, place) =>
    place >= along && guess(Math.floor(place / along), place % along) ? 1 : 0,
  );
  for (;;) {
    const { system, places } = systemOf(ways, inflow, film);
    const solved = solver(system);
    const pressure = new Float64Array(count);
    for (const [k, place] of places.entries()) pressure[place] = at(solved, k);
    let mended = false;
    for (let place = along; place < count; place++) {
      const whole = at(film, place) === 1;
      let gathered = at(inflow, place);
      for (const { to, ease } of ways[place] ?? [])
        if (to >= 0) gathered += ease * at(pressure, to);
      if (whole ? at(pressure, place) >= 0 : gathered <= 0) continue;
      film[place] = whole ? 0 : 1;
      mended = true;
    }
    if (!mended) return pressure;
  }
}

interface Way {
  /** The place that oil flows to, or -1 where there is no pressure. */
  readonly to: number;
  /** How easily. */
  readonly ease: number;
}

/** The ways from a place, in the order of the places they lead to. */
function waysFrom(
  { around, along, easeAround, easeAlong, width, nearness }: FilmGrid,
  place: number,
): readonly Way[] {
  const [i, j] = [Math.floor(place / along), place % along];
  const sideways = at(easeAlong, i);
  return [
    { to: i > 1 ? place - along : -1, ease: at(easeAround, i) * at(width, j) },
    ...(j > 0 ? [{ to: place - 1, ease: sideways * at(nearness, j - 1) }] : []),
    { to: j < along - 1 ? place + 1 : -1, ease: sideways * at(nearness, j) },
    { to: i < around - 1 ? place + along : -1, ease: at(easeAround, i + 1) * at(width, j) },
  ];
}

/** The system of the places with film, and which place each of its rows is. */
function systemOf(ways: readonly (readonly Way[])[], inflow: Float64Array, film: Uint8Array) {
  const row = new Int32Array(film.length);
  const places: number[] = [];
  for (let place = 0; place < film.length; place++) {
    if (film[place] === 1) row[place] = places.push(place) - 1;
  }
  const system: System = { values: [], index: [], ptr: [0], right: [] };
  const enter = (value: number, place: number) => {
    system.values.push(value);
    system.index.push(at(row, place));
  };
  for (const place of places) {
    const around = ways[place] ?? [];
    const whole = around.filter(({ to }) => to >= 0 && film[to] === 1);
    for (const { to, ease } of whole) if (to < place) enter(-ease, to);
    enter(
      around.reduce((sum, { ease }) => sum + ease, 0),
      place,
    );
    for (const { to, ease } of whole) if (to > place) enter(-ease, to);
    system.ptr.push(system.values.length);
    system.right.push(at(inflow, place));
  }
  return { system, places };
}

function at(values: ArrayLike<number>, k: number): number {
  return values[k] as number;
}
