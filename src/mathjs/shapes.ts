import type { Dimension } from '../quantities/index.js';

/** Objects that have these fields; a name that ends in a question mark may be left out. */
export interface FieldsShape {
  readonly fields: Readonly<Record<string, ValueShape>>;
}

/** What a value looks like, as far as units need to know. */
export type ValueShape =
  | Dimension
  /** A quantity of a dimension that the call leaves open. */
  | 'quantity'
  | 'number'
  | 'text'
  | 'truth'
  | 'function'
  /** A unit of this library. */
  | 'unit'
  | 'anything'
  /** A type that others share, by its name. */
  | `#${string}`
  | { readonly list: ValueShape }
  | { readonly each: ValueShape }
  | { readonly oneOf: readonly (string | number | boolean)[] }
  | { readonly either: readonly ValueShape[] }
  | FieldsShape;

/** What a function takes. */
export interface Parameter {
  readonly name: string;
  readonly shape: ValueShape;
  /** Whether it may be left out. */
  readonly optional?: boolean;
}

/** What a function takes and gives, as the compiler knows it. */
export interface Signature {
  /** The entry point it stands in. */
  readonly room: string;
  readonly takes: readonly Parameter[];
  readonly gives: ValueShape;
  /** The first sentence of its documentation. */
  readonly says: string;
}

/** What a constant of the library is, as the compiler knows it. */
export interface ConstantSignature {
  /** The entry point it stands in. */
  readonly room: string;
  readonly is: ValueShape;
  /** The first sentence of its documentation. */
  readonly says: string;
}
