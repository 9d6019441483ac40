import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import type { AssemblyData } from './assembly-data.js';
import type { StatedLimits } from './stated-limits.js';

/** Data on the engine the parts are for. */
export interface EngineKind {
  /** Name of the engine. */
  readonly name: string;
  /** Number of cylinders, and so of rods and pistons [-]. */
  readonly cylinders: number;
  /** Number of rods on one journal: 1, or 2 as in most V engines; by default 1. */
  readonly rodsPerJournal?: 1 | 2;
  /** Number of main bearings with shells; 0 if the crankshaft runs in rolling bearings [-]. */
  readonly mains: number;
  /** Standard size and limits of the rod journals. */
  readonly rodJournals: JournalKind;
  /** Standard size and limits of the main journals; required if there are mains with shells. */
  readonly mainJournals?: JournalKind;
  /** Limits of the big-end housing bore without shells; a housing is resized to them. */
  readonly rodHousing?: StatedLimits<'length'>;
  /** Limits of the main housing bore without shells; a housing is resized to them. */
  readonly mainHousing?: StatedLimits<'length'>;
  /** Standard size and limits of the bores. */
  readonly bores: BoreKind;
  /** Limits of the crankshaft's end play. With them, thrust washers are planned if both thrust widths were measured. */
  readonly endPlay?: StatedLimits<'length'>;
  /** Limits of the distortion of a head's face; beyond them it must be skimmed. */
  readonly headFlatness?: StatedLimits<'length'>;
  /** Limits of the clearance of a valve stem in its guide. */
  readonly guideClearance?: StatedLimits<'length'>;
  /** Limits of the margin of a valve after refacing. */
  readonly valveMargin?: StatedLimits<'length'>;
  /**
   * What else an engine needs: `head`, `valve set`, or other parts by their kind. By default a head, a valve set, and
   * one of every kind of other part that is listed.
   */
  readonly alsoNeeds?: readonly NeededPart[];
  /** How the oil gets to the bearings: thrown up by dippers, or fed by a pump. */
  readonly lubrication?: 'splash' | 'pump';
  /** What makes the spark. */
  readonly ignition?: 'magneto' | 'coil';
  /** What cools the cylinders: air, an open hopper of water, or water in a closed circuit. */
  readonly cooling?: 'air' | 'hopper' | 'water';
  /** What it is set to as it goes together: torques, lash, fits and the like. */
  readonly assembly?: AssemblyData;
}

/** A part that an engine needs, and how many of it. */
export interface NeededPart {
  /** Which: `head`, `valve set`, or the kind of another part. */
  readonly part: string;
  /** How many [-]. */
  readonly count: number;
}

/** Data from the maker and the grinder for all journals of one kind. */
export interface JournalKind {
  /** Maker's span for a standard journal [m]. */
  readonly standard: Span<Length>;
  /** Undersizes to grind to; by default those of the trade [m]. */
  readonly steps?: readonly Length[];
  /** Smallest journal that the maker allows [m]. */
  readonly minimum?: Length;
  /** Stock to leave for the wheel, on the diameter [m]. */
  readonly cleanUpAllowance?: Length;
  /** How far a journal may be outside its size without grinding [m]. */
  readonly sizeAllowance?: Length;
  /** How the journals wore; by default on one side. */
  readonly wear?: 'one side' | 'all round';
  /** Out-of-round and taper allowed without grinding. */
  readonly shape?: StatedLimits<'length'>;
  /** Full indicator reading that a journal may have; past it the crankshaft is bent. */
  readonly runout?: StatedLimits<'length'>;
  /** Oil clearance. */
  readonly oilClearance?: StatedLimits<'length'>;
}

/** Data from the maker and the boring shop for all bores. */
export interface BoreKind {
  /** Maker's span for a standard bore [m]. */
  readonly standard: Span<Length>;
  /** Oversizes to bore to; by default those of the trade [m]. */
  readonly steps?: readonly Length[];
  /** Travel of the piston; the taper that a worn bore may keep hangs on it [m]. */
  readonly stroke?: Length;
  /** Stock that boring leaves for the hone, on the diameter [m]. */
  readonly honingAllowance?: Length;
  /** Thinnest wall that may be left; required if walls were measured [m]. */
  readonly leastWall?: Length;
  /** How far a bore may be outside its size without boring [m]. */
  readonly sizeAllowance?: Length;
  /** How the bores wore; by default on one side. */
  readonly wear?: 'one side' | 'all round';
  /** Out-of-round and taper allowed without boring. */
  readonly shape?: StatedLimits<'length'>;
  /** Piston clearance, on the diameter. Without it only the oversize of pistons is compared. */
  readonly pistonClearance?: StatedLimits<'length'>;
  /** Ring gap. */
  readonly ringGap?: StatedLimits<'length'>;
}
