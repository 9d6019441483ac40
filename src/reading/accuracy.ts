import type { NamedRule, SizeOrSpan } from '../judging/index.js';
import { spanOf } from '../judging/internal.js';
import {
  type Contributor,
  type DiameterReading,
  type EngineMaterial,
  instrumentBudget,
  meanExpansion,
  type Repeats,
  readingUncertainty,
  sizeAt20C,
} from '../measuring/index.js';
import { statedUncertainty } from '../measuring/internal.js';
import { normalQuantileOfTail } from '../numerics/index.js';
import { type Length, metre, type Temperature } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import {
  type Bench,
  INSTRUMENT_WORDS,
  INSTRUMENTS,
  type InstrumentName,
  type InstrumentOfBench,
  type InstrumentsOfBench,
  type ReadWarmPart,
  WARM_PARTS,
  type WarmthOfBench,
} from './bench.js';

/** How sizes read warm stand to those at 20 °C. */
interface Growth {
  /** Size at 20 °C over the size that was read. */
  readonly factor: number;
  /** What is not known of that, either way, over the size. */
  readonly doubt: number;
  /** Whether it is said what the part is made of. */
  readonly isNamed: boolean;
}

/** How well the sizes of a file are known. */
export interface Accuracy {
  /** All that adds to the uncertainty of a reading of each described instrument. */
  readonly reads: { readonly [I in InstrumentName]?: readonly Contributor[] };
  /** What was read warm. */
  readonly growth: { readonly [P in ReadWarmPart]?: Growth };
  /** How many readings each journal or bore has at every place, if they are several: what scatters averages out. */
  readonly fewest?: Fewest;
  /** The rule that verdicts go by, if one is named. */
  readonly rule?: NamedRule;
}

/** The fewest readings of any place, by the instrument that the places were read with. */
export type Fewest = { readonly [I in 'micrometer' | 'boreGauge']?: number };

/** What was read again at the same place, by the instrument it was read with. */
export type RepeatsOfBench = { readonly [I in InstrumentName]?: readonly (Repeats | undefined)[] };

/** How well sizes are known, by the instruments and the warmth that a file tells, and the repeats in it. */
export function accuracyOf(
  { instruments = {}, decisionRule: rule, warmth }: Bench,
  repeats: RepeatsOfBench = {},
  fewest?: Fewest,
): Accuracy {
  for (const name of INSTRUMENTS) {
    const instrument = instruments[name];
    if (instrument && 'within' in instrument) {
      statedUncertainty(`instruments.${name}.within`, instrument.within);
    }
  }
  const reads = INSTRUMENTS.flatMap((name) => {
    const read = contributorsOf(name, instruments, pooled(repeats[name] ?? []));
    return read ? [[name, read] as const] : [];
  });
  const growth = WARM_PARTS.flatMap((part) => {
    const grown = warmth && growthOf(part, warmth);
    return grown ? [[part, grown] as const] : [];
  });
  return {
    reads: Object.fromEntries(reads),
    growth: Object.fromEntries(growth),
    ...(fewest && { fewest }),
    ...(rule !== undefined && { rule }),
  };
}

/** The repeats of many places as one. */
function pooled(all: readonly (Repeats | undefined)[]): Repeats | undefined {
  const given = all.filter((each) => each !== undefined);
  const degreesOfFreedom = given.reduce((sum, each) => sum + each.degreesOfFreedom, 0);
  if (degreesOfFreedom === 0) return undefined;
  const squares = given.reduce(
    (sum, each) => sum + each.degreesOfFreedom * each.standardDeviation ** 2,
    0,
  );
  return {
    degreesOfFreedom,
    standardDeviation: Math.sqrt(squares / degreesOfFreedom) as Length,
  };
}

/**
 * What readings of an instrument may be off. What a person states stands, unless the repeats contradict it: then their
 * scatter counts, by as many as there are. A budget takes the repeats in.
 */
function contributorsOf(
  name: InstrumentName,
  instruments: InstrumentsOfBench,
  again: Repeats | undefined,
): readonly Contributor[] | undefined {
  const instrument = instruments[name];
  if (instrument === undefined) return undefined;
  if ('within' in instrument) {
    const { within: expanded } = instrument;
    if (again && contradicts(again, expanded)) {
      const scatter = `scatter of the ${INSTRUMENT_WORDS[name]}`;
      return [{ name: scatter, kind: 'readings', readings: 1, ...again }];
    }
    return [{ name: INSTRUMENT_WORDS[name], kind: 'normal', expanded, coverageFactor: 2 }];
  }
  return budgetOf(name, instrument, instruments, again).map((one) => ({
    ...one,
    name: `${one.name} of the ${INSTRUMENT_WORDS[name]}`,
  }));
}

/**
 * Whether repeats scatter more than a stated uncertainty lets them, once in a hundred by chance: the chi-square test of a
 * variance, with its quantile after Wilson and Hilferty (1931).
 */
export function contradicts({ standardDeviation, degreesOfFreedom }: Repeats, stated: Length) {
  const spread = 2 / (9 * degreesOfFreedom);
  const quantile =
    degreesOfFreedom * (1 - spread + normalQuantileOfTail(0.01) * Math.sqrt(spread)) ** 3;
  return degreesOfFreedom * (standardDeviation / (stated / 2)) ** 2 > quantile;
}

type Described = Exclude<InstrumentOfBench, { readonly within: Length }>;

function budgetOf(
  name: InstrumentName,
  { division, error, repeats }: Described,
  instruments: InstrumentsOfBench,
  again: Repeats | undefined,
): readonly Contributor[] {
  const all = { division, repeats };
  const budget = budgetFor(name, all, error, instruments);
  if (again === undefined) return budget;
  // The scatter on the part itself, besides that of the readings over and over: the larger counts.
  return budget.map((one) =>
    one.kind === 'readings' && one.standardDeviation < again.standardDeviation
      ? { ...one, standardDeviation: again.standardDeviation }
      : one,
  );
}

function budgetFor(
  name: InstrumentName,
  all: Pick<Described, 'division' | 'repeats'>,
  error: Length,
  instruments: InstrumentsOfBench,
): readonly Contributor[] {
  switch (name) {
    case 'dialIndicator':
      return instrumentBudget({ kind: 'dial indicator', ...all, travelError: error });
    case 'feelerGauge':
      return instrumentBudget({ kind: 'feeler gauge', ...all, bladeError: error });
    case 'depthGauge':
      return instrumentBudget({ kind: 'depth gauge', ...all, zeroError: error });
    case 'boreGauge':
      // Its own error is that of a zero, and the same for every reading; so is that of what it was set with.
      return [
        ...instrumentBudget({ kind: 'micrometer', ...all, zeroError: error }),
        ...settingOf(instruments).map((one) => ({
          ...one,
          name: `setting: ${one.name}`,
          common: true as const,
        })),
      ];
    default:
      return instrumentBudget({ kind: 'micrometer', ...all, zeroError: error });
  }
}

/** What a bore gauge was set with: the micrometer, if that is described. */
function settingOf({ micrometer }: InstrumentsOfBench): readonly Contributor[] {
  if (micrometer === undefined) return [];
  if ('within' in micrometer) {
    return [{ name: 'micrometer', kind: 'normal', expanded: micrometer.within, coverageFactor: 2 }];
  }
  return budgetOf('micrometer', micrometer, {}, undefined);
}

/** What a part may be made of, where that is not said. */
const MAY_BE: Readonly<Record<ReadWarmPart, readonly EngineMaterial[]>> = {
  journals: ['steel', 'grey iron'],
  housings: ['steel', 'grey iron', 'aluminium alloy'],
  bores: ['grey iron', 'steel', 'aluminium alloy'],
  pistons: ['grey iron', 'cast piston alloy', 'forged piston alloy'],
};

/** How a part has grown: by its material, or by anything that it may be made of. */
function growthOf(part: ReadWarmPart, warmth: WarmthOfBench): Growth {
  const { parts, instruments = parts, within = 0 } = warmth;
  const warm = (temperature: Temperature, of: EngineMaterial) => ({
    temperature,
    expansion: meanExpansion(of),
  });
  const materials = warmth[part] === undefined ? MAY_BE[part] : [warmth[part]];
  const grown = materials.map((material) =>
    sizeAt20C({
      size: metre(1),
      part: warm(parts, material),
      instrument: warm(instruments, 'steel'),
    }),
  );
  const sizes = grown.map(({ size }) => size);
  const factor = (smallestOf(sizes) + largestOf(sizes)) / 2;
  const doubt = largestOf(grown.map(({ span }) => Math.max(span.max - factor, factor - span.min)));
  const most = largestOf(
    materials.map((material) => spanOf(meanExpansion(material).coefficient).max),
  );
  const isNamed = warmth[part] !== undefined;
  return { factor, doubt: Math.hypot(doubt, within * most), isNamed };
}

/** A size at 20 °C, as far as it is known how warm it was. */
export function at20C<S extends SizeOrSpan<Length>>(
  size: S,
  part: ReadWarmPart,
  { growth }: Accuracy,
): S {
  const factor = growth[part]?.factor;
  if (factor === undefined) return size;
  const grown = (one: number) => one * factor;
  return (
    typeof size === 'object' ? { min: grown(size.min), max: grown(size.max) } : grown(size)
  ) as S;
}

/** Readings of diameters at 20 °C. */
export const readingsAt20C = (
  readings: readonly DiameterReading[],
  part: ReadWarmPart,
  accuracy: Accuracy,
): readonly DiameterReading[] =>
  accuracy.growth[part] === undefined
    ? readings
    : readings.map((each) => ({ ...each, diameter: at20C(each.diameter, part, accuracy) }));

/** How well one reading of an instrument is known, for the search for odd ones. */
export function readWith(
  instrument: InstrumentName,
  { reads }: Accuracy,
): { readonly uncertainty?: Length } {
  const read = reads[instrument];
  return read ? { uncertainty: readingUncertainty(read).size } : {};
}
