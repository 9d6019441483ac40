import { mustAgree, raceBeside } from './beside.js';
import {
  bigEndLoads,
  bigEndOrbit,
  gasTrace,
  inch,
  kilogram,
  millipascalSecond,
  ratio,
  rpm,
} from './built.js';
import { byMathjs, byOdex, type Follower, speedOf } from './orbit-peers.js';
import type { Section } from './report.js';

// The pump set at full load, as in examples/big-end.ts.
const crank = { stroke: inch(3.25), rodLength: inch(6) };
const loads = bigEndLoads({
  ...crank,
  bore: inch(3),
  speed: rpm(1800),
  pistonMass: kilogram(0.45),
  smallEndMass: kilogram(0.18),
  bigEndMass: kilogram(0.42),
  gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
});
const BEARING = { journal: inch(1.625), length: inch(1), viscosity: millipascalSecond(15), loads };

/** Error of a step that `bigEndOrbit` allows unless asked, as a share of the film. */
const TOLERANCE = 1e-4;

/** The path of a crankpin, in a healthy bearing and in a loose one, each beside general solvers. */
export function raceOrbits(): readonly Section[] {
  return [
    raceOrbit('healthy', { ...BEARING, clearance: inch(0.0017) }),
    raceOrbit('0.020 in loose', { ...BEARING, clearance: inch(0.02) }),
  ];
}

function raceOrbit(state: string, bigEnd: Parameters<typeof bigEndOrbit>[0]): Section {
  const orbit = bigEndOrbit(bigEnd);
  if (orbit.outcome !== 'settled') throw new Error(`the ${state} big end gave ${orbit.outcome}`);
  const { leastFilm, cycles } = orbit;
  const least = (2 * leastFilm.film) / bigEnd.clearance;
  const speed = speedOf(bigEnd);
  // Theirs is one tolerance for the whole path: that of the film where it is thinnest.
  const by = (name: string, follow: Follower) => {
    mustAgree(name, follow(speed, cycles, TOLERANCE * least), least, 0.01);
    return { name, pass: () => follow(speed, cycles, TOLERANCE * least) };
  };
  return raceBeside({
    title:
      `a big end, ${state}: the same equations over the same ${cycles} cycles, to the same\n` +
      'tolerance, with the same least film to 1 %',
    calls: 1,
    ours: {
      name: 'crankwright  bigEndOrbit(bigEnd)',
      pass() {
        const settled = bigEndOrbit(bigEnd);
        return settled.outcome === 'settled' ? settled.leastFilm.film : Number.NaN;
      },
    },
    peers: [by('odex  solve', byOdex), by('mathjs  solveODE', byMathjs)],
    target: { name: `bigEndOrbit, ${state}`, atMost: 1 },
  });
}
