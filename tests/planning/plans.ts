import {
  type Basis,
  inch,
  judge,
  type Length,
  minus,
  recommendedRingGap,
  type Span,
} from 'crankwright';
import type { Build, BuildBearing, BuildCylinder, Plan } from 'crankwright/planning';
import type { EngineKind } from 'crankwright/shed';

/** A span of inches. */
export const inches = (min: number, max = min): Span<Length> => ({
  min: inch(min),
  max: inch(max),
});

const manual: Basis = { kind: 'specified', by: 'pump set manual, sheet 3' };
const thumb: Basis = {
  kind: 'common practice',
  rule: '0.00075 to 0.0015 in of oil clearance for each inch of journal',
};
const eur = (amount: number) => ({ amount, currency: 'EUR' });

const found = (feature: string, value: Length, min: number, max: number, basis: Basis = manual) =>
  judge({ feature, dimension: 'length', value, limits: inches(min, max), basis });

/** Rod journal ground 20 under in its rod: 1.7507 - 2 * 0.0719 - 1.6050 … 1.7508 - 2 * 0.0719 - 1.6045. */
export const groundRod = (n: number): BuildBearing => ({
  kind: 'rods',
  journal: `rod ${n}`,
  journalSize: inches(1.6045, 1.605),
  undersize: inch(0.02),
  housing: { part: 'rods A', place: `rod A${n}` },
  housingBore: inches(1.7507, 1.7508),
  shells: 'rod shells 20 under',
  wall: inches(0.0719),
  clearance: inches(0.0019, 0.0025),
  finding: found('oil clearance', inch(0.0025), 0.0012, 0.0028),
});

/** Standard main: 2.1262 - 2 * 0.0622 - 1.9998 … 2.1262 - 2 * 0.0622 - 1.9997. */
const main = (journal: string): BuildBearing => ({
  kind: 'mains',
  journal,
  journalSize: inches(1.9997, 1.9998),
  undersize: inch(0),
  housing: { part: 'block A', place: journal },
  housingBore: inches(2.1262),
  shells: 'main shells standard',
  wall: inches(0.0622),
  clearance: inches(0.002, 0.0021),
  finding: found('oil clearance', inch(0.0021), 0.0015, 0.003, thumb),
});

/** Bored 20 over: 3.0200 - 3.0167 … 3.0205 - 3.0167. */
const cylinder = (n: number): BuildCylinder => ({
  bore: `cylinder ${n}`,
  boreSize: inches(3.02, 3.0205),
  oversize: inch(0.02),
  piston: `piston ${n}`,
  pistonSize: inches(3.0167),
  clearance: { min: minus(inch(3.02), inch(3.0167)), max: minus(inch(3.0205), inch(3.0167)) },
  finding: found('piston clearance', minus(inch(3.0205), inch(3.0167)), 0.0025, 0.0055),
  ringGap: recommendedRingGap(inch(3.02)),
});

/** A twin that is ground, bored and shimmed. */
export const machined: Build = {
  name: 'block A',
  interchange: 'before serial 4000',
  parts: [
    { section: 'blocks', name: 'block A', from: 'donor A', count: 1, bought: false },
    { section: 'crankshafts', name: 'crankshaft B', from: 'donor B', count: 1, bought: false },
    { section: 'rods', name: 'rods A', count: 1, bought: false },
    { section: 'pistonSets', name: 'pistons 20 over', count: 1, bought: true },
    { section: 'shells', name: 'rod shells 20 under', count: 2, bought: true },
    { section: 'shells', name: 'main shells standard', count: 2, bought: false },
    { section: 'thrustWashers', name: 'washers 0.096', count: 2, bought: false },
    { section: 'heads', name: 'head A', count: 1, bought: false },
  ],
  bearings: [main('pulley main'), main('flywheel main'), groundRod(1), groundRod(2)],
  cylinders: [cylinder(1), cylinder(2)],
  endPlay: {
    washers: ['washers 0.096', 'washers 0.096'],
    play: inch(0.008),
    finding: found('end play', inch(0.008), 0.005, 0.012),
  },
  guides: { clearance: inches(0.0019, 0.002) },
  jobs: [
    {
      part: 'block A',
      work: 'bore',
      places: ['cylinder 1', 'cylinder 2'],
      step: inch(0.02),
      to: inches(3.02, 3.0205),
      shop: 'the borer',
      cost: eur(70),
    },
    {
      part: 'crankshaft B',
      work: 'straighten',
      places: [],
      shop: 'the grinder',
      cost: eur(25),
    },
    {
      part: 'crankshaft B',
      work: 'grind rod journals',
      places: ['rod 1', 'rod 2'],
      step: inch(0.02),
      to: inches(1.6045, 1.605),
      shop: 'the grinder',
      cost: eur(36),
    },
  ],
  tests: [
    {
      section: 'crankshafts',
      part: 'crankshaft B',
      test: 'crack test',
      when: 'first',
      because: [{ what: 'thrown rod', part: 'rods B', from: 'donor B' }],
    },
    {
      section: 'crankshafts',
      part: 'crankshaft B',
      test: 'crack test',
      when: 'again',
      because: [],
    },
  ],
  cost: eur(205.5),
};

/** A twin that goes together as it is, of which little was measured. */
export const plain: Build = {
  name: 'block C',
  parts: [
    { section: 'blocks', name: 'block C', count: 1, bought: false },
    { section: 'crankshafts', name: 'crankshaft C', count: 1, bought: false },
    { section: 'rods', name: 'rods C', count: 1, bought: false },
    { section: 'pistonSets', name: 'pistons C', count: 1, bought: false },
  ],
  bearings: [
    {
      ...groundRod(1),
      journalSize: inches(1.6248),
      undersize: inch(0),
      housing: { part: 'rods C', place: 'rod C1' },
      shells: 'rod shells standard',
      wall: inches(0.062),
      clearance: inches(0.0019, 0.002),
      finding: found('oil clearance', inch(0.0019), 0.0012, 0.0028),
    },
  ],
  cylinders: [
    {
      bore: 'the bore',
      boreSize: inches(3.0003, 3.0004),
      oversize: inch(0),
      piston: 'the piston',
      pistonSize: inches(2.9968),
      clearance: inches(0.0035, 0.0036),
      ringGap: recommendedRingGap(inch(3.0003)),
    },
  ],
  jobs: [],
  tests: [],
  cost: eur(0),
};

/** The engine of all of them, of which only the sizes are known. */
export const pumpSet: EngineKind = {
  name: 'pump set, vertical twin',
  cylinders: 2,
  mains: 2,
  rodJournals: { standard: inches(1.6245, 1.625) },
  mainJournals: { standard: inches(1.9995, 2) },
  bores: { standard: inches(3, 3.0005) },
};

/** A proven plan of both. */
export const twoEngines: Plan = {
  shed: 'the shed',
  engine: pumpSet,
  units: 'inch',
  builds: [machined, plain],
  cost: eur(205.5),
  smallestMargin: inch(0.0003),
  near: [],
  measureFirst: [],
  measureAgain: [],
  readAgain: [],
  howRead: { within: [], undescribed: [], notAt20C: [], ovalHidden: [] },
  notDescribed: ['boreGauge', 'wallGauge', 'micrometer', 'depthGauge'],
  compared: ['engines', 'cost', 'tightest margin'],
  proof: { outcome: 'optimal' },
  orders: [
    { shop: 'the borer', jobs: machined.jobs.slice(0, 1), cost: eur(70) },
    { shop: 'the grinder', jobs: machined.jobs.slice(1), cost: eur(61) },
  ],
  shopping: [
    { section: 'pistonSets', name: 'pistons 20 over', count: 1, cost: eur(45.5) },
    { section: 'shells', name: 'rod shells 20 under', count: 2, cost: eur(29) },
  ],
  toMake: [],
  complete: {
    needs: [
      { part: 'head', count: 1 },
      { part: 'valve set', count: 1 },
    ],
    notNeeded: [],
  },
  leftOver: [
    { section: 'blocks', name: 'block D', count: 1, why: 'scrap' },
    { section: 'shells', name: 'rod shells standard', count: 2, why: 'spare' },
    { section: 'heads', name: 'head B', count: 1, why: 'reserved' },
  ],
  nextEngine: {
    lacks: [
      { section: 'pistonSets', step: inch(0.02), count: 1 },
      { section: 'shells', fits: 'rods', step: inch(0.03), count: 1 },
    ],
    alternatives: [],
  },
  cannotBuild: [],
};

/** A plan of nothing. */
export const noEngine: Plan = {
  shed: 'the shed',
  engine: pumpSet,
  units: 'inch',
  builds: [],
  cost: { amount: 0 },
  near: [],
  measureFirst: [],
  measureAgain: [],
  readAgain: [],
  howRead: { within: [], undescribed: [], notAt20C: [], ovalHidden: [] },
  notDescribed: [],
  compared: ['engines'],
  proof: { outcome: 'optimal' },
  orders: [],
  shopping: [],
  toMake: [],
  complete: {
    needs: [
      { part: 'head', count: 1 },
      { part: 'valve set', count: 1 },
    ],
    notNeeded: [],
  },
  leftOver: [],
  nextEngine: {
    lacks: [
      { section: 'rods', count: 2 },
      { section: 'heads', count: 1 },
    ],
    alternatives: [],
  },
  cannotBuild: [
    { name: 'block D', because: { kind: 'triage', disposition: 'scrap', faults: ['cracked'] } },
  ],
};

/** The fields that hold what a person has named. */
const NAMED = /^(name|from|part|place|journal|shells|bore|piston|shop|shed|engine|interchange|by)$/;

/** A plan in which every name begins with this one. */
export function renamed(plan: Plan, name: string): Plan {
  const anew = (old: string) => `${name} ${old}`;
  return JSON.parse(JSON.stringify(plan), (key, value: unknown) => {
    if (/^(places|washers|beside)$/.test(key)) return (value as string[]).map(anew);
    return NAMED.test(key) && typeof value === 'string' ? anew(value) : value;
  });
}
