// The types of mathjs are not imported. What is used of it has this shape, and so nothing here binds a project to
// one version of it, or to having it at all.

/** A unit of mathjs, with its value. */
export interface MathUnit {
  /** The value in base units; of a temperature, in its own degrees. */
  readonly value: unknown;
  /** What it is made of; one for `inch`, two for `N m`. */
  readonly units: readonly {
    /** The unit without its prefix. */
    readonly unit: {
      /** `m` in `mm`. */
      readonly name: string;
    };
    /** The prefix, an object with a name that may be empty; the types of mathjs say otherwise. */
    readonly prefix: unknown;
    /** 2 in `mm^2`. */
    readonly power: number;
  }[];
  /** The same in another unit. */
  to(name: string): MathUnit;
  /**
   * The number that it is in a unit.
   *
   * @param name - a unit of the same dimensions
   * @returns the number [-]
   */
  toNumber(name: string): number;
  /** Whether another is of the same dimensions. */
  equalBase(other: MathUnit): boolean;
  /** What it is made of, without a value: `N m`. */
  formatUnits(): string;
  /** As mathjs prints it. */
  toString(): string;
}

/** What is used of an instance of mathjs, as `create(all)` makes one. */
export interface MathInstance {
  /**
   * Makes a unit with a value.
   *
   * @param value - how many of it [-]
   * @param name - the name of the unit
   * @returns the unit
   */
  unit(value: number, name: string): MathUnit;
  /** Adds a unit to those that the instance knows. */
  createUnit(
    name: string,
    definition?: { definition?: string; aliases?: string[] },
    options?: { override?: boolean },
  ): unknown;
  /** The class of its units. */
  readonly Unit: {
    /** Whether there is a unit of that name. */
    isValuelessUnit(name: string): boolean;
  };
}

/** Tells a unit of mathjs, whichever version made it. */
export const isMathUnit = (value: unknown): value is MathUnit =>
  typeof value === 'object' &&
  value !== null &&
  (value as { readonly isUnit?: unknown }).isUnit === true &&
  'units' in value;
