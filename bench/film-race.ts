import { rootOfFalling } from '../src/numerics/roots.js';
import { mustAgree, raceBeside, timeCell } from './beside.js';
import { finiteBearing, finiteBearingAt, ratio, solveReynolds } from './built.js';
import { denseCholesky, mathjsSparse, type Solver, sommerfeldBy } from './film-peers.js';
import { sommerfeldByMatrix } from './map-peer.js';
import { race } from './race.js';
import type { Section } from './report.js';
import { spreadOf } from './spread.js';

const placeOf = (eccentricity: number, lengthToDiameter: number) => ({
  eccentricity: ratio(eccentricity),
  lengthToDiameter: ratio(lengthToDiameter),
});

// From light to heavy load, from short to long; on the third the usual grid is farthest off.
const PLACES = [placeOf(0.2, 1), placeOf(0.6, 0.5), placeOf(0.9, 0.1), placeOf(0.97, 2)];

// Every bearing differs, so that nothing can be computed ahead of the loop.
const MANY = Array.from({ length: 500 }, (_, i) =>
  placeOf(0.05 + 0.0018 * i, 0.2 + 1.8 * ((i * 0.618) % 1)),
);
const LOADED = MANY.map((place) => ({
  sommerfeld: finiteBearing(place).sommerfeld,
  lengthToDiameter: place.lengthToDiameter,
}));

/** The oil film: from the map, straight from the equation, and turned round, each beside peers. */
export function raceFilms(): readonly Section[] {
  return [raceMap(), raceSolver(), raceInverse(), growth()];
}

function raceMap(): Section {
  for (const place of MANY) {
    const theirs = sommerfeldByMatrix(place.eccentricity, place.lengthToDiameter);
    mustAgree('the map by ml-matrix', theirs, finiteBearing(place).sommerfeld, 1e-12);
  }
  return raceBeside({
    title: 'an oil film from the map, 500 different bearings',
    calls: MANY.length,
    ours: {
      name: 'crankwright  finiteBearing(place)',
      pass() {
        let sum = 0;
        for (const place of MANY) sum += finiteBearing(place).sommerfeld;
        return sum;
      },
    },
    peers: [
      {
        name: 'ml-matrix  the sums of the same map',
        pass() {
          let sum = 0;
          for (const { eccentricity, lengthToDiameter } of MANY) {
            sum += sommerfeldByMatrix(eccentricity, lengthToDiameter);
          }
          return sum;
        },
      },
      {
        name: 'crankwright  solveReynolds(place)',
        pass() {
          let sum = 0;
          for (const place of MANY) sum += solveReynolds(place).sommerfeld;
          return sum;
        },
      },
    ],
    target: { name: 'finiteBearing', atMost: 0.1 },
  });
}

function raceSolver(): Section {
  const by = (name: string, solver: Solver) => {
    for (const place of PLACES) {
      const theirs = sommerfeldBy(solver, place.eccentricity, place.lengthToDiameter);
      mustAgree(name, theirs, solveReynolds(place).sommerfeld, 1e-9);
    }
    return {
      name,
      pass() {
        let sum = 0;
        for (const { eccentricity, lengthToDiameter } of PLACES) {
          sum += sommerfeldBy(solver, eccentricity, lengthToDiameter);
        }
        return sum;
      },
    };
  };
  return raceBeside({
    title:
      'an oil film from the Reynolds equation, 4 bearings: the same systems on the same\n' +
      'grids, with the same Sommerfeld number to 1e-9',
    calls: PLACES.length,
    ours: {
      name: 'crankwright  solveReynolds(place)',
      pass() {
        let sum = 0;
        for (const place of PLACES) sum += solveReynolds(place).sommerfeld;
        return sum;
      },
    },
    peers: [
      by('mathjs  sparse lusolve', mathjsSparse),
      by('ml-matrix  dense Cholesky', denseCholesky),
    ],
    target: { name: 'solveReynolds', atMost: 0.1 },
  });
}

/** The same root, looked for in films that are solved instead of read off the map. */
function eccentricityBySolving({ sommerfeld, lengthToDiameter }: (typeof LOADED)[0]): number {
  const spare = (eccentricity: number) =>
    Math.log(solveReynolds(placeOf(eccentricity, lengthToDiameter)).sommerfeld / sommerfeld);
  return rootOfFalling(spare, 0.01, 0.998);
}

function raceInverse(): Section {
  const few = LOADED.filter((_, i) => i % 100 === 50);
  for (const place of few) {
    const theirs = 1 - eccentricityBySolving(place);
    mustAgree('the film by solving', theirs, finiteBearingAt(place).leastFilm, 0.01);
  }
  return raceBeside({
    title: `an oil film from its load, ${few.length} bearings: the same root, with the same least film to 1 %`,
    calls: few.length,
    ours: {
      name: 'crankwright  finiteBearingAt(place)',
      pass() {
        let sum = 0;
        for (const place of few) sum += finiteBearingAt(place).leastFilm;
        return sum;
      },
    },
    peers: [
      {
        name: 'crankwright  solveReynolds(place) until it fits',
        pass() {
          let sum = 0;
          for (const place of few) sum += eccentricityBySolving(place);
          return sum;
        },
      },
    ],
    target: { name: 'finiteBearingAt', atMost: 0.01 },
  });
}

/** What a finer grid costs and brings. */
function growth(): Section {
  const FINEST = 384;
  const grids = [24, 48, 96, 192];
  const sommerfelds = (placesAround: number) =>
    PLACES.map((place) => solveReynolds({ ...place, placesAround }).sommerfeld);
  const exact = sommerfelds(FINEST);
  const errorOf = (placesAround: number) =>
    Math.max(...sommerfelds(placesAround).map((value, i) => Math.abs(value / (exact[i] ?? 0) - 1)));
  const times = race(
    grids.map((placesAround) => ({
      name: `${placesAround}`,
      pass: () => sommerfelds(placesAround).reduce((sum, value) => sum + value, 0),
    })),
  );
  const timeOf = (placesAround: number) =>
    spreadOf((times.get(`${placesAround}`) ?? []).map((time) => time / PLACES.length));
  const rows = grids.map((placesAround, i) => {
    const { median, lowerQuartile, upperQuartile } = timeOf(placesAround);
    const before = grids[i - 1];
    const power =
      before && Math.log(median / timeOf(before).median) / Math.log(placesAround / before);
    return [
      `${placesAround} places around`,
      timeCell(median),
      `${timeCell(lowerQuartile)} … ${timeCell(upperQuartile)}`,
      power === undefined ? '' : `n^${power.toFixed(1)}`,
      `${(100 * errorOf(placesAround)).toPrecision(2)} %`,
    ];
  });
  return {
    title: `solveReynolds on finer grids: Sommerfeld number beside that with ${FINEST} places around`,
    rows: [['', 'one call', 'middle half', 'growth', 'error'], ...rows],
    targets: [
      {
        name: 'Sommerfeld number of the usual grid of 48, farthest off',
        measured: 100 * errorOf(48),
        atMost: 0.5,
        unit: '%',
      },
    ],
  };
}
