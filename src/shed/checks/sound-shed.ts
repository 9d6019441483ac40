import type { MeasuredRingGap } from '../../cylinders/index.js';
import type { Span } from '../../judging/index.js';
import type { Gaps, Price } from '../../reading/index.js';
import { SECTIONS, type Section } from '../sections.js';
import type { BorePlace, HousingPlace, JournalPlace, Parts, PistonPlace, Shed } from '../shed.js';

/** Values that are read as a whole or not at all. */
type Whole = string | number | undefined | Span<number> | Price | MeasuredRingGap;

/** The fields of journals, bores, housings and pistons, which are read as a whole too. */
type PlaceField = keyof JournalPlace | keyof BorePlace | keyof HousingPlace | keyof PistonPlace;

/** The part of a value that could be read: fields may be missing, and lists may have gaps. */
export type Sound<T> = T extends Whole
  ? T
  : 'source' extends keyof T
    ? T
    : T extends readonly unknown[]
      ? Gaps<Sound<T[number]>>
      : [keyof T] extends [PlaceField]
        ? T
        : { readonly [K in keyof T]?: Sound<T[K]> | undefined };

/** The part of a shed that could be read. */
export type SoundShed = Sound<Shed>;

/** A part and its path. */
export interface Placed<P> {
  readonly path: string;
  readonly part: P;
}

/** Every part of a section, in the shed and to buy, as far as it could be read. */
export function partsIn<S extends Section>(
  shed: SoundShed,
  section: S,
): readonly Placed<Sound<Parts[S][number]>>[] {
  return [
    ...placed(shed[section] ?? [], section),
    ...placed(shed.toBuy?.[section] ?? [], `toBuy.${section}`),
  ] as readonly Placed<Sound<Parts[S][number]>>[];
}

/** The items of a list that could be read, each with its path. */
export function placed<P>(list: Gaps<P>, path: string): readonly Placed<P>[] {
  return list.flatMap((part, i) => (part === undefined ? [] : [{ path: `${path}[${i}]`, part }]));
}

/** Every price, with its path. */
export function pricesIn(shed: SoundShed): readonly Placed<Price>[] {
  const offers = SECTIONS.flatMap((section) =>
    placed<{ readonly price?: Price | undefined }>(shed.toBuy?.[section] ?? [], `toBuy.${section}`),
  );
  const { shells = [], thrustWashers = [], sleeves = [] } = shed.toMake ?? {};
  const made = [
    ...placed(shells, 'toMake.shells'),
    ...placed(thrustWashers, 'toMake.thrustWashers'),
    ...placed(sleeves, 'toMake.sleeves'),
  ];
  return [...placed(shed.machining ?? [], 'machining'), ...offers, ...made].flatMap(
    ({ path, part }) =>
      part.price === undefined ? [] : [{ path: `${path}.price`, part: part.price }],
  );
}
