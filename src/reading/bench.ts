import type { NamedRule } from '../judging/index.js';
import type { EngineMaterial } from '../measuring/index.js';
import type { Length, Temperature, TemperatureDifference } from '../quantities/index.js';

/** One of the instruments of a bench, by what is read with it. */
export type InstrumentName =
  | 'micrometer'
  | 'boreGauge'
  | 'wallGauge'
  | 'feelerGauge'
  | 'dialIndicator'
  | 'depthGauge';

/** How they are called on the bench. */
export const INSTRUMENT_WORDS: Readonly<Record<InstrumentName, string>> = {
  micrometer: 'micrometer',
  boreGauge: 'bore gauge',
  wallGauge: 'wall gauge',
  feelerGauge: 'feeler gauge',
  dialIndicator: 'dial indicator',
  depthGauge: 'depth gauge',
};

/** The instruments of a bench. */
export const INSTRUMENTS = /* @__PURE__ */ Object.keys(INSTRUMENT_WORDS) as InstrumentName[];

/** How well an instrument measures: how far a reading may be off, or what that is made up of. */
export type InstrumentOfBench =
  | {
      /** How far one reading may be off, about 95 times in 100 [m]. */
      readonly within: Length;
    }
  | {
      /** The division of its scale, or its last digit [m]. */
      readonly division: Length;
      /** How far its zero, its travel or a blade may be off, either way; of a bore gauge, besides the micrometer that it is set with, if that is described [m]. */
      readonly error: Length;
      /** Readings of one thing, over and over [m]. */
      readonly repeats: readonly Length[];
    };

/** The instruments of a bench, as far as their owner describes them. */
export type InstrumentsOfBench = { readonly [I in InstrumentName]?: InstrumentOfBench };

/** Parts that grow with warmth, by what is read of them. */
export type ReadWarmPart = 'journals' | 'housings' | 'bores' | 'pistons';

/** What may be read warm. */
export const WARM_PARTS = [
  'journals',
  'housings',
  'bores',
  'pistons',
] as const satisfies readonly ReadWarmPart[];

/** How warm it was when sizes were read, and what the parts are made of. Parts without a material are not corrected to 20 °C. */
export interface WarmthOfBench {
  /** Temperature of the parts [K]. */
  readonly parts: Temperature;
  /** Temperature of the instruments, which are of steel; by default that of the parts [K]. */
  readonly instruments?: Temperature;
  /** How far a part and the instrument on it may be from that; by default nothing is added for it [K]. */
  readonly within?: TemperatureDifference;
  /** Material of the crankshaft. */
  readonly journals?: EngineMaterial;
  /** Material that the housings of the shells are bored in. */
  readonly housings?: EngineMaterial;
  /** Material of the cylinders or their sleeves. */
  readonly bores?: EngineMaterial;
  /** Material of the pistons. */
  readonly pistons?: EngineMaterial;
}

/** How the sizes of a file were read. */
export interface Bench {
  /** How well each instrument measures. What is not described adds nothing to any uncertainty, and the report says so. */
  readonly instruments?: InstrumentsOfBench;
  /** How far from a limit a size must lie to be judged by it; by default by its whole uncertainty. */
  readonly decisionRule?: NamedRule;
  /** How warm it was. Without it sizes count as read at 20 °C. */
  readonly warmth?: WarmthOfBench;
}
