import type { Dimension, UnitSystem } from '../quantities/index.js';

/** How often a unit holds a kilogram, a metre, a second, a kelvin and a radian. */
export type Exponents = readonly [
  mass: number,
  length: number,
  time: number,
  temperature: number,
  angle: number,
];

/** The name of a unit in mathjs, and how much it is in SI. */
type Base = readonly [name: string, size: number];

/**
 * Units that go together: a formula of numbers in them gives a number in them, and nothing has to be converted on the
 * way.
 */
export interface WorkingUnits {
  readonly length: Base;
  readonly time: Base;
  /** The unit of mass where that of force follows from it. */
  readonly mass: Base;
  /** The unit of force where that of mass follows from it. */
  readonly force?: string;
  readonly angle: Base;
  /** Units that have names of their own, by their exponents. */
  readonly named: Readonly<Record<string, string>>;
}

const RADIAN: Base = ['rad', 1];
const SECOND: Base = ['s', 1];

const MM_NEWTON: WorkingUnits = {
  length: ['mm', 1e-3],
  time: SECOND,
  mass: ['', 1000],
  force: 'N',
  angle: RADIAN,
  named: {},
};

const INCH_LBF: WorkingUnits = {
  length: ['in', 0.0254],
  time: SECOND,
  mass: ['', 4.4482216152605 / 0.0254],
  force: 'lbf',
  angle: RADIAN,
  named: {},
};

const DEGREES: WorkingUnits = { ...MM_NEWTON, angle: ['deg', Math.PI / 180] };

const CM: WorkingUnits = { ...MM_NEWTON, length: ['cm', 0.01], mass: ['', 100] };

const SUMP: WorkingUnits = {
  length: ['cm', 0.01],
  time: ['h', 3600],
  mass: ['g', 1e-3],
  angle: RADIAN,
  named: { '0,3,0,0,0': 'mL', '0,3,-1,0,0': 'mL/h' },
};

const VISCOSITY: WorkingUnits = {
  length: ['mm', 1e-3],
  time: SECOND,
  mass: ['mg', 1e-6],
  angle: RADIAN,
  named: { '1,-3,0,0,0': 'g/cm^3', '1,-3,0,-1,0': 'g/cm^3/K', '1,-1,-1,0,0': 'mPa s' },
};

const SI: WorkingUnits = {
  length: ['m', 1],
  time: SECOND,
  mass: ['kg', 1],
  angle: RADIAN,
  named: {
    '1,1,-2,0,0': 'N',
    '1,-1,-2,0,0': 'Pa',
    '1,2,-2,0,0': 'N m',
    '1,2,-3,0,0': 'W',
    '1,-1,-1,0,0': 'Pa s',
    '1,0,-2,0,0': 'N/m',
    '0,2,-2,-1,0': 'J/kg/K',
  },
};

const PLAIN = ['ratio', 'volumeFraction', 'massFraction'] as const;
const WARMTH = ['temperature', 'temperatureDifference', 'thermalExpansion'] as const;
const LIQUID = ['volume', 'time', 'flow', 'rate'] as const;
const THICKNESS = ['kinematicViscosity', 'dynamicViscosity', 'density', 'time'] as const;
const SHAPE = ['length', 'area', 'volume', 'angle'] as const;
const STRENGTH = ['force', 'pressure', 'gaugePressure', 'torque', 'stiffness'] as const;
const TURNING = ['rate', 'rotationalSpeed'] as const;
const MOVING = ['speed', 'acceleration', 'power', 'dynamicViscosity'] as const;

/** What a formula needs of its units. */
export interface Needs {
  /** The dimensions of all that goes in and comes out. */
  readonly dimensions: readonly Dimension[];
  /** Whether angles are added and shared out only, so that degrees do as well as radians. */
  readonly isOfWholeTurns: boolean;
  /** Whether it holds lengths that no engine has, such as a height above the sea. */
  readonly isFar: boolean;
}

/** The units that a formula is worked in. SI holds everything; the others are nearer to what a shop reads. */
export function workingUnits(
  { dimensions, isOfWholeTurns, isFar }: Needs,
  system: UnitSystem,
): WorkingUnits {
  const only = (...kinds: readonly (readonly Dimension[])[]) =>
    dimensions.every((dimension) => [PLAIN, ...kinds].some((kind) => kind.includes(dimension)));
  if (isFar) return SI;
  if (isOfWholeTurns && only(['angle'])) return DEGREES;
  // What is poured is told in cubic inches where the rest of the engine is.
  if (only(LIQUID) && !(system === 'inch' && only(['volume']))) return SUMP;
  if (only(THICKNESS, WARMTH)) return VISCOSITY;
  if (system === 'inch') {
    return only(SHAPE, WARMTH, STRENGTH, TURNING, MOVING) ? INCH_LBF : SI;
  }
  if (only(['length', 'area', 'angle'], WARMTH, STRENGTH, TURNING)) return MM_NEWTON;
  return only(SHAPE) ? CM : SI;
}

/** How much one of the working unit of such exponents is in SI. */
export function sizeOf({ mass, length, time, angle }: WorkingUnits, of: Exponents): number {
  const [m, l, t, , a] = of;
  return mass[1] ** m * length[1] ** l * time[1] ** t * angle[1] ** a;
}

/** The name of that unit, as mathjs reads it: `lbf in`, `N/mm^2`. Of a plain number, nothing. */
export function workingUnitName(
  { mass, length, time, angle, force, named }: WorkingUnits,
  of: Exponents,
): string {
  const [m, l, t, k, a] = of;
  const own = named[of.join()];
  if (own !== undefined) return own;
  // A force is a mass that is accelerated: a length more and two seconds less.
  const powers: readonly (readonly [string, number])[] =
    force === undefined
      ? [
          [mass[0], m],
          [length[0], l],
          [time[0], t],
        ]
      : [
          [force, m],
          [length[0], l - m],
          [time[0], t + 2 * m],
        ];
  return joined([...powers, ['K', k], [angle[0], a]]);
}

function joined(powers: readonly (readonly [string, number])[]): string {
  const above = powers.filter(([, power]) => power > 0);
  const below = powers.filter(([, power]) => power < 0);
  const raised = (name: string, power: number) => (power === 1 ? name : `${name}^${power}`);
  if (above.length === 0) return below.map(([name, power]) => raised(name, power)).join(' ');
  return (
    above.map(([name, power]) => raised(name, power)).join(' ') +
    below.map(([name, power]) => `/${raised(name, -power)}`).join('')
  );
}
