import type { Basis } from '../judging/index.js';
import { guardFields, guardWhole, showIn } from '../judging/internal.js';
import {
  type Angle,
  type GaugePressure,
  kPa,
  type Pressure,
  type Ratio,
  RebuildInputError,
} from '../quantities/index.js';
import {
  airPressure,
  exhaustOpening,
  gasPressure,
  geometricCompression,
  ignitionAdvance,
  overlapOfValves,
  peakPastTop,
  polytropicExponent,
} from './domains.js';
import { compressed, type GasLaw, pressureAt } from './gas-law.js';
import { CYCLE } from './guards.js';
import { type CrankTrain, guardCrankTrain, positionAt } from './piston-motion.js';

/** What a simple gas trace is drawn from. Whatever is left out is a rule of thumb, and the trace says which. */
export interface GasCycle extends CrankTrain {
  /** Compression ratio: volume at the bottom over volume at the top [-]. */
  readonly compressionRatio: Ratio;
  /** Absolute pressure in the cylinder over the intake stroke; 95 kPa if left out [Pa]. */
  readonly intakePressure?: Pressure;
  /** Absolute pressure in the cylinder over the exhaust stroke; 110 kPa if left out [Pa]. */
  readonly exhaustPressure?: Pressure;
  /** Pressure of the air around, which stands in the crankcase too; 101.325 kPa if left out [Pa]. */
  readonly airPressure?: Pressure;
  /** Polytropic exponent of compression; 1.32 if left out [-]. */
  readonly compressionExponent?: Ratio;
  /** Polytropic exponent of expansion; 1.28 if left out [-]. */
  readonly expansionExponent?: Ratio;
  /** How far before top dead centre the pressure begins to rise above compression; 20 degrees if left out [rad]. */
  readonly ignition?: Angle;
  /** How far past top dead centre the pressure is greatest; 15 degrees if left out [rad]. */
  readonly peakAngle?: Angle;
  /** Greatest absolute pressure; three times what compression alone gives, a full load, if left out [Pa]. */
  readonly peakPressure?: Pressure;
  /** How far past top dead centre the exhaust valve opens; 140 degrees if left out [rad]. */
  readonly exhaustOpens?: Angle;
  /** How far the crank turns while both valves stand open, half before and half after top; 20 degrees if left out [rad]. */
  readonly valveOverlap?: Angle;
  /** How many places the cycle is drawn at, 72 to 7200; 720 if left out. */
  readonly places?: number;
}

/** What may be left out of a gas trace. */
export type GasKnob = Exclude<keyof GasCycle, keyof CrankTrain | 'compressionRatio' | 'places'>;

/** The gas pressure at one angle of the crank. */
export interface GasReading {
  /** Crank past the firing top dead centre, from 0 to less than 720 degrees [rad]. */
  readonly crankAngle: Angle;
  /** Pressure above that of the air around [Pa]. */
  readonly gauge: GaugePressure;
}

/** The same, with the absolute pressure. */
export interface GasPoint extends GasReading {
  /** Absolute pressure [Pa]. */
  readonly pressure: Pressure;
}

/** Gas pressure over the two turns of a four-stroke cycle. */
export interface GasTrace {
  /** Pressure at even angles, from the firing top dead centre on. */
  readonly readings: readonly GasPoint[];
  /** Absolute pressure that compression alone would give at top dead centre [Pa]. */
  readonly compressionPressure: Pressure;
  /** Greatest absolute pressure [Pa]. */
  readonly peakPressure: Pressure;
  /** Work of the cycle over the volume swept: the indicated mean effective pressure [Pa]. */
  readonly meanEffectivePressure: Pressure;
  /** What was left out and taken from common practice. */
  readonly assumed: readonly GasKnob[];
  /** The rules of thumb that stand in for it. */
  readonly basis: Basis;
}

const USUAL = /* @__PURE__ */ (() => ({
  intakePressure: 95_000,
  exhaustPressure: 110_000,
  airPressure: 101_325,
  compressionExponent: 1.32,
  expansionExponent: 1.28,
  ignition: Math.PI / 9,
  peakAngle: Math.PI / 12,
  exhaustOpens: (7 * Math.PI) / 9,
  valveOverlap: Math.PI / 9,
}))();
const PEAK_OVER_COMPRESSION = 3;
/** The fields of a cycle; from the fifth on they may be left out for a rule of thumb. */
const FIELDS = [
  'stroke',
  'rodLength',
  'compressionRatio',
  'places',
  'intakePressure',
  'exhaustPressure',
  'airPressure',
  'compressionExponent',
  'expansionExponent',
  'ignition',
  'peakAngle',
  'exhaustOpens',
  'valveOverlap',
  'peakPressure',
] as const;
const RULE: Basis = {
  kind: 'common practice',
  rule: 'a spark-ignition engine at full load: 95 kPa over intake, 110 kPa over exhaust, exponents 1.32 and 1.28, from 20 degrees before top to a peak 15 after it at three times compression, exhaust valve open from 140',
};

/**
 * A simple gas trace of a four-stroke engine, to load a bearing with. It is no simulation: each
 * stretch of it is one stated law, and every number of it may be the caller's own. With an
 * indicator diagram of the engine, use that instead.
 *
 *     intake and exhaust: constant pressure, one easing into the other while both valves stand open
 *     compression: intakePressure * (volume at the bottom / volume) ^ compressionExponent
 *     burning: from compression to peakPressure along half a cosine between ignition and peakAngle
 *     expansion: peakPressure * (volume at peakAngle / volume) ^ expansionExponent
 *     blow-down: from expansion to exhaustPressure along half a cosine between exhaustOpens and the bottom
 *
 *     compressionPressure = intakePressure * compressionRatio^compressionExponent
 *     peakPressure = 3 * intakePressure * compressionRatio^compressionExponent   by default
 *
 * @param cycle - stroke, rod and compression ratio, and whatever is known of pressures and angles
 * @returns absolute and gauge pressure over 720 degrees, and what was taken from common practice
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the peak that follows is out of
 * range, or compression alone exceeds the peak
 * @see Source: common practice; polytropic laws as in Khurmi and Gupta, Theory of Machines, example 15.13
 * @example
 * ```ts
 * const trace = gasTrace({ stroke: inch(3.25), rodLength: inch(6), compressionRatio: ratio(6) });
 * format(trace.compressionPressure, bar, 1); // "10.1 bar"
 * format(trace.peakPressure, bar, 1); // "30.3 bar"
 * trace.assumed.includes('peakPressure'); // true
 * ```
 */
export function gasTrace(cycle: GasCycle): GasTrace {
  guardFields('cycle', cycle, FIELDS);
  const { airPressure: around = USUAL.airPressure as Pressure, places: number = 720 } = cycle;
  const law = guardLaw(cycle);
  const air = airPressure('airPressure', around);
  const hint = 'With 720 there is one to each degree.';
  const places = guardWhole('places', number, [72, 7200], hint);
  const readings = Array.from({ length: places }, (_, i): GasPoint => {
    const crankAngle = ((CYCLE * i) / places) as Angle;
    const pressure = pressureAt(law, crankAngle) as Pressure;
    return { crankAngle, pressure, gauge: (pressure - air) as number as GaugePressure };
  });
  return {
    readings,
    compressionPressure: compressed(law, 0) as Pressure,
    peakPressure: law.peakPressure as Pressure,
    meanEffectivePressure: meanEffective(law, readings),
    assumed: (FIELDS.slice(4) as GasKnob[]).filter((knob) => cycle[knob] === undefined),
    basis: RULE,
  };
}

/** Work of the cycle over the volume swept: pressure times travel, summed up by straight pieces. */
function meanEffective(law: GasLaw, readings: readonly GasPoint[]): Pressure {
  let sum = 0;
  let [before] = readings.slice(-1);
  for (const reading of readings) {
    if (before === undefined) break;
    const travel = positionAt(law, reading.crankAngle) - positionAt(law, before.crankAngle);
    sum += ((reading.gauge + before.gauge) / 2) * travel;
    before = reading;
  }
  return (sum / law.stroke) as Pressure;
}

function guardLaw(cycle: GasCycle): GasLaw {
  guardCrankTrain(cycle);
  const own = { ...USUAL, ...withoutGaps(cycle) } as Omit<GasCycle, 'places'> & GasLaw;
  const open = {
    stroke: cycle.stroke,
    rodLength: cycle.rodLength,
    compressionRatio: geometricCompression('compressionRatio', cycle.compressionRatio),
    intakePressure: gasPressure('intakePressure', own.intakePressure as Pressure),
    exhaustPressure: gasPressure('exhaustPressure', own.exhaustPressure as Pressure),
    compressionExponent: polytropicExponent(
      'compressionExponent',
      own.compressionExponent as Ratio,
    ),
    expansionExponent: polytropicExponent('expansionExponent', own.expansionExponent as Ratio),
    ignition: ignitionAdvance('ignition', own.ignition as Angle),
    peakAngle: peakPastTop('peakAngle', own.peakAngle as Angle),
    exhaustOpens: exhaustOpening('exhaustOpens', own.exhaustOpens as Angle),
    valveOverlap: overlapOfValves('valveOverlap', own.valveOverlap as Angle),
  };
  const alone = compressed(open, 0);
  const { peakPressure: peak = PEAK_OVER_COMPRESSION * alone } = own;
  // A peak that nobody gave is not refused as if it had been.
  gasPressure('peakPressure' in own ? 'peakPressure' : 'result', peak as Pressure);
  if (peak >= alone) return { ...open, peakPressure: peak };
  throw new RebuildInputError({
    parameter: 'peakPressure',
    value: peak,
    shown: showIn(peak as Pressure, kPa),
    expected: `at least what compression alone gives, ${showIn(alone as Pressure, kPa)}`,
    hint: 'The peak is an absolute pressure. For an engine that is only turned over, give compression itself.',
  });
}

/** A field that is given as undefined counts as left out. */
function withoutGaps(cycle: GasCycle): Partial<GasCycle> {
  return Object.fromEntries(Object.entries(cycle).filter(([, value]) => value !== undefined));
}
