import type { MeasuredRingGap } from '../../cylinders/index.js';
import type { Span } from '../../judging/index.js';
import type { Gaps, Price } from '../../reading/index.js';
import { SECTIONS, type Section } from '../sections.js';
import type { BorePlace, HousingPlace, JournalPlace, Parts, PistonSetPart, Shed } from '../shed.js';

/** What is read whole or not at all. */
type Whole =
  | string
  | number
  | undefined
  | Span<number>
  | Price
  | JournalPlace
  | BorePlace
  | HousingPlace
  | PistonSetPart['pistons'][number]
  | MeasuredRingGap;

/** What of a value could be read: fields may be lost, and lists may have gaps. */
export type Sound<T> = T extends Whole
  ? T
  : 'source' extends keyof T
    ? T
    : T extends readonly (infer Item)[]
      ? Gaps<Sound<Item>>
      : { readonly [K in keyof T]?: Sound<T[K]> | undefined };

/** What of a shed could be read. */
export type SoundShed = Sound<Shed>;

/** A part and where it stands. */
export interface Placed<P> {
  readonly path: string;
  readonly part: P;
}

/** Every part of a section, those that can be bought besides, as far as each could be read. */
export function partsIn<S extends Section>(
  shed: SoundShed,
  section: S,
): readonly Placed<Sound<Parts[S][number]>>[] {
  return [
    ...placed(shed[section] ?? [], section),
    ...placed(shed.toBuy?.[section] ?? [], `toBuy.${section}`),
  ] as readonly Placed<Sound<Parts[S][number]>>[];
}

/** The items of a list that could be read, each where it stands. */
export function placed<P>(list: Gaps<P>, path: string): readonly Placed<P>[] {
  return list.flatMap((part, i) => (part === undefined ? [] : [{ path: `${path}[${i}]`, part }]));
}

/** Every price, and where it stands. */
export function pricesIn(shed: SoundShed): readonly Placed<Price>[] {
  const offers = SECTIONS.flatMap((section) =>
    placed<{ readonly price?: Price | undefined }>(shed.toBuy?.[section] ?? [], `toBuy.${section}`),
  );
  return [...placed(shed.machining ?? [], 'machining'), ...offers].flatMap(({ path, part }) =>
    part.price === undefined ? [] : [{ path: `${path}.price`, part: part.price }],
  );
}
