import type { Span } from '../../judging/index.js';
import type { Length } from '../../quantities/index.js';
import type { Fault } from '../faults.js';
import type { Condition } from '../part.js';
import type { Section } from '../sections.js';

/** What changed between two files of one shed. */
export interface ShedDifference {
  /** The parts that differ, section by section. */
  readonly parts: readonly PartDifference[];
  /** The engines not taken apart that differ. */
  readonly cores: readonly CoreDifference[];
  /** The fields beside the parts that differ, by their paths: `engine.rodJournals.minimum`. */
  readonly fields: readonly string[];
}

/** How one part differs. */
export type PartDifference =
  | {
      /** It came to the shed or to what can be bought, or it is there no more. */
      readonly kind: 'come' | 'gone';
      /** Its section. */
      readonly section: Section;
      /** Its name. */
      readonly name: string;
      /** How many [-]. */
      readonly count: number;
      /** Whether it is a part to buy. */
      readonly toBuy: boolean;
    }
  | {
      /** It is the same part in another state, or under another name. */
      readonly kind: 'changed';
      /** Its section. */
      readonly section: Section;
      /** Its name now. */
      readonly name: string;
      /** Its name before, if it has another one now. */
      readonly renamedFrom?: string;
      /** Whether it is a part to buy. */
      readonly toBuy: boolean;
      /** What was not known before and is now: `rod 1`, `thrustWidth`. */
      readonly measured: readonly string[];
      /** What was known before and is not now. */
      readonly notKnown: readonly string[];
      /** What reads differently, by so little that nothing was cut. */
      readonly readAgain: readonly string[];
      /** What was cut to another size. */
      readonly machined: readonly MachinedPlace[];
      /** What its history says was done since, in order. */
      readonly done: readonly string[];
      /** Faults that it or a place of it has now and had not. */
      readonly faultsCome: readonly Fault[];
      /** Faults that it or a place of it had and has no more. */
      readonly faultsGone: readonly Fault[];
      /** How many there were and are, if that differs. */
      readonly count?: {
        /** Before [-]. */
        readonly before: number;
        /** Now [-]. */
        readonly after: number;
      };
      /** Its other fields that differ. */
      readonly fields: readonly string[];
    };

/** How an engine that is not taken apart differs, or was not before. */
export type CoreDifference =
  | {
      /** It came, or it is there no more. */
      readonly kind: 'come' | 'gone';
      /** Its name. */
      readonly name: string;
    }
  | {
      /** It is there no more, and parts that came are from it. */
      readonly kind: 'taken apart';
      /** Its name. */
      readonly name: string;
      /** The parts that came. */
      readonly parts: readonly string[];
    }
  | {
      /** It is there still. */
      readonly kind: 'changed';
      /** Its name. */
      readonly name: string;
      /** The parts that came and are from it. */
      readonly parts: readonly string[];
      /** Its condition, if that differs. */
      readonly condition?: {
        /** Before; absent if it was not known. */
        readonly before?: Condition;
        /** Now; absent if it is not known. */
        readonly after?: Condition;
      };
      /** What its history says was done since, in order. */
      readonly done: readonly string[];
      /** Its other fields that differ. */
      readonly fields: readonly string[];
    };

/** A place that was cut to another size. */
export interface MachinedPlace {
  /** Which. */
  readonly place: string;
  /** From its smallest to its largest reading, before [m]. */
  readonly before: Span<Length>;
  /** The same now [m]. */
  readonly after: Span<Length>;
}
