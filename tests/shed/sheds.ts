import { FileError, type FileProblem, readShed, type Shed } from 'crankwright/shed';
import { changed, type Json } from '../sheet/sheets.js';

/** A twin of which only the sizes of rod journals and bores are known, and whose mains have no shells. */
export const BARE_TWIN = {
  name: 'pump set',
  cylinders: 2,
  mains: 0,
  rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
  bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
};

/** Readings at two stations and two angles: the second angle is smaller by the out-of-round. */
function readings(diameter: number, outOfRound: number, stations = [0.25, 1.25]): Json {
  return stations.flatMap((station) =>
    [diameter, diameter - outOfRound].map((size, i) => ({
      station: `${station} in`,
      angle: `${90 * i} deg`,
      diameter: `${size.toFixed(4)} in`,
    })),
  );
}

const journal = (name: string, diameter: number, outOfRound = 0.0001): Json => ({
  name,
  readings: readings(diameter, outOfRound),
});

const bore = (name: string, diameter: number, outOfRound = 0.0002): Json => ({
  name,
  readings: readings(diameter, outOfRound, [0.5, 2, 3.5]),
  ringTravel: { min: '0.4 in', max: '3.6 in' },
  wall: '0.200 in',
});

const housing = (name: string, housingBore: Json): Json => ({ name, housingBore });

/**
 * The shed of a pump set, a vertical twin, as JSON holds it, made afresh each
 * time: something in every section, and two engines' worth of most. Donor A is
 * good as it is; donor B is worn in its bores and on its rod journals.
 */
export function plainShed(): { [key: string]: Json } {
  return {
    version: 1,
    shed: 'the shed',
    units: 'inch',
    engine: {
      name: 'pump set, vertical twin',
      cylinders: 2,
      mains: 2,
      rodJournals: {
        standard: { min: '1.6245 in', max: '1.6250 in' },
        steps: ['standard', '10 under', '20 under'],
        minimum: '1.5900 in',
        oilClearance: { min: '0.0012 in', max: '0.0028 in', source: 'pump set manual, sheet 3' },
      },
      mainJournals: { standard: { min: '1.9995 in', max: '2.0000 in' } },
      rodHousing: { min: '1.7506 in', max: '1.7510 in', source: 'pump set manual, sheet 3' },
      mainHousing: { min: '2.1260 in', max: '2.1265 in' },
      bores: {
        standard: { min: '3.0000 in', max: '3.0005 in' },
        steps: ['standard', '10 over', '20 over', '30 over'],
        leastWall: '0.150 in',
        pistonClearance: { min: '0.0025 in', max: '0.0055 in' },
        ringGap: { min: '0.009 in', max: '0.020 in' },
      },
      endPlay: { min: '0.005 in', max: '0.012 in' },
      headFlatness: { max: '0.004 in' },
      guideClearance: { min: '0.001 in', max: '0.003 in' },
      alsoNeeds: ['head', 'valve set'],
    },
    blocks: [
      {
        name: 'block A',
        from: 'donor A',
        interchange: 'pump sets before serial 4000',
        bores: [bore('cylinder 1', 3.0005), bore('cylinder 2', 3.0004)],
        mainHousings: [housing('pulley main', '2.1262 in'), housing('flywheel main', '2.1263 in')],
        thrustWidth: '2.3000 in',
      },
      {
        name: 'block B',
        from: 'donor B',
        faults: ['scored'],
        bores: [bore('cylinder 1', 3.0062, 0.0015), bore('cylinder 2', 3.0081, 0.0019)],
        mainHousings: [
          housing('pulley main', { min: '2.1261 in', max: '2.1263 in' }),
          housing('flywheel main', '2.1262 in'),
        ],
      },
    ],
    crankshafts: [
      {
        name: 'crankshaft A',
        from: 'donor A',
        rodJournals: [journal('rod 1', 1.6249), journal('rod 2', 1.6248)],
        mainJournals: [journal('pulley main', 1.9999), journal('flywheel main', 1.9998)],
        thrustWidth: '2.5000 in',
      },
      {
        name: 'crankshaft B',
        from: 'donor B',
        rodJournals: [
          { name: 'rod 1', readings: readings(1.6221, 0.0012), faults: ['scored'] },
          { name: 'rod 2', readings: readings(1.6238, 0.0009), runout: '0.0005 in' },
        ],
        mainJournals: [journal('pulley main', 1.9998), journal('flywheel main', 1.9997)],
      },
    ],
    rods: [
      {
        name: 'rods A',
        from: 'donor A',
        rods: [housing('rod A1', '1.7507 in'), housing('rod A2', '1.7508 in')],
      },
      { name: 'rod B1', from: 'donor B', rods: [housing('rod B1', '1.7508 in')] },
      {
        name: 'rod B2',
        from: 'donor B',
        faults: ['bent'],
        tested: { for: 'cracks', how: 'magnetic particles', found: 'none' },
        rods: [housing('rod B2', { min: '1.7507 in', max: '1.7509 in' })],
      },
    ],
    pistonSets: [
      {
        name: 'pistons A',
        from: 'donor A',
        oversize: 'standard',
        pistons: [
          { name: 'piston 1', diameter: '2.9968 in' },
          { name: 'piston 2', diameter: '2.9967 in' },
        ],
      },
      {
        name: 'pistons 20 over',
        oversize: '20 over',
        pistons: [
          { name: 'piston 1', diameter: '3.0168 in' },
          { name: 'piston 2', diameter: { min: '3.0167 in', max: '3.0168 in' } },
        ],
      },
    ],
    ringSets: [
      {
        name: 'rings standard',
        oversize: 'standard',
        count: 2,
        rings: [{ name: 'top ring', gap: '0.010 in', measuredIn: '3.0003 in' }],
      },
      { name: 'rings 20 over', oversize: '20 over' },
    ],
    shells: [
      {
        name: 'rod shells standard',
        fits: 'rods',
        undersize: 'standard',
        wall: '0.0620 in',
        pairs: 2,
      },
      {
        name: 'rod shells 10 under',
        fits: 'rods',
        undersize: '10 under',
        wall: { min: '0.0669 in', max: '0.0670 in' },
        pairs: 2,
      },
      {
        name: 'main shells standard',
        fits: 'mains',
        undersize: 'standard',
        wall: '0.0622 in',
        pairs: 4,
      },
    ],
    thrustWashers: [{ name: 'washers 0.096', thickness: '0.0960 in', count: 4 }],
    heads: [
      { name: 'head A', from: 'donor A', flatness: '0.002 in', guideBore: '0.3145 in' },
      { name: 'head B', from: 'donor B', flatness: '0.006 in' },
    ],
    valveSets: [
      { name: 'valves A', from: 'donor A', stem: { min: '0.3125 in', max: '0.3126 in' } },
      { name: 'valves new', stem: '0.3126 in' },
    ],
    machining: [
      { work: 'grind rod journals', shop: 'the grinder', price: '18.00 EUR' },
      { work: 'bore', shop: 'the borer', price: 'EUR 35' },
      { work: 'straighten', shop: 'the grinder', price: '25 EUR' },
      { work: 'skim head', shop: 'the borer', price: '30 EUR' },
    ],
    toBuy: {
      ringSets: [{ name: 'new rings standard', oversize: 'standard', price: '42.50 EUR' }],
      shells: [
        {
          name: 'new rod shells 20 under',
          fits: 'rods',
          undersize: '20 under',
          wall: '0.0720 in',
          pairs: 6,
          price: '14.50 EUR',
        },
      ],
    },
  };
}

/** A fresh copy of the plain shed with values at paths replaced, or removed where undefined. */
export const spoiltShed = (changes: Readonly<Record<string, Json | undefined>>): Json =>
  changed(plainShed(), changes);

/** What `readShed` finds wrong; nothing if it reads. */
export function shedProblems(input: unknown, readings?: string): readonly FileProblem[] {
  try {
    readShed(input, readings);
  } catch (error) {
    if (error instanceof FileError) return error.problems;
    throw error;
  }
  return [];
}

/** What is in a shed, however its file was written. */
export const dataOf = ({ asWritten, ...data }: Shed): Shed => data;
