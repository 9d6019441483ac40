import { NANOMETRE, shifted, spanOf } from '../../judging/internal.js';
import { accuracyOf, at20C, type Known } from '../../reading/index.js';
import { pistonsOf } from '../places-of.js';
import type { PistonSetPart } from '../shed.js';
import type { Misread } from './misread-types.js';
import type { Shop } from './ways.js';

/** The pistons that read as large as the bore they are made for, or larger: no piston is. */
export function pistonsTooLarge(
  { oversize, pistons = [] }: PistonSetPart,
  shop: Shop,
): readonly Misread[] {
  if (oversize === undefined) return [];
  const bore = shifted(shop.engine.bores.standard, oversize);
  return pistons.flatMap(({ name: place, diameter }): readonly Misread[] => {
    if (diameter === undefined) return [];
    const { max: size } = spanOf(at20C(diameter, 'pistons', accuracyOf(shop)));
    return size < bore.min - NANOMETRE
      ? []
      : [{ kind: 'as large as its bore', place, size, oversize, bore }];
  });
}

/** The sizes of the pistons of a set [m]; one that cannot be right is not known. */
export function pistonSizes(set: PistonSetPart, shop: Shop): readonly Known[] {
  const wrong = pistonsTooLarge(set, shop).map(({ place }) => place);
  return pistonsOf(set, shop.engine).map(({ name, diameter }) =>
    diameter === undefined || wrong.includes(name)
      ? undefined
      : spanOf(at20C(diameter, 'pistons', accuracyOf(shop))),
  );
}
