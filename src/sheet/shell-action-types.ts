import type { UndersizeMismatch } from '../bearings/index.js';
import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';

/** Shells found on a journal of another undersize. */
export interface WrongShells {
  /** Take them out: running the engine would wreck it. */
  readonly kind: 'wrong shells';
  /** The bearing they were found in. */
  readonly bearing: string;
  /** Their name on the shelf. */
  readonly shells: string;
  /** The undersize they are made for [m]. */
  readonly undersize: Length;
  /** The undersize that the journal is ground to [m]. */
  readonly journalUndersize: Length;
  /** How the clearance shows it. */
  readonly explanation: UndersizeMismatch;
}

/** Housings that were not measured: no shells are chosen for them, and no clearance is judged. */
export interface BareHousing {
  /** Measure them first. */
  readonly kind: 'measure the housing';
  /** Which bearings. */
  readonly bearings: readonly string[];
}

/** When shells are needed: in any case, or by what is decided on the grinding. */
export type WhenShells = 'in any case' | 'if ground' | 'if none is ground';

/** The shelf has too few shells that fit. */
export interface BuyShells {
  /** Get them. */
  readonly kind: 'buy shells';
  /** Which journals they are for. */
  readonly journals: 'rods' | 'mains';
  /** The undersize to buy [m]. */
  readonly undersize: Length;
  /** How many pairs [-]. */
  readonly pairs: number;
  /** Whether it depends on the grinding. */
  readonly when: WhenShells;
  /** Whether the journals are to be ground to that undersize. */
  readonly isGround: boolean;
  /** What shells must have that are made for each bearing, if any wall does. */
  readonly walls: readonly {
    /** Which bearing. */
    readonly bearing: string;
    /** What the wall of every half must lie between [m]. */
    readonly wall: Span<Length>;
  }[];
  /** Journals found ground to that undersize in shells of another: they are read again first. */
  readonly hangsOn?: readonly string[];
}
