import type { Length } from '../quantities/index.js';
import type { InstrumentName } from '../reading/index.js';
import type { MeasuredWhat, Misread, NeededTest, Section, TooFar, Until } from '../shed/index.js';
import type { Cost } from './cost.js';
import type { LackingPart } from './left-over-types.js';

/** What there may be besides what is proven: the most engines, if the parts that are not known turned out good. */
export interface MayBe {
  /** How many engines. */
  readonly engines: number;
  /** What they cost at best, as far as the prices of the shed tell. */
  readonly cost: Cost;
  /** The fewest parts that must turn out good for it. */
  readonly parts: readonly PartToMeasure[];
}

/** What to measure, and what that may bring. */
export interface MeasureFirst {
  /** What it may bring, if these parts turn out good. */
  readonly mayBring: MayBring;
  /** The fewest parts that could bring it. */
  readonly parts: readonly PartToMeasure[];
}

/** What measuring may bring. */
export type MayBring =
  | {
      /** One more engine than is proven. */
      readonly kind: 'one more engine';
      /** How many that makes [-]. */
      readonly engines: number;
    }
  | {
      /** What to buy for one more engine, where no parts at hand make one, whatever they measure. */
      readonly kind: 'what to buy';
      /** How many engines that makes [-]. */
      readonly engines: number;
      /** The parts that it lacks, the easiest to get, if what is measured turns out good. */
      readonly lacks: readonly LackingPart[];
    }
  | {
      /** The same engines for less money. */
      readonly kind: 'lower cost';
      /** What they would cost at best. */
      readonly cost: Cost;
      /** How much less that is. */
      readonly less: Cost;
    }
  | {
      /** The same engines at the same cost, with the tightest clearance further inside its limits. */
      readonly kind: 'wider margin';
      /** The margin of the tightest clearance at best; absent if no clearance would be judged that is known now [m]. */
      readonly margin?: Length;
    };

/** A part that is not known, and what is to be measured of it. */
export interface PartToMeasure {
  /** Its section of the shed. */
  readonly section: Section;
  /** Its name; a part of an engine that is not taken apart is named after it. */
  readonly name: string;
  /** The engine it is still in, if it is in one. */
  readonly core?: string;
  /** The marks on it that name a size: what it was once machined to, perhaps. Nothing is counted on them. */
  readonly marks?: readonly string[];
  /** The tests that it needs before it is used, those for cracks before it is measured. */
  readonly tests: readonly NeededTest[];
  /** What is to be measured. */
  readonly measure: readonly Measurement[];
  /** Readings that can hardly be right, and are taken again. */
  readonly again: readonly Misread[];
  /** What must be known of it, in words. */
  readonly until: Until;
}

/** Something to measure. */
export interface Measurement {
  /** What. */
  readonly what: MeasuredWhat;
  /** Which journals, bores, housings or pistons; empty for the whole part. */
  readonly places: readonly string[];
  /** The instrument it takes; absent where it is found out otherwise. */
  readonly with?: InstrumentName;
}

/** Readings of one part that no step and no wear come to. */
export interface ReadAgain {
  /** Its section of the shed. */
  readonly section: Section;
  /** Its name. */
  readonly name: string;
  /** The readings, each with its place. */
  readonly because: readonly TooFar[];
}
