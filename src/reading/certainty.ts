import type { Certainty } from '../judging/index.js';
import {
  type Contributor,
  expandedUncertainty,
  type ReadingUncertainty,
} from '../measuring/index.js';
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
    /** A journal or bore that may have been read several times at every place. */
    readonly averaged?: true;
  }[];
  readonly warm?: readonly ReadWarmPart[];
}

/** A hole less what goes into it. */
const HOLE_AND_SHAFT = {
  by: [
    { instrument: 'boreGauge', reads: 'size' },
    { instrument: 'micrometer', reads: 'size' },
  ],
} as const satisfies Uses;

const USES = {
  'journal shape': { by: [{ instrument: 'micrometer', reads: 'difference', averaged: true }] },
  'journal size': {
    by: [{ instrument: 'micrometer', reads: 'size', averaged: true }],
    warm: ['journals'],
  },
  'bore shape': { by: [{ instrument: 'boreGauge', reads: 'difference', averaged: true }] },
  'bore size': {
    by: [{ instrument: 'boreGauge', reads: 'size', averaged: true }],
    warm: ['bores'],
  },
  'housing bore': { by: [{ instrument: 'boreGauge', reads: 'size' }], warm: ['housings'] },
  'oil clearance': {
    by: [
      { instrument: 'boreGauge', reads: 'size' },
      { instrument: 'wallGauge', reads: 'size', times: 2 },
      { instrument: 'micrometer', reads: 'size', averaged: true },
    ],
    warm: ['housings', 'journals'],
  },
  'piston clearance': {
    by: [
      { instrument: 'boreGauge', reads: 'size', averaged: true },
      { instrument: 'micrometer', reads: 'size' },
    ],
    warm: ['bores', 'pistons'],
  },
  'guide clearance': HOLE_AND_SHAFT,
  'fit clearance': HOLE_AND_SHAFT,
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

/** All that adds to the uncertainty of a feature of a size, as far as it is described. */
export function budgetOf(
  feature: ReadFeature,
  { reads, growth, fewest = {} }: Accuracy,
  ofSize = 0,
): readonly Contributor[] {
  const { by, warm = [] }: Uses = USES[feature];
  return [
    ...by.flatMap(({ instrument, reads: what, times = 1, averaged }) =>
      (reads[instrument] ?? []).flatMap((one): readonly Contributor[] => {
        // What is the same for two readings cancels in their difference; the rest of each adds.
        if (what === 'difference' && one.common) return [];
        const sensitivity = what === 'difference' ? Math.SQRT2 * times : times;
        const several = averaged ? fewest[instrument as keyof typeof fewest] : undefined;
        const readings = one.kind === 'readings' && several ? { readings: several } : {};
        return [{ ...one, ...readings, sensitivity } as Contributor];
      }),
    ),
    ...warm.flatMap((part): readonly Contributor[] => {
      const { doubt = 0 } = growth[part] ?? {};
      if (doubt === 0) return [];
      const halfWidth = (doubt * ofSize) as Length;
      return [{ name: `warmth of the ${part}`, kind: 'rectangular', halfWidth, common: true }];
    }),
  ];
}

/** The instruments of a feature that nobody described: what they add to its uncertainty is missing. */
export function undescribed(feature: ReadFeature, { reads }: Accuracy): readonly InstrumentName[] {
  const { by }: Uses = USES[feature];
  return by.flatMap(({ instrument }) => (reads[instrument] ? [] : [instrument]));
}

/** How well a feature of a size is known. Where nothing is described, nothing is known of it. */
export function certaintyOf(
  feature: ReadFeature,
  accuracy: Accuracy,
  ofSize = 0,
): Certainty<'length'> {
  const budget = budgetOf(feature, accuracy, ofSize);
  const { rule } = accuracy;
  return {
    ...(budget.length > 0 && { uncertainty: expandedUncertainty(budget).expanded }),
    ...(rule !== undefined && { rule }),
  };
}
