import { gapOf, marginOf, own } from '../reading/index.js';
import type { Brief } from './brief.js';

/**
 * Every margin that a clearance of any build can have, smallest first [nm]. Those of the bearings
 * come from an earlier model.
 */
export function clearanceMargins({
  engine,
  stock,
  fits,
}: Pick<Brief, 'engine' | 'stock' | 'fits'>): readonly number[] {
  const { limits: piston } = own(engine.bores.pistonClearance);
  const { limits: guide } = own(engine.guideClearance);
  const bores = distinct(
    stock.blocks.flatMap(({ ready }) =>
      ready.bores.flatMap(({ sizes }) => sizes.flatMap((size) => size ?? [])),
    ),
  );
  const pistons = distinct(
    stock.pistonSets.flatMap(({ ready }) => ready.sizes.flatMap((size) => size ?? [])),
  );
  const guides = distinct(stock.heads.flatMap(({ ready }) => ready.guide ?? []));
  const stems = distinct(stock.valveSets.flatMap(({ ready }) => ready.stem ?? []));
  const all = [
    ...fits.margins(),
    ...(piston
      ? bores.flatMap((bore) => {
          const band = fits.bandOf('piston clearance', bore.max);
          return pistons.map((each) => marginOf(gapOf(bore, each), piston, band));
        })
      : []),
    ...(guide
      ? guides.flatMap((bore) => {
          const band = fits.bandOf('guide clearance', bore.max);
          return stems.map((each) => marginOf(gapOf(bore, each), guide, band));
        })
      : []),
  ].filter((margin) => margin !== undefined);
  return [...new Set(all)].sort((a, b) => a - b);
}

/** The distinct sizes. */
function distinct<T>(sizes: readonly T[]): readonly T[] {
  return [...new Map(sizes.map((size) => [JSON.stringify(size), size])).values()];
}
