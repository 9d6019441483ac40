import type { GrindPlan } from '../../crankshaft/index.js';
import type { BorePlan } from '../../cylinders/index.js';
import type { Finding, Span } from '../../judging/index.js';
import type { Length, UnitSystem } from '../../quantities/index.js';
import type { Happening, HowRead } from '../../reading/index.js';
import type { Consequence, Fault } from '../faults.js';
import type { Owned } from '../part.js';
import type { Section } from '../sections.js';
import type { Work } from '../works.js';
import type { TriagedCore } from './core-types.js';
import type { Misread } from './misread-types.js';
import type { NeededTest } from './needed-test.js';
import type { NotJudged } from './not-judged-types.js';
import type { NotMeasured } from './not-measured-types.js';
import type { TooFar } from './too-far-types.js';

/** Every part of a shed with its disposition: plain data that JSON carries unchanged. */
export interface Triage {
  /** Name of the shed. */
  readonly shed: string;
  /** The units that the shed wants its report in. */
  readonly units: UnitSystem;
  /** Every part, section by section in the order of the file. */
  readonly parts: readonly TriagedPart[];
  /** Every engine that is not taken apart. */
  readonly cores: readonly TriagedCore[];
  /** How well the sizes were read. */
  readonly howRead: HowRead;
}

/**
 * What to do with a part.
 *
 * - `use as it is`: no fault is listed, and no reading is outside its limits. `notJudged` says what was not measured.
 * - `machine`: grind or bore its running surfaces first.
 * - `use after`: repair it first, and machine it if it has such jobs.
 * - `undecided`: a part that was not measured, or not enough; one with a reading that cannot be right, until that is read again; one past a limit by less than it
 *   is measured to; a bent crankshaft, until it is straight and measured; a rod, until it is known which bearing seized; a scored piston, until it is looked over.
 * - `not as it is`: kept aside, as no shop on the list can put it right.
 * - `spare`: usable, but nothing in the shed fits it.
 * - `scrap`.
 */
export type Disposition =
  | 'use as it is'
  | 'machine'
  | 'use after'
  | 'undecided'
  | 'not as it is'
  | 'spare'
  | 'scrap';

/** Findings on one part of the shed. */
export interface TriagedPart extends Pick<Owned, 'condition' | 'notes'> {
  /** Its section of the shed. */
  readonly section: Section;
  /** What an other part is. */
  readonly kind?: string;
  /** Its name on the bench. */
  readonly name: string;
  /** Where it came from, if that is known. */
  readonly from?: string;
  /** Whether it is home-made. */
  readonly homeMade?: true;
  /** How many there are, all alike [-]. */
  readonly count: number;
  /** What to do with it. */
  readonly disposition: Disposition;
  /** The work it needs before use, at the smallest step that serves. */
  readonly jobs: readonly Job[];
  /** The tests and measurements it needs before it is used. */
  readonly tests: readonly NeededTest[];
  /** All its findings. Empty if nothing of it was measured, or nothing has limits. */
  readonly findings: readonly Finding<'length'>[];
  /** Why. */
  readonly because: readonly TriageReason[];
  /** What of it no verdict is given on: what was not measured or has no limit, though nothing keeps it from use. */
  readonly notJudged: readonly NotJudged[];
}

/** Work on one part. */
export interface Job {
  /** The work. */
  readonly work: Work;
  /** Names of the journals, cylinders or housings it is done to; empty for the whole part. */
  readonly places: readonly string[];
  /** The undersize or oversize it is machined to [m]. */
  readonly step?: Length;
  /** Finished size of every place [m]. */
  readonly to?: Span<Length>;
}

/** A reason to measure a part again, as its readings do not tell what the work on it hangs on. */
export type AgainReason =
  | {
      /** A size is nearer to a limit than it is measured to. */
      readonly kind: 'measure again';
      /** The size against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** Sizes of journals or bores are nearer to a bound than they are measured to, and the work hangs on it. */
      readonly kind: 'measure sizes again';
      /** Which kind. */
      readonly of: 'rods' | 'mains' | 'bores';
      /** Which ones. */
      readonly places: readonly string[];
      /** The step that the doubt is about, if it is about one [m]. */
      readonly step?: Length;
    };

/** One reason for a disposition, by its `kind`. */
export type TriageReason =
  | {
      /** A visible fault. */
      readonly kind: 'fault';
      /** Which fault. */
      readonly fault: Fault;
      /** The journal or bore it is on; absent for the whole part. */
      readonly place?: string;
      /** Whether a test found it, rather than the eye. */
      readonly found?: 'by a test';
      /** Its consequence. */
      readonly consequence: Consequence;
    }
  | {
      /** Something happened to it that condemns it, unless tests have cleared it. */
      readonly kind: 'happened';
      /** What. */
      readonly what: Happening;
      /** Its consequence. */
      readonly consequence: Consequence;
    }
  | {
      /** The steps its journals can be ground to. */
      readonly kind: 'journals';
      /** Rods or mains. */
      readonly journals: 'rods' | 'mains';
      /** The smallest step that serves them all, with its own reasons. */
      readonly plan: GrindPlan;
      /** Journals that it grinds only to agree with the others; absent if there are none. */
      readonly sound?: readonly {
        /** Which one. */
        readonly name: string;
        /** The undersize that it is sound at by itself [m]. */
        readonly undersize: Length;
      }[];
      /** Whether rules of thumb alone ask for the grinding, past every limit known of another engine. */
      readonly byRule?: true;
      /** Whether that is only of those journals that were measured to the end. */
      readonly soFar?: true;
      /** Whether that holds only if a bent crankshaft comes back true. */
      readonly ifTrue?: true;
      /** The runout that a shop promises once the crankshaft is straight, which the plan counts with [m]. */
      readonly promised?: Length;
    }
  | Misread
  | {
      /** A bent crankshaft: how true its journals will run once it is straight is not known. */
      readonly kind: 'runout not known';
      /** The journal with the largest runout that was read while it was bent, if any was read. */
      readonly place?: string;
      /** That reading [m]. */
      readonly runout?: Length;
    }
  | {
      /** A crankshaft that nobody called bent, but that reads as bent. */
      readonly kind: 'reads as bent';
      /** The journal that tells most of it. */
      readonly place: string;
      /** Its runout against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** A bearing of its donor seized, and nobody has told which: it may be that of this rod. */
      readonly kind: 'which bearing seized';
      /** Whether tests have cleared the rod all the same. */
      readonly cleared?: true;
    }
  | {
      /** The steps its bores can be bored to. */
      readonly kind: 'bores';
      /** Whether that is only of those bores that were measured to the end. */
      readonly soFar?: true;
      /** Whether rules of thumb alone ask for the boring, past every limit known of another engine. */
      readonly byRule?: true;
      /** The smallest step that serves them all, with its own reasons. */
      readonly plan: BorePlan;
    }
  | {
      /** A housing is outside its limits, or shells have turned in it. */
      readonly kind: 'housing';
      /** Which one. */
      readonly place: string;
      /** Its bore against the limits, if there are any. */
      readonly finding?: Finding<'length'>;
    }
  | AgainReason
  | TooFar
  | NotMeasured
  | {
      /** The face of a head is not flat enough. */
      readonly kind: 'face';
      /** How far, against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** The margin of a valve is too thin. */
      readonly kind: 'margin';
      /** How thin, against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** No shop on the list offers the work. */
      readonly kind: 'no shop';
      /** The work. */
      readonly work: Work;
    }
  | {
      /** No part in the shed or to buy fits it. */
      readonly kind: 'fits nothing';
      /** The section without a part that fits it. */
      readonly section: Section;
    };
