import type { Shed } from 'crankwright/shed';
import { readings, rulerOf } from './random-measured.js';

// All sizes here are tenths of a thou, 2540 nm each.

const ruler = rulerOf('inch');
export const { length, span } = ruler;
export const TENTH = 2540;

export const eur = (amount: number) => ({ amount, currency: 'EUR' });
export const journal = (size: number) => ({
  name: 'rod journal',
  readings: readings(ruler, size, {}),
});
export const block = (name: string, ...sizes: readonly number[]) => ({
  name,
  bores: sizes.map((size, i) => ({
    name: `cylinder ${i + 1}`,
    readings: readings(ruler, size, {}),
  })),
});
export const crankshaft = (name: string, size: number) => ({ name, rodJournals: [journal(size)] });
export const rod = (name: string, housing: number) => ({
  name,
  rods: [{ name: 'big end', housingBore: length(housing) }],
});
export const pistons = (name: string, ...sizes: readonly number[]) => ({
  name,
  oversize: length(0),
  pistons: sizes.map((size, i) => ({ name: `piston ${i + 1}`, diameter: length(size) })),
});
export const rings = (count: number) => ({ name: 'rings', oversize: length(0), count });
export const shells = (name: string, step: number, wall: number, pairs: number) => ({
  name,
  fits: 'rods' as const,
  undersize: length(step),
  wall: length(wall),
  pairs,
});

/** A single in rolling main bearings, without head or valves, and one of everything it takes. */
export const single: Shed = {
  version: 1,
  shed: 'worked by hand',
  units: 'inch',
  engine: {
    name: 'pump set, single',
    cylinders: 1,
    mains: 0,
    rodJournals: { standard: span(16245, 16250), oilClearance: span(10, 30) },
    bores: { standard: span(30000, 30005), pistonClearance: span(20, 45) },
    alsoNeeds: [],
  },
  blocks: [block('block A', 30003)],
  crankshafts: [crankshaft('crankshaft A', 16248)],
  rods: [rod('rod A', 17505)],
  pistonSets: [pistons('piston A', 29970)],
  ringSets: [rings(1)],
  shells: [shells('shells', 0, 619, 1)],
};

/** Another engine in its place. */
export const withEngine = (changes: Partial<Shed['engine']>) => ({
  engine: { ...single.engine, ...changes },
});

/** Two of everything, as good as new. */
// Oil: 17505 - 2 * 618.5 - 16248 = 20, 10 inside either way. Piston: 33, 12 below 45.
export const two: Partial<Shed> = {
  blocks: [block('block A', 30003), block('block B', 30003)],
  crankshafts: [crankshaft('crankshaft A', 16248), crankshaft('crankshaft B', 16248)],
  rods: [rod('rod A', 17505), rod('rod B', 17505)],
  pistonSets: [pistons('piston A', 29970), pistons('piston B', 29970)],
  ringSets: [rings(2)],
  shells: [shells('shells', 0, 618.5, 2)],
};

/** Two blocks, of which the second can be built for 35 only. */
// Block B is 10 over, and only pistons and rings for 20 and 15 go with it.
export const oversize: Partial<Shed> = {
  ...two,
  blocks: [block('block A', 30003), block('block B', 30103)],
  pistonSets: [pistons('piston A', 29970)],
  ringSets: [rings(1)],
  toBuy: {
    pistonSets: [{ ...pistons('piston N', 30070), oversize: length(100), price: eur(20) }],
    ringSets: [{ name: 'rings N', oversize: length(100), price: eur(15) }],
  },
};
