import { multiply, subtract, type Unit, unit } from 'mathjs';
import { inch, oilClearance } from './built.js';
import { race } from './race.js';
import { ratioCells, type Section } from './report.js';
import { ratioOf } from './spread.js';

type Sizes = Parameters<typeof oilClearance>[0];

// Every bearing differs, so that nothing can be computed ahead of the loop.
const bearings = Array.from(
  { length: 500 },
  (_, i): Sizes => ({
    housingBore: inch(2.251 + i * 1e-6),
    shellWall: inch(0.062 + i * 1e-7),
    journal: inch(2.125 - i * 1e-6),
  }),
);

const bearingsInMathjs = bearings.map(({ housingBore, shellWall, journal }) => ({
  housingBore: unit(housingBore, 'm'),
  shellWall: unit(shellWall, 'm'),
  journal: unit(journal, 'm'),
}));

function bareArithmetic({ housingBore, shellWall, journal }: Sizes): number {
  return housingBore - 2 * shellWall - journal;
}

function mathjsUnits({ housingBore, shellWall, journal }: (typeof bearingsInMathjs)[0]): number {
  const walls = multiply(2, shellWall) as Unit;
  return subtract(subtract(housingBore, walls), journal).toNumber('m');
}

const BARE = {
  name: 'bore - 2 * wall - journal',
  pass() {
    let sum = 0;
    for (const sizes of bearings) sum += bareArithmetic(sizes);
    return sum;
  },
};

const OURS = {
  name: 'crankwright  oilClearance(sizes)',
  pass() {
    let sum = 0;
    for (const sizes of bearings) sum += oilClearance(sizes);
    return sum;
  },
};

const MATHJS = {
  name: 'mathjs  the same with units',
  pass() {
    let sum = 0;
    for (const sizes of bearingsInMathjs) sum += mathjsUnits(sizes);
    return sum;
  },
};

/** What input guards cost: the formula with them, without them, and with unit objects. */
export function raceClearances(): Section {
  const runners = [BARE, OURS, MATHJS];
  const times = race(runners);
  const ratio = (name: string) => ratioOf(times.get(name) ?? [], times.get(BARE.name) ?? []);
  return {
    title: 'oil clearance: time beside the bare arithmetic',
    rows: [
      ['', 'time', 'middle half'],
      ...runners.map(({ name }) => [name, ...ratioCells(ratio(name))]),
    ],
    targets: [
      {
        name: 'oilClearance',
        measured: ratio(OURS.name).median,
        // A dozen comparisons and a look at every field, beside three operations.
        atMost: 8,
        unit: '× the bare arithmetic',
      },
    ],
  };
}
