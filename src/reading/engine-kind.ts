import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import type { StatedLimits } from './stated-limits.js';

/** What is known of the engine that the parts are for. */
export interface EngineKind {
  /** What the engine is called. */
  readonly name: string;
  /** How many cylinders it has, and so rods and pistons [-]. */
  readonly cylinders: number;
  /** How many rods run on one journal: 1, or 2 as in most V engines; by default 1. */
  readonly rodsPerJournal?: 1 | 2;
  /** How many main bearings with shells it has; 0 where the crankshaft runs in rolling bearings [-]. */
  readonly mains: number;
  /** The rod journals' standard size and limits. */
  readonly rodJournals: JournalKind;
  /** The main journals' standard size and limits; needed where there are mains with shells. */
  readonly mainJournals?: JournalKind;
  /** Big-end housing bore without shells; it is what a housing is resized to. */
  readonly rodHousing?: StatedLimits<'length'>;
  /** Main housing bore without shells; it is what a housing is resized to. */
  readonly mainHousing?: StatedLimits<'length'>;
  /** The bores' standard size and limits. */
  readonly bores: BoreKind;
  /** Crankshaft end play. Where it is given, thrust washers are planned wherever both widths were measured. */
  readonly endPlay?: StatedLimits<'length'>;
  /** Distortion of a head's face that is allowed without skimming. */
  readonly headFlatness?: StatedLimits<'length'>;
  /** Clearance of a valve stem in its guide. */
  readonly guideClearance?: StatedLimits<'length'>;
  /** What an engine needs besides; by default a head and a valve set. */
  readonly alsoNeeds?: readonly ('head' | 'valve set')[];
}

/** What the maker and the grinder say of all journals of one kind. */
export interface JournalKind {
  /** Maker's span for a standard journal [m]. */
  readonly standard: Span<Length>;
  /** Undersizes it may be ground to; by default those of the trade [m]. */
  readonly steps?: readonly Length[];
  /** Smallest journal that the maker allows [m]. */
  readonly minimum?: Length;
  /** Stock to leave for the wheel, on the diameter [m]. */
  readonly cleanUpAllowance?: Length;
  /** How far a journal may lie outside its size and still be used as it is [m]. */
  readonly sizeAllowance?: Length;
  /** How the journals wore; by default on one side. */
  readonly wear?: 'one side' | 'all round';
  /** Out-of-round and taper allowed without grinding. */
  readonly shape?: StatedLimits<'length'>;
  /** Oil clearance. */
  readonly oilClearance?: StatedLimits<'length'>;
}

/** What the maker and the boring shop say of all bores. */
export interface BoreKind {
  /** Maker's span for a standard bore [m]. */
  readonly standard: Span<Length>;
  /** Oversizes it may be bored to; by default those of the trade [m]. */
  readonly steps?: readonly Length[];
  /** Stock that boring leaves for the hone, on the diameter [m]. */
  readonly honingAllowance?: Length;
  /** Thinnest wall that may be left; needed where walls were measured [m]. */
  readonly leastWall?: Length;
  /** How far a bore may lie outside its size and still be used as it is [m]. */
  readonly sizeAllowance?: Length;
  /** How the bores wore; by default on one side. */
  readonly wear?: 'one side' | 'all round';
  /** Out-of-round and taper allowed without boring. */
  readonly shape?: StatedLimits<'length'>;
  /** Piston clearance, on the diameter. Without it pistons go by their oversize alone. */
  readonly pistonClearance?: StatedLimits<'length'>;
  /** Ring gap. */
  readonly ringGap?: StatedLimits<'length'>;
}
