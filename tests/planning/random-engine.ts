import type { EngineKind } from '../../src/reading/engine-kind.js';
import type { Dice } from '../support/dice.js';
import { needing } from '../support/needing.js';
import { type Ruler, STEP } from './random-measured.js';

/** What a kind of engine measures, in grains. */
export const SIZES = {
  rods: { journal: [16245, 16250], housing: [17500, 17510], wall: 619 },
  mains: { journal: [19995, 20000], housing: [21260, 21270], wall: 624 },
  bore: [30000, 30005],
  /** Thinnest wall of a cylinder that may be left. */
  leastWall: 1500,
  piston: 29970,
  ringGap: [90, 160],
  thrust: { block: 23000, crankshaft: 25000, washer: 960 },
  flatness: 40,
  guide: 3145,
  stem: 3126,
  margin: 156,
} as const;

/** One kind of engine, with one cylinder or two; what may be left out is now and then. */
export function randomEngine(dice: Dice, { length, span }: Ruler): EngineKind {
  const cylinders = dice.percent(30) ? 1 : 2;
  const mains = dice.oneOf([2, 2, 2, 1, 0]);
  const now = <T>(chance: number, value: T) => (dice.percent(chance) ? value : undefined);
  const pick = ([least, most]: readonly [number, number]) => span(least, most);
  const steps = now(40, [0, STEP, 2 * STEP].map(length));
  const oil = () =>
    pick(
      dice.oneOf([
        [10, 30],
        [12, 26],
        [14, 40],
      ] as const),
    );
  const journals = (kind: 'rods' | 'mains') =>
    defined({
      standard: pick(SIZES[kind].journal),
      steps,
      minimum: now(20, length(SIZES[kind].journal[0] - dice.from(1, 3) * STEP)),
      sizeAllowance: now(20, length(dice.from(3, 12))),
      wear: now(20, 'all round' as const),
      shape: now(20, { max: length(dice.from(2, 8)), source: 'pump set manual' }),
      oilClearance: now(75, dice.percent(10) ? { max: length(28) } : oil()),
    });
  return defined({
    name: 'pump set',
    cylinders,
    rodsPerJournal: now(cylinders === 2 ? 20 : 0, 2 as const),
    mains,
    rodJournals: journals('rods'),
    mainJournals: mains > 0 ? journals('mains') : undefined,
    rodHousing: now(80, pick(SIZES.rods.housing)),
    mainHousing: now(80, dice.percent(90) ? pick(SIZES.mains.housing) : { max: length(21270) }),
    bores: defined({
      standard: pick(SIZES.bore),
      steps: now(40, [0, STEP, 2 * STEP, 3 * STEP].map(length)),
      honingAllowance: now(20, length(dice.from(10, 40))),
      leastWall: length(SIZES.leastWall),
      sizeAllowance: now(20, length(dice.from(5, 20))),
      wear: now(20, 'all round' as const),
      shape: now(20, { max: length(dice.from(4, 15)) }),
      pistonClearance: now(
        80,
        pick(
          dice.oneOf([
            [20, 45],
            [25, 40],
          ] as const),
        ),
      ),
      ringGap: now(60, pick(SIZES.ringGap)),
    }),
    endPlay: now(40, pick([50, 120])),
    headFlatness: now(60, { max: length(SIZES.flatness) }),
    guideClearance: now(60, pick([16, 22])),
    valveMargin: now(50, { min: length(SIZES.margin) }),
    alsoNeeds: now(
      50,
      needing(...dice.oneOf([[], ['head'], ['valve set'], ['head', 'valve set']] as const)),
    ),
  });
}

/** What an object holds once the fields that are undefined are left out. */
export type Defined<T> = {
  [K in keyof T as undefined extends T[K] ? never : K]: T[K];
} & { [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined> };

/** The same object without the fields that are undefined. */
export function defined<T extends object>(fields: T): Defined<T> {
  return Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as Defined<T>;
}
