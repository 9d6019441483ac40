import type { Ratio } from '../quantities/index.js';
import type { Happening } from '../reading/index.js';
import type { Fault } from './faults.js';
import type { DoneWork } from './works.js';

/** What every part has. */
export interface Part extends Owned {
  /** Its name on the bench; no two parts share a name. */
  readonly name: string;
  /** Where it came from, for example a donor. */
  readonly from?: string;
  /** The groups of engines it fits; by default all. */
  readonly interchange?: readonly string[];
  /** The older groups whose parts it supersedes: it fits their engines too. */
  readonly supersedes?: readonly string[];
  /** The newer groups that supersede its own: their parts fit its engines too. */
  readonly supersededBy?: readonly string[];
  /** The parts it fits only with: it goes into an engine that has one of them. */
  readonly onlyWith?: readonly string[];
  /** The part, or the engine not taken apart, that it stays with where that costs nothing. */
  readonly belongsTo?: string;
  /** Its visible faults. */
  readonly faults?: readonly Fault[];
  /** What happened to it, or to the engine it came from. */
  readonly happened?: readonly Happening[];
  /** Who made it, as you call them. */
  readonly make?: string;
  /** Whether it is home-made. */
  readonly homeMade?: true;
}

/** What its owner knows of a part without measuring it. */
export interface Owned extends Noted {
  /** The state it was found in. */
  readonly condition?: Condition;
  /** For whom, or why, it is kept back; a plan does not take it. */
  readonly reserved?: string;
  /** The engine it is built into; a plan does not take it. */
  readonly builtInto?: string;
  /** How likely it is good, as far as it was not measured [-]. */
  readonly odds?: Ratio;
  /** What was done to it. */
  readonly history?: readonly HistoryEntry[];
}

/** What an owner writes down. No calculation reads it. */
export interface Noted {
  /** Remarks. */
  readonly notes?: readonly string[];
  /** What happened, and when: a year, a year and month, or a day. */
  readonly dates?: Readonly<Record<string, string>>;
  /** Numbers and marks on it, stamped or cast. */
  readonly marks?: readonly string[];
  /** The names of files with photographs of it. */
  readonly photos?: readonly string[];
}

/** The state a part or an engine was found in. */
export interface Condition {
  /** It ran; it turns; it has seized; nobody has seen it. */
  readonly is: 'ran' | 'turns' | 'seized' | 'not seen';
  /** When: a year, a year and month, or a day. */
  readonly on?: string;
}

/** Something that was done to a part. */
export interface HistoryEntry {
  /** When: a year, a year and month, or a day. */
  readonly on?: string;
  /** What was done. */
  readonly what: string;
  /** Who did it. */
  readonly by?: string;
  /** The work of a shop: what was measured of those places before it no longer holds. */
  readonly done?: readonly DoneWork[];
  /** The fields of the part that it changed, as the file gave them before. */
  readonly before?: Readonly<Record<string, unknown>>;
}

/** An engine that is not taken apart. */
export interface Core extends Owned, Pick<Part, 'name' | 'from' | 'interchange' | 'happened'> {
  /** What it lacks: a section of the shed, or a kind of other part. */
  readonly lacks?: readonly string[];
}
