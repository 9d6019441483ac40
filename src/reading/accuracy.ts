import type { NamedRule, SizeOrSpan } from '../judging/index.js';
import {
  type Contributor,
  type DiameterReading,
  instrumentBudget,
  meanExpansion,
  type Repeats,
  readingUncertainty,
  sizeAt20C,
} from '../measuring/index.js';
import { type Length, metre, type Temperature } from '../quantities/index.js';
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
}

/** How well the sizes of a file are known. */
export interface Accuracy {
  /** All that adds to the uncertainty of a reading of each described instrument. */
  readonly reads: { readonly [I in InstrumentName]?: readonly Contributor[] };
  /** What was read warm. */
  readonly growth: { readonly [P in ReadWarmPart]?: Growth };
  /** The rule that verdicts go by, if one is named. */
  readonly rule?: NamedRule;
}

/** What was read again at the same place, by the instrument it was read with. */
export type RepeatsOfBench = { readonly [I in InstrumentName]?: readonly (Repeats | undefined)[] };

/** How well sizes are known, by the instruments and the warmth that a file tells, and the repeats in it. */
export function accuracyOf(
  { instruments = {}, decisionRule: rule, warmth }: Bench,
  repeats: RepeatsOfBench = {},
): Accuracy {
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
 * What readings of an instrument may be off. What a person states stands, unless the repeats scatter more: then twice their
 * standard deviation. A budget takes the repeats in.
 */
function contributorsOf(
  name: InstrumentName,
  instruments: InstrumentsOfBench,
  again: Repeats | undefined,
): readonly Contributor[] | undefined {
  const instrument = instruments[name];
  if (instrument === undefined) return undefined;
  if ('within' in instrument) {
    const twice = 2 * (again?.standardDeviation ?? 0);
    const expanded = Math.max(instrument.within, twice) as Length;
    return [{ name: INSTRUMENT_WORDS[name], kind: 'normal', expanded, coverageFactor: 2 }];
  }
  return budgetOf(name, instrument, instruments, again).map((one) => ({
    ...one,
    name: `${one.name} of the ${INSTRUMENT_WORDS[name]}`,
  }));
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

function growthOf(part: ReadWarmPart, warmth: WarmthOfBench): Growth | undefined {
  const material = warmth[part];
  if (material === undefined) return undefined;
  const { parts, instruments = parts, within = 0 } = warmth;
  const warm = (temperature: Temperature, of: typeof material) => ({
    temperature,
    expansion: meanExpansion(of),
  });
  const one = metre(1);
  const { size, span } = sizeAt20C({
    size: one,
    part: warm(parts, material),
    instrument: warm(instruments, 'steel'),
  });
  const apart = within * meanOf(meanExpansion(material).coefficient);
  return { factor: size, doubt: Math.hypot((span.max - span.min) / 2, apart) };
}

const meanOf = (coefficient: SizeOrSpan<number>): number =>
  typeof coefficient === 'number' ? coefficient : (coefficient.min + coefficient.max) / 2;

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
