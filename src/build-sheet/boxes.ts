/** The boxes of one engine's build sheet, as a file to fill in: plain data, a record of work as `afterMachining` takes it. */
export interface EngineBoxes {
  /** The file with its JSON Schema, for an editor: `crankwright schema work > work.schema.json`. */
  readonly $schema: string;
  /** Version of the layout. */
  readonly version: 1;
  /** Name of the shed. */
  readonly shed: string;
  /** The engine of the plan. */
  readonly engine: string;
  /** The day, to fill in. */
  readonly on: string;
  /** Who measured, to fill in. */
  readonly by: string;
  /** To fill in once the engine is built: its name. Its parts are then marked as built into it. */
  readonly builtInto: string;
  /** The parts it takes. */
  readonly takes: readonly {
    /** Its name in the shed. */
    readonly name: string;
    /** How many of it [-]. */
    readonly count: number;
  }[];
  /** The sizes to measure. */
  readonly boxes: readonly SizeBox[];
  /** The clearances to check. */
  readonly checks: readonly CheckBox[];
}

/** A size to measure, with an empty reading. */
export interface SizeBox {
  /** Which part. */
  readonly part: string;
  /** Its journal, bore, housing or piston, or the field of the shed file for a size of the whole part. */
  readonly feature: string;
  /** How far along the journal or down the bore, as it was read before; empty to fill in. */
  readonly station?: string;
  /** Which way across. */
  readonly angle?: string;
  /** Where to measure a housing or shells. */
  readonly at?: string;
  /** What it should measure. */
  readonly shouldBe: string;
  /** What it may measure. */
  readonly mayBe: string;
  /** The reading, with its unit, to fill in. */
  readonly reading: string;
}

/** A clearance to check, with an empty reading. */
export interface CheckBox {
  /** Which clearance. */
  readonly what: string;
  /** Its limits. */
  readonly limits: string;
  /** The reading, with its unit, to fill in. */
  readonly reading: string;
}
