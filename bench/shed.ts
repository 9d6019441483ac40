import { degree, inch, type Length, thou } from 'crankwright';
import type { JournalPlace, Shed } from 'crankwright/shed';

const STEPS = [0, 10, 20, 30] as const;

/**
 * A shed with so many blocks, crankshafts, rods, piston and ring sets and heads
 * of an invented twin, each measured by itself to a tenth of a thou and worn or
 * ground in its own way; with shells of every step in three walls, a few for each.
 * The same number and seed make the same shed.
 */
export function generatedShed(of: number, seed: number): Shed {
  const { whole, chance, oneOf } = dice(seed);
  const many = <T>(count: number, make: (i: number) => T) =>
    Array.from({ length: count }, (_, i) => make(i));

  const journal = (name: string, standard: number): JournalPlace => {
    const worn = chance(0.4);
    const size = standard - oneOf([0, 0, 100, 200]) - (worn ? whole(2, 12) : whole(0, 3));
    const [outOfRound, taper] = [worn ? whole(6, 14) : whole(0, 3), whole(0, 3)];
    const readings = [0.25, 1.25].flatMap((station, i) =>
      [0, 90].map((angle, j) => ({
        station: inch(station),
        angle: degree(angle),
        diameter: tenths(size - j * outOfRound - i * taper),
      })),
    );
    return { name, readings };
  };
  const bore = (name: string) => {
    const worn = chance(0.5);
    const readings = [0.5, 2, 3.5].flatMap((station) =>
      [0, 90].map((angle) => ({
        station: inch(station),
        angle: degree(angle),
        diameter: tenths(30_000 + (worn ? whole(30, 120) : whole(0, 5))),
      })),
    );
    return { name, readings };
  };
  const housing = (name: string, least: number) => ({
    name,
    housingBore: tenths(least + whole(0, 5)),
  });
  const price = (amount: number) => ({ amount, currency: 'EUR' });
  const piston = (name: string, step: number, by: number) => ({
    name,
    diameter: tenths(29_965 + 10 * step + by),
  });

  return {
    version: 1,
    shed: `a generated shed, ${of} of each`,
    units: 'inch',
    engine: {
      name: 'pump set, vertical twin',
      cylinders: 2,
      mains: 2,
      rodJournals: {
        standard: { min: tenths(16_245), max: tenths(16_250) },
        oilClearance: { min: tenths(12), max: tenths(28) },
      },
      mainJournals: {
        standard: { min: tenths(19_995), max: tenths(20_000) },
        oilClearance: { min: tenths(12), max: tenths(32) },
      },
      bores: {
        standard: { min: tenths(30_000), max: tenths(30_005) },
        pistonClearance: { min: tenths(25), max: tenths(55) },
      },
      endPlay: { min: tenths(50), max: tenths(120) },
    },
    blocks: many(of, (i) => ({
      name: `block ${i}`,
      bores: [bore('cylinder 1'), bore('cylinder 2')],
      mainHousings: [housing('pulley main', 21_260), housing('flywheel main', 21_260)],
      thrustWidth: tenths(23_000 + 5 * whole(0, 4)),
    })),
    crankshafts: many(of, (i) => ({
      name: `crankshaft ${i}`,
      rodJournals: [journal('rod 1', 16_250), journal('rod 2', 16_250)],
      mainJournals: [journal('pulley main', 20_000), journal('flywheel main', 20_000)],
      thrustWidth: tenths(23_200 + 5 * whole(0, 6)),
    })),
    // One in ten pairs has been parted, and its rods go where they fit.
    rods: many(of, (i) => [housing(`rod ${i}a`, 17_505), housing(`rod ${i}b`, 17_505)]).flatMap(
      (rods, i) =>
        i % 10 === 9
          ? rods.map((rod) => ({ name: rod.name, rods: [rod] }))
          : [{ name: `rods ${i}`, rods }],
    ),
    pistonSets: many(of, (i) => {
      const step = oneOf(STEPS);
      const pistons = [piston('1', step, whole(-2, 3)), piston('2', step, whole(-2, 3))];
      return { name: `pistons ${i}`, oversize: thou(step), pistons };
    }),
    ringSets: many(of, (i) => ({ name: `rings ${i}`, oversize: thou(oneOf(STEPS)) })),
    shells: (['rods', 'mains'] as const).flatMap((fits) =>
      STEPS.flatMap((step) =>
        [-2, 0, 1].map((by) => ({
          name: `${fits} ${step} under, wall ${by}`,
          fits,
          undersize: thou(step),
          wall: tenths(620 + 5 * step + by),
          pairs: Math.ceil(of / 5),
        })),
      ),
    ),
    thrustWashers: [20, 40, 60, 80, 100].map((thickness) => ({
      name: `washer ${thickness}`,
      thickness: tenths(thickness),
      count: Math.max(1, of),
    })),
    heads: many(of, (i) => ({ name: `head ${i}` })),
    valveSets: many(of, (i) => ({ name: `valves ${i}` })),
    machining: [
      { work: 'grind rod journals', shop: 'the grinder', price: price(14) },
      { work: 'grind main journals', shop: 'the grinder', price: price(16) },
      { work: 'bore', shop: 'the borer', price: price(35) },
    ],
    toBuy: {
      shells: [
        {
          name: 'rod shells to buy, 10 under',
          fits: 'rods',
          undersize: thou(10),
          wall: tenths(670),
          pairs: 2 * of,
          price: price(22),
        },
      ],
      pistonSets: [
        {
          name: 'pistons to buy, 20 over',
          oversize: thou(20),
          pistons: [piston('1', 20, 0), piston('2', 20, 0)],
          price: price(120),
        },
      ],
    },
  };
}

const tenths = (count: number): Length => inch(count / 10_000);

/** Numbers drawn from a seed: the linear congruential generator of Numerical Recipes. */
function dice(seed: number) {
  let state = seed;
  const next = () => {
    state = (state * 1_664_525 + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  return {
    whole: (least: number, most: number) => least + Math.floor(next() * (most - least + 1)),
    chance: (share: number) => next() < share,
    oneOf: <T>(all: readonly T[]): T => all[Math.floor(next() * all.length)] as T,
  };
}
