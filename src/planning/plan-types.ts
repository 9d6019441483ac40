import type { Highs } from 'highs';
import type { BasedLimits, Finding, Span } from '../judging/index.js';
import type { Length, Time, UnitSystem } from '../quantities/index.js';
import type { Price } from '../reading/index.js';
import type { Job, Section } from '../shed/index.js';

/** What `planBuilds` is to heed. */
export interface PlanOptions {
  /** Build at most so many engines; by default as many as there are. */
  readonly atMost?: number;
  /** Whether parts may be bought; by default they may. */
  readonly buying?: boolean;
  /** The most that machining and buying for any one engine may cost; by default no limit. */
  readonly mostPerEngine?: Price;
  /** Names of parts that are kept back. */
  readonly reserved?: readonly string[];
  /** Names of blocks that must be among those built: an engine goes by its block. */
  readonly mustBuild?: readonly string[];
  /**
   * Time after which the search stops with the best plan it has; by default it goes on until proven. It is
   * the time of a clock from the moment that the solver is loaded. The search looks at the clock between
   * its steps, so that a large shed can take some seconds more [s].
   */
  readonly timeLimit?: Time;
  /** Told how the search stands, again and again while it goes on. */
  readonly onProgress?: (progress: PlanProgress) => void;
  /**
   * The HiGHS solver, started. Without it the package `highs` is loaded for the first plan, by its
   * name: a page in a browser starts one of its own.
   */
  readonly solver?: Highs;
}

/** How a search stands. */
export interface PlanProgress {
  /** What it is at. */
  readonly stage: PlanStage;
  /** Time it has taken so far [s]. */
  readonly elapsed: Time;
}

/** The stages of a search: each is proven before the next one begins. */
export type PlanStage = 'most engines' | 'least cost' | 'widest margin' | 'next engine';

/** The builds that a shed makes, best by engines, then cost, then margin: data only, JSON as it is. */
export interface Plan {
  /** What the shed is called. */
  readonly shed: string;
  /** What the engines are called. */
  readonly engine: string;
  /** Units that the shed asks its plans in. */
  readonly units: UnitSystem;
  /** Every engine of the plan. */
  readonly builds: readonly Build[];
  /** What machining and buying cost together; without a currency where the shed has no prices. */
  readonly cost: Cost;
  /** The smallest margin of any clearance to its limits, if any is judged [m]. */
  readonly smallestMargin?: Length;
  /** What is proven of it. */
  readonly proof: Proof;
  /** What every shop is to do. */
  readonly orders: readonly ShopOrder[];
  /** What is to be bought. */
  readonly shopping: readonly Purchase[];
  /** What no engine of the plan takes, section by section. */
  readonly leftOver: readonly LeftOver[];
  /** The next engine that would not come together, with the least it lacks; absent where no more are wanted, or it could not be told. */
  readonly nextEngine?: NextEngine;
  /** Blocks that had to be built and are not: if the most engines are proven, they cannot be, alone or together. */
  readonly cannotBuild: readonly string[];
}

/** An amount of money, perhaps of no currency. */
export interface Cost {
  /** How much [-]. */
  readonly amount: number;
  /** The currency, if the shed has prices. */
  readonly currency?: string;
}

/** What is proven of a plan. */
export type Proof =
  | {
      /** No plan is better: in engines, then cost, then margin. */
      readonly kind: 'optimal';
    }
  | Unproven;

/** How far a proof came before it ended. */
export interface Unproven {
  /** Why it ended: the time was up, or the solver failed. Stages before this one are proven. */
  readonly kind: 'time limit' | 'solver failure';
  /** The stage that was not. */
  readonly stage: PlanStage;
  /** What the plan reaches there: engines, money, or a margin in metres; for the next engine the engines there are. */
  readonly found: number;
  /** What no plan can better there, in the same terms, as far as was proven. */
  readonly bound: number;
}

/** One engine of a plan. */
export interface Build {
  /** What it goes by: its block. */
  readonly name: string;
  /** The interchange group it is of, if its parts belong to one. */
  readonly interchange?: string;
  /** Every part it is made of, section by section. */
  readonly parts: readonly BuildPart[];
  /** Every bearing, mains first. */
  readonly bearings: readonly BuildBearing[];
  /** Every cylinder. */
  readonly cylinders: readonly BuildCylinder[];
  /** Crankshaft end play with the washers that set it, if both widths were measured. */
  readonly endPlay?: {
    /** The washers, by name, as often as they are used. */
    readonly washers: readonly string[];
    /** What it will be [m]. */
    readonly play: Length;
    /** How it stands to its limits. */
    readonly finding: Finding<'length'>;
  };
  /** Clearance of the valve stems in their guides, if both were measured. */
  readonly guides?: {
    /** What it will be [m]. */
    readonly clearance: Span<Length>;
    /** How it stands to its limits, if there are any. */
    readonly finding?: Finding<'length'>;
  };
  /** Work on its parts, each with what it costs. */
  readonly jobs: readonly BuildJob[];
  /** What machining and buying for it cost. */
  readonly cost: Cost;
}

/** A part that an engine takes. */
export interface BuildPart {
  /** Where in the shed it is. */
  readonly section: Section;
  /** What it is called. */
  readonly name: string;
  /** What it came from, if that is known. */
  readonly from?: string;
  /** How many of it the engine takes: pairs of shells, washers; otherwise 1 [-]. */
  readonly count: number;
  /** Whether it is bought. */
  readonly bought: boolean;
}

/** One bearing of an engine. */
export interface BuildBearing {
  /** Rods or mains. */
  readonly kind: 'rods' | 'mains';
  /** Crankshaft and journal. */
  readonly journal: string;
  /** Size of the journal when it is done [m]. */
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
  /** Size of the housing when it is done [m]. */
  readonly housingBore: Span<Length>;
  /** The shells, by name. */
  readonly shells: string;
  /** Measured wall of one half shell [m]. */
  readonly wall: Span<Length>;
  /** Diametral clearance [m]. */
  readonly clearance: Span<Length>;
  /** How its worse end stands to the limits. */
  readonly finding: Finding<'length'>;
}

/** One cylinder of an engine. */
export interface BuildCylinder {
  /** Which bore of the block. */
  readonly bore: string;
  /** Size of the bore when it is done [m]. */
  readonly boreSize: Span<Length>;
  /** Oversize of bore, piston and rings [m]. */
  readonly oversize: Length;
  /** Which piston of the set. */
  readonly piston: string;
  /** Diameter of the piston [m]. */
  readonly pistonSize: Span<Length>;
  /** Diametral clearance [m]. */
  readonly clearance: Span<Length>;
  /** How its worse end stands to the limits, if there are any. */
  readonly finding?: Finding<'length'>;
  /** What its rings are filed to: the maker's limits, or the rule of thumb. */
  readonly ringGap: BasedLimits<'length'>;
}

/** Work on one part of an engine. */
export interface BuildJob extends Job {
  /** Which part. */
  readonly part: string;
  /** Who does it. */
  readonly shop: string;
  /** What it costs. */
  readonly cost: Cost;
}

/** What one shop is to do. */
export interface ShopOrder {
  /** Which shop. */
  readonly shop: string;
  /** Every job, in the order of the engines. */
  readonly jobs: readonly BuildJob[];
  /** What they cost together. */
  readonly cost: Cost;
}

/** Something to buy. */
export interface Purchase {
  /** Where on the list of what can be bought it stands. */
  readonly section: Section;
  /** What it is called there. */
  readonly name: string;
  /** How many [-]. */
  readonly count: number;
  /** What they cost together. */
  readonly cost: Cost;
}

/** A part that no engine of the plan takes. */
export interface LeftOver {
  /** Where in the shed it is. */
  readonly section: Section;
  /** What it is called. */
  readonly name: string;
  /** How many are left [-]. */
  readonly count: number;
  /** Whether it was kept back, is past use, or is a spare. */
  readonly why: 'reserved' | 'scrap' | 'spare';
}

/** The engine that just failed, with the smallest set of parts that would complete it. */
export interface NextEngine {
  /** The parts it lacks. */
  readonly lacks: readonly LackingPart[];
}

/** Parts that an engine lacks. */
export interface LackingPart {
  /** Which section they belong to. */
  readonly section: Section;
  /** Shells: the bearings they are for. */
  readonly fits?: 'rods' | 'mains';
  /** Undersize or oversize that they must have, where they have one [m]. */
  readonly step?: Length;
  /** How many [-]. */
  readonly count: number;
}
