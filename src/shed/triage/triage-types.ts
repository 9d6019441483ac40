import type { GrindPlan } from '../../crankshaft/index.js';
import type { BorePlan } from '../../cylinders/index.js';
import type { Finding, Span } from '../../judging/index.js';
import type { Length, UnitSystem } from '../../quantities/index.js';
import type { Consequence, Fault } from '../faults.js';
import type { Section } from '../sections.js';
import type { Work } from '../works.js';

/** Every part of a shed with what is to become of it: data only, JSON as it is. */
export interface Triage {
  /** What the shed is called. */
  readonly shed: string;
  /** Units that the shed asks its report in. */
  readonly units: UnitSystem;
  /** Every part, section by section in the order of the file. */
  readonly parts: readonly TriagedPart[];
}

/**
 * What is to become of a part. `use as it is`; `machine`: its running surfaces are
 * ground or bored first; `use after`: it is repaired first, and perhaps machined;
 * `spare`: sound, but nothing in the shed goes with it; `scrap`.
 */
export type Disposition = 'use as it is' | 'machine' | 'use after' | 'spare' | 'scrap';

/** What was found of one part of the shed. */
export interface TriagedPart {
  /** Where in the shed it is. */
  readonly section: Section;
  /** What it is called on the bench. */
  readonly name: string;
  /** What it came from, if that is known. */
  readonly from?: string;
  /** How many there are, all alike [-]. */
  readonly count: number;
  /** What is to become of it. */
  readonly disposition: Disposition;
  /** What is done to it before it is used, at the smallest step that serves. */
  readonly jobs: readonly Job[];
  /** Everything that was judged of it. */
  readonly findings: readonly Finding<'length'>[];
  /** Why. */
  readonly because: readonly TriageReason[];
}

/** Work on one part. */
export interface Job {
  /** What is done. */
  readonly work: Work;
  /** What it is done to: journals, cylinders or housings by name; empty for the whole part. */
  readonly places: readonly string[];
  /** The undersize or oversize it is machined to [m]. */
  readonly step?: Length;
  /** What every place must measure then [m]. */
  readonly to?: Span<Length>;
}

/** Why a part is disposed of as it is, by its `kind`. */
export type TriageReason =
  | {
      /** Something is to be seen. */
      readonly kind: 'fault';
      /** What. */
      readonly fault: Fault;
      /** The journal or bore it was seen on; by default the whole part. */
      readonly place?: string;
      /** What follows. */
      readonly consequence: Consequence;
    }
  | {
      /** What its journals can be ground to. */
      readonly kind: 'journals';
      /** Rods or mains. */
      readonly journals: 'rods' | 'mains';
      /** The smallest step that serves them all, with its own reasons. */
      readonly plan: GrindPlan;
    }
  | {
      /** What its bores can be bored to. */
      readonly kind: 'bores';
      /** The smallest step that serves them all, with its own reasons. */
      readonly plan: BorePlan;
    }
  | {
      /** A housing is outside its limits, or its shells have turned in it. */
      readonly kind: 'housing';
      /** Which one. */
      readonly place: string;
      /** Its bore against the limits, if there are any: then it can be resized to them. */
      readonly finding?: Finding<'length'>;
    }
  | {
      /** A head's face is too far from flat. */
      readonly kind: 'face';
      /** How far, against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** No shop on the list does the work. */
      readonly kind: 'no shop';
      /** What is wanted. */
      readonly work: Work;
    }
  | {
      /** Nothing in the shed, nor among what can be bought, goes with it. */
      readonly kind: 'fits nothing';
      /** The section that should have gone with it. */
      readonly section: Section;
    };
