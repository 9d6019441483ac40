import { guardWord } from '../judging/internal.js';
import type { KinematicViscosity, MassFraction, VolumeFraction } from '../quantities/index.js';
import { doubleLog, viscosityOf } from './viscosity.js';

/**
 * The blending laws, and the kind of fraction each was made for. They disagree on fuel in oil, so
 * the law is always named: Refutas from ASTM D7152 by several per cent of the viscosity, the
 * log-mean, which calls the blend thicker than both, by tens of per cent.
 *
 * ASTM D7152 limits itself. It may not be applicable to materials such as viscosity index improvers and
 * additive packages (section 1.3), and an engine oil holds both. For fuel blends mass fractions
 * gave more accurate results than volume fractions (section 5.4).
 */
export interface BlendingFractions {
  /** The ASTM blending method of D7152: log log Z, by volume [-]. */
  readonly 'ASTM D7152': VolumeFraction;
  /** Blending number 14.534 ln ln(ν + 0.8) + 10.975, by mass [-]. */
  readonly Refutas: MassFraction;
  /** The logarithm of ν, by volume; the oldest rule, after Arrhenius [-]. */
  readonly 'log-mean': VolumeFraction;
}

/** The name of a blending law. */
export type BlendingLaw = keyof BlendingFractions;

/** The names of the laws. */
export const LAWS = ['ASTM D7152', 'Refutas', 'log-mean'] as const;

/** What a law averages. */
interface Law {
  /** What its fractions are of. */
  readonly by: 'volume' | 'mass';
  readonly index: (viscosity: KinematicViscosity) => number;
  readonly viscosity: (index: number) => KinematicViscosity;
}

const SQUARE_MM = 1e-6;

const laws: Readonly<Record<BlendingLaw, Law>> = {
  'ASTM D7152': {
    by: 'volume',
    index: doubleLog,
    viscosity: (index) => viscosityOf(index, index),
  },
  Refutas: {
    by: 'mass',
    index: (viscosity) => 14.534 * Math.log(Math.log(viscosity / SQUARE_MM + 0.8)) + 10.975,
    viscosity: (index) =>
      ((Math.exp(Math.exp((index - 10.975) / 14.534)) - 0.8) * SQUARE_MM) as KinematicViscosity,
  },
  'log-mean': {
    by: 'volume',
    index: (viscosity) => Math.log(viscosity / SQUARE_MM),
    viscosity: (index) => (Math.exp(index) * SQUARE_MM) as KinematicViscosity,
  },
};

/** The law of that name; refuses what is none. */
export function lawNamed(parameter: string, name: BlendingLaw): Law {
  return laws[guardWord(parameter, name, LAWS)];
}
