import type { Certainty } from '../judging/index.js';
import type { ReadingUncertainty } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import type { Accuracy } from './accuracy.js';
import type { InstrumentName, ReadWarmPart } from './bench.js';

/** What a feature is read with, and what of it is read warm. */
interface Uses {
  readonly by: readonly {
    readonly instrument: InstrumentName;
    /** A size by itself, or the difference of two by the same instrument. */
    readonly reads: keyof ReadingUncertainty;
    readonly times?: number;
  }[];
  readonly warm?: readonly ReadWarmPart[];
}

const USES = {
  'journal shape': { by: [{ instrument: 'micrometer', reads: 'difference' }] },
  'journal size': { by: [{ instrument: 'micrometer', reads: 'size' }], warm: ['journals'] },
  'bore shape': { by: [{ instrument: 'boreGauge', reads: 'difference' }] },
  'bore size': { by: [{ instrument: 'boreGauge', reads: 'size' }], warm: ['bores'] },
  'housing bore': { by: [{ instrument: 'boreGauge', reads: 'size' }], warm: ['housings'] },
  'oil clearance': {
    by: [
      { instrument: 'boreGauge', reads: 'size' },
      { instrument: 'wallGauge', reads: 'size', times: 2 },
      { instrument: 'micrometer', reads: 'size' },
    ],
    warm: ['housings', 'journals'],
  },
  'piston clearance': {
    by: [
      { instrument: 'boreGauge', reads: 'size' },
      { instrument: 'micrometer', reads: 'size' },
    ],
    warm: ['bores', 'pistons'],
  },
  'guide clearance': {
    by: [
      { instrument: 'boreGauge', reads: 'size' },
      { instrument: 'micrometer', reads: 'size' },
    ],
  },
  'ring gap': { by: [{ instrument: 'feelerGauge', reads: 'size' }] },
  'end play': { by: [{ instrument: 'dialIndicator', reads: 'difference' }] },
  // Two widths with the depth gauge, and the washers with the micrometer.
  'end play by washers': {
    by: [
      { instrument: 'depthGauge', reads: 'size', times: Math.SQRT2 },
      { instrument: 'micrometer', reads: 'size' },
    ],
  },
  runout: { by: [{ instrument: 'dialIndicator', reads: 'difference' }] },
  face: { by: [{ instrument: 'feelerGauge', reads: 'size' }] },
  margin: { by: [{ instrument: 'depthGauge', reads: 'size' }] },
} as const satisfies Readonly<Record<string, Uses>>;

/** A feature that instruments read. */
export type ReadFeature = keyof typeof USES;

/** What one source adds to the uncertainty of a feature. */
export interface SourceOfError {
  /** An instrument, or the warmth of a part. */
  readonly source: InstrumentName | 'warmth';
  /** How much, expanded at about 95 % [m]. */
  readonly expanded: Length;
}

/** What every described source adds to the uncertainty of a feature of a size. */
export function sourcesOfError(
  feature: ReadFeature,
  { reads, growth }: Accuracy,
  ofSize: number,
): readonly SourceOfError[] {
  const { by, warm = [] }: Uses = USES[feature];
  return [
    ...by.flatMap(({ instrument, reads: what, times = 1 }) => {
      const one = reads[instrument]?.[what];
      return one ? [{ source: instrument, expanded: (times * one) as Length }] : [];
    }),
    ...warm.flatMap((part) => {
      const { doubt = 0 } = growth[part] ?? {};
      return doubt > 0 ? [{ source: 'warmth' as const, expanded: (doubt * ofSize) as Length }] : [];
    }),
  ];
}

/** The instruments of a feature that nobody described: what they add to its uncertainty is missing. */
export function undescribed(feature: ReadFeature, { reads }: Accuracy): readonly InstrumentName[] {
  const { by }: Uses = USES[feature];
  return by.flatMap(({ instrument }) => (reads[instrument] ? [] : [instrument]));
}

/** How well a feature of a size is known: the root sum of squares of what adds to it. Without any, nothing is known of it. */
export function certaintyOf(
  feature: ReadFeature,
  accuracy: Accuracy,
  ofSize = 0,
): Certainty<'length'> {
  const sources = sourcesOfError(feature, accuracy, ofSize);
  const squares = sources.reduce((sum, { expanded }) => sum + expanded * expanded, 0);
  const { rule } = accuracy;
  return {
    ...(sources.length > 0 && {
      uncertainty: Math.sqrt(squares) as Length,
    }),
    ...(rule !== undefined && { rule }),
  };
}
