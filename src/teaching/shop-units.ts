import {
  cubicCm,
  cubicInch,
  type Dimension,
  foot,
  inch,
  kPa,
  kPaGauge,
  lbfFoot,
  lbfInch,
  litre,
  litrePerMinute,
  MPa,
  metre,
  microinch,
  micrometre,
  minute,
  mL,
  mLPerHour,
  mLPerMinute,
  mm,
  newtonMetre,
  newtonPerMetre,
  perHour,
  perMinute,
  perSecond,
  ratio,
  second,
  thou,
  tradeUnit,
  type Unit,
  type UnitSystem,
  watt,
} from '../quantities/index.js';

/** The unit that a shop reads a thing of such a size in: a journal in inches, its clearance in thou. */
export function shopUnit(
  dimension: Dimension,
  size: number,
  system: UnitSystem,
  ofLiquid: boolean,
): Unit<Dimension> {
  if (dimension === 'volume' && !ofLiquid) return system === 'inch' ? cubicInch : cubicCm;
  // Nothing is small or large.
  const ladder = size === 0 ? undefined : LADDERS[dimension];
  const rungs = ladder === undefined ? [] : 'inch' in ladder ? ladder[system] : ladder;
  const found = rungs.find(([upTo]) => Math.abs(size) <= upTo)?.[1];
  return found ?? tradeUnit(dimension, system);
}

/** Units of one dimension, each with the largest size that is read in it; beyond the last stands the trade's unit. */
type Ladder = readonly (readonly [upTo: number, unit: Unit<Dimension>])[];

const LADDERS: Partial<Record<Dimension, Ladder | Readonly<Record<UnitSystem, Ladder>>>> = {
  length: {
    inch: [
      [2e-6, microinch],
      [1.3e-3, thou],
      [2, inch],
      [Infinity, foot],
    ],
    metric: [
      [2e-5, micrometre],
      [2, mm],
      [Infinity, metre],
    ],
  },
  volume: [
    [3e-4, mL],
    [Infinity, litre],
  ],
  time: [
    [120, second],
    [7200, minute],
  ],
  flow: [
    [1.5e-7, mLPerHour],
    [2e-5, mLPerMinute],
    [Infinity, litrePerMinute],
  ],
  rate: [
    [0.01, perHour],
    [5, perMinute],
    [Infinity, perSecond],
  ],
  pressure: {
    inch: [],
    metric: [
      [2e6, kPa],
      [Infinity, MPa],
    ],
  },
  gaugePressure: { inch: [], metric: [[Infinity, kPaGauge]] },
  torque: {
    inch: [
      [2, lbfInch],
      [Infinity, lbfFoot],
    ],
    metric: [[Infinity, newtonMetre]],
  },
  stiffness: [[1, newtonPerMetre]],
  power: { inch: [], metric: [[1000, watt]] },
  ratio: [[Infinity, ratio]],
};
