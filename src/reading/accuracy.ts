import type { Certainty, NamedRule } from '../judging/index.js';
import type { ReadingUncertainty } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';

/** The instruments of a bench, by what is read with each. */
export const INSTRUMENTS = [
  'micrometer',
  'boreGauge',
  'wallGauge',
  'feelerGauge',
  'dialIndicator',
  'depthGauge',
] as const;

/** One of the instruments of a bench. */
export type InstrumentName = (typeof INSTRUMENTS)[number];

/** How well each instrument measures, of those that are described, and the rule that verdicts go by. */
export interface Accuracy extends Readonly<Partial<Record<InstrumentName, ReadingUncertainty>>> {
  readonly rule?: NamedRule;
}

/** What an instrument reads of a feature, and how often it counts in it. */
interface Use {
  readonly instrument: InstrumentName;
  /** A size by itself, or the difference of two by the same instrument. */
  readonly reads: keyof ReadingUncertainty;
  readonly times?: number;
}

/** What each feature is read with. */
const USES = {
  'journal shape': [{ instrument: 'micrometer', reads: 'difference' }],
  'journal size': [{ instrument: 'micrometer', reads: 'size' }],
  'bore shape': [{ instrument: 'boreGauge', reads: 'difference' }],
  'bore size': [{ instrument: 'boreGauge', reads: 'size' }],
  'oil clearance': [
    { instrument: 'boreGauge', reads: 'size' },
    { instrument: 'wallGauge', reads: 'size', times: 2 },
    { instrument: 'micrometer', reads: 'size' },
  ],
  'piston clearance': [
    { instrument: 'boreGauge', reads: 'size' },
    { instrument: 'micrometer', reads: 'size' },
  ],
  'guide clearance': [
    { instrument: 'boreGauge', reads: 'size' },
    { instrument: 'micrometer', reads: 'size' },
  ],
  'ring gap': [{ instrument: 'feelerGauge', reads: 'size' }],
  'end play': [{ instrument: 'dialIndicator', reads: 'difference' }],
  'end play by washers': [
    { instrument: 'depthGauge', reads: 'size', times: Math.SQRT2 },
    { instrument: 'micrometer', reads: 'size' },
  ],
  runout: [{ instrument: 'dialIndicator', reads: 'difference' }],
  face: [{ instrument: 'feelerGauge', reads: 'size' }],
  margin: [{ instrument: 'depthGauge', reads: 'size' }],
} as const satisfies Readonly<Record<string, readonly Use[]>>;

/** A feature that instruments read. */
export type ReadFeature = keyof typeof USES;

/** How much one instrument adds to the uncertainty of a feature [m]. */
export interface InstrumentShare {
  readonly instrument: InstrumentName;
  readonly expanded: Length;
}

/** What every described instrument adds to the uncertainty of a feature. */
export function sharesOf(feature: ReadFeature, accuracy: Accuracy): readonly InstrumentShare[] {
  const uses: readonly Use[] = USES[feature];
  return uses.flatMap(({ instrument, reads, times = 1 }) => {
    const one = accuracy[instrument]?.[reads];
    return one === undefined ? [] : [{ instrument, expanded: (times * one) as Length }];
  });
}

/** The instruments of a feature that nobody described: what they add to its uncertainty is missing. */
export const undescribed = (feature: ReadFeature, accuracy: Accuracy): readonly InstrumentName[] =>
  USES[feature].flatMap(({ instrument }) => (accuracy[instrument] ? [] : [instrument]));

/** How well a feature is known: what its instruments add, as root sum of squares. Without any, nothing is known. */
export function certaintyOf(feature: ReadFeature, accuracy: Accuracy): Certainty<'length'> {
  const shares = sharesOf(feature, accuracy);
  const squares = shares.reduce((sum, { expanded }) => sum + expanded * expanded, 0);
  const { rule } = accuracy;
  return {
    ...(shares.length > 0 && { uncertainty: Math.sqrt(squares) as Length }),
    ...(rule !== undefined && { rule }),
  };
}

/** The uncertainty of a feature, if any of its instruments is described [m]. */
export const uncertaintyOf = (feature: ReadFeature, accuracy: Accuracy): Length | undefined =>
  certaintyOf(feature, accuracy).uncertainty;
