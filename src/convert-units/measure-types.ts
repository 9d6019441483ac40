import type { Dimension, SymbolOf } from '../quantities/index.js';
import type { MeasureSystem, unitWords } from './unit-words.js';

// The types of convert-units are not imported. Its measures have this shape, and so nothing here
// binds a project to one version of it, or to having it at all.

/** A unit as convert-units 3 takes it. */
export interface ExactUnit {
  /** What `describe`, `list` and `toBest` call it. */
  readonly name: {
    /** One of it, in words. */
    readonly singular: string;
    /** Several of it, in words. */
    readonly plural: string;
  };
  /** How many anchors one of it is: a whole number, wherever a double holds it [-]. */
  readonly to_anchor: number;
  /** Taken off after `to_anchor`; in anchors, and for temperatures only. */
  readonly anchor_shift?: number;
}

/** The families that the units of a dimension belong to. */
export type SystemOf<D extends Dimension> = (typeof unitWords)[SymbolOf<D>][0];

/** The units of a dimension that belong to a family. */
export type SymbolIn<D extends Dimension, Y extends MeasureSystem> = {
  [S in SymbolOf<D>]: (typeof unitWords)[S][0] extends Y ? S : never;
}[SymbolOf<D>];

/** How two families of a measure are joined. */
export interface SameAnchor {
  /** Both count in one anchor, which costs no rounding. */
  readonly ratio: 1;
}

/** The units of one dimension as convert-units 3 takes them, by family and symbol. */
export interface ExactMeasure<D extends Dimension> {
  /** The units, all counted in one anchor, whatever their family. */
  readonly systems: {
    readonly [Y in SystemOf<D>]: { readonly [S in SymbolIn<D, Y>]: ExactUnit };
  };
  /** The way from every family to every other. */
  readonly anchors: {
    readonly [Y in SystemOf<D>]: { readonly [Z in Exclude<SystemOf<D>, Y>]: SameAnchor };
  };
}

/** A measure for every dimension, under its name. */
export type ExactMeasures = { readonly [D in Dimension]: ExactMeasure<D> };
