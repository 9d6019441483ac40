import type { BasedLimits, Finding, Span } from '../judging/index.js';
import type { Length, Ratio, UnitSystem } from '../quantities/index.js';
import type { EngineKind, HowRead, InstrumentName } from '../reading/index.js';
import type { AgainReason, NotJudged, Section } from '../shed/index.js';
import type { CannotBuild } from './cannot-build-types.js';
import type { Cost } from './cost.js';
import type { BuildJob, BuildTest, ShopOrder } from './job-types.js';
import type { LeftOver, NextEngine } from './left-over-types.js';
import type { MayBe, MeasureFirst, ReadAgain } from './measure-types.js';
import type { Complete, PartToMake, Purchase } from './order-types.js';
import type { Preference } from './preferences.js';
import type { Proof } from './proof-types.js';

/** The best builds from a shed: plain data that JSON carries unchanged. */
export interface Plan {
  /** Name of the shed. */
  readonly shed: string;
  /** Data on the engines, as the shed gives it. */
  readonly engine: EngineKind;
  /** The units that the shed wants its plans in. */
  readonly units: UnitSystem;
  /** Every engine of the plan. */
  readonly builds: readonly Build[];
  /** Cost of machining and purchases together; without a currency if the shed has no prices. */
  readonly cost: Cost;
  /** The smallest margin between any clearance and its limits, after the guard band if a chance was asked for; absent if none is judged [m]. */
  readonly smallestMargin?: Length;
  /** The chance that every clearance had to hold with, if one was asked for [-]. */
  readonly holdsWith?: Ratio;
  /**
   * The least chance that all its clearances hold together, whether or not they are off together; of those that
   * are read with instruments that the shed describes, and absent if there are none [-].
   */
  readonly allHold?: Ratio;
  /** The clearances to measure once more before money is spent: first those that can change most. */
  readonly near: readonly NearClearance[];
  /** What to measure again of the parts it takes, as their readings are too near a limit to tell. */
  readonly measureAgain: readonly MeasureAgain[];
  /** Readings of the parts of the shed that cannot be right, and keep a part out of every engine until they are taken again. */
  readonly readAgain: readonly ReadAgain[];
  /** What there may be besides, if parts that are not known turned out good; absent if that is no more engines. */
  readonly mayBe?: MayBe;
  /** What to measure first, of the parts that are not known: for one more engine or to know what to buy for it, then for less money, then for a wider margin. */
  readonly measureFirst: readonly MeasureFirst[];
  /** How well the sizes of the parts it takes were read. */
  readonly howRead: HowRead;
  /** The instruments that its clearances are read with and that the shed does not describe. What they add is not counted. */
  readonly notDescribed: readonly InstrumentName[];
  /** What is proven about it. */
  readonly proof: Proof;
  /** What it is proven to be the best in, one after the other. */
  readonly compared: readonly Preference[];
  /** The order for every shop. */
  readonly orders: readonly ShopOrder[];
  /** The parts to buy. */
  readonly shopping: readonly Purchase[];
  /** The parts to make, with their sizes. */
  readonly toMake: readonly PartToMake[];
  /** What an engine of it is complete with. */
  readonly complete: Complete;
  /** The parts that no engine of the plan takes, section by section. */
  readonly leftOver: readonly LeftOver[];
  /** The parts that one more engine needs; absent if no more are wanted, or if the search for them did not finish. */
  readonly nextEngine?: NextEngine;
  /** Blocks that must be built but are not in the plan, each with the reason. */
  readonly cannotBuild: readonly CannotBuild[];
}

/** A clearance so near a limit that its readings leave room for doubt. */
export interface NearClearance {
  /** The engine, by its name. */
  readonly engine: string;
  /** A main or rod bearing, a cylinder, the guides, or the end play. */
  readonly of: 'mains' | 'rods' | 'cylinder' | 'guides' | 'end play';
  /** Which journal or bore; absent for the guides and the end play. */
  readonly place?: string;
  /** Its worse end against the limits. */
  readonly finding: Finding<'length'>;
  /** The chance that it holds, at both its ends [-]. */
  readonly holds: Ratio;
  /** What the engine costs. */
  readonly atStake: Cost;
  /** What of it can be measured again now: what is neither bought nor machined first. */
  readonly measure: readonly string[];
  /** The name of a spare with which it would not be near, if there is one in the shed. */
  readonly instead?: string;
}

/** A part of a plan that is to be measured again. */
export interface MeasureAgain {
  /** Its section of the shed. */
  readonly section: Section;
  /** Its name. */
  readonly name: string;
  /** What to measure again, and why. */
  readonly because: readonly AgainReason[];
}

/** One engine of a plan. */
export interface Build {
  /** Its name, which is that of its block. */
  readonly name: string;
  /** The interchange group that all its parts fit, if they belong to any. */
  readonly interchange?: string;
  /** The groups of its block, if it is of any: an engine of a later block is one, whatever it is built of. */
  readonly blockGroups?: {
    /** Its own. */
    readonly own: readonly string[];
    /** Those that its own supersede: it takes their parts too. */
    readonly older: readonly string[];
  };
  /** Its parts, section by section. */
  readonly parts: readonly BuildPart[];
  /** Every bearing, mains first. */
  readonly bearings: readonly BuildBearing[];
  /** Whether its crossed rods gain no more than the readings tell, and may as well stay on their own journals. */
  readonly mayStayUncrossed?: true;
  /** Every cylinder. */
  readonly cylinders: readonly BuildCylinder[];
  /** Crankshaft end play with the washers that set it; absent if its limits or a thrust width are missing. */
  readonly endPlay?: {
    /** The names of the washers, one for each washer. */
    readonly washers: readonly string[];
    /** Expected value [m]. */
    readonly play: Length;
    /** The thickness to make the washer with, if it is made to suit [m]. */
    readonly madeTo?: Length;
    /** The value against its limits. */
    readonly finding: Finding<'length'>;
  };
  /** Clearance of the valve stems in their guides; absent if either was not measured. */
  readonly guides?: {
    /** Expected value [m]. */
    readonly clearance: Span<Length>;
    /** The value against its limits, if there are any. */
    readonly finding?: Finding<'length'>;
  };
  /** The work on its parts, each job with its cost, and the tests that a shop on the list offers. */
  readonly jobs: readonly BuildJob[];
  /** Every test and measurement its parts need before they are used, offered by a shop or not. */
  readonly tests: readonly BuildTest[];
  /** Cost of machining and purchases for it. */
  readonly cost: Cost;
}

/** A part of an engine. */
export interface BuildPart {
  /** Its section of the shed. */
  readonly section: Section;
  /** Its name. */
  readonly name: string;
  /** What an other part is. */
  readonly kind?: string;
  /** Whether it is made to suit. */
  readonly made?: true;
  /** Whether it is home-made. */
  readonly homeMade?: true;
  /** What its owner notes of it, if it is home-made. */
  readonly notes?: readonly string[];
  /** Where it came from, if that is known. */
  readonly from?: string;
  /** How many the engine takes: pairs of shells, washers; otherwise 1 [-]. */
  readonly count: number;
  /** Whether it must be bought. */
  readonly bought: boolean;
  /** Whether it is a part that cracks, and no test of it for cracks is listed. */
  readonly untested?: true;
  /** What of it no verdict is given on; absent if all is judged. */
  readonly notJudged?: readonly NotJudged[];
}

/** One bearing of an engine. */
export interface BuildBearing {
  /** Rods or mains. */
  readonly kind: 'rods' | 'mains';
  /** Crankshaft and journal. */
  readonly journal: string;
  /** Finished size of the journal [m]. */
  readonly journalSize: Span<Length>;
  /** Undersize of the journal and its shells [m]. */
  readonly undersize: Length;
  /** The part that the housing is in, and the housing. */
  readonly housing: {
    /** Block, rod or set of rods. */
    readonly part: string;
    /** Which housing of it. */
    readonly place: string;
  };
  /** Whether the rod is of the crankshaft's own set, and goes on the journal of another rod, by the order of the file. */
  readonly crossed?: true;
  /** Finished size of the housing [m]. */
  readonly housingBore: Span<Length>;
  /** The shells, by name. */
  readonly shells: string;
  /** Measured wall of one half shell, or the wall it is made with [m]. */
  readonly wall: Span<Length>;
  /** The wall to make one half shell with, if it is made to suit [m]. */
  readonly madeTo?: Length;
  /** Diametral clearance [m]. */
  readonly clearance: Span<Length>;
  /** Its worse end against the limits. */
  readonly finding: Finding<'length'>;
}

/** One cylinder of an engine. */
export interface BuildCylinder {
  /** Which bore of the block. */
  readonly bore: string;
  /** Finished size of the bore [m]. */
  readonly boreSize: Span<Length>;
  /** Oversize of bore, piston and rings [m]. */
  readonly oversize: Length;
  /** Which piston of the set. */
  readonly piston: string;
  /** Diameter of the piston [m]. */
  readonly pistonSize: Span<Length>;
  /** Diametral clearance [m]. */
  readonly clearance: Span<Length>;
  /** Its worse end against the limits, if there are any. */
  readonly finding?: Finding<'length'>;
  /** Limits of its ring gaps: the maker's, or the rule of thumb. */
  readonly ringGap: BasedLimits<'length'>;
}
