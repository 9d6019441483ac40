import type { PlanOptions } from '../../../src/shelf/plan/plan-types.js';
import type { Shelf } from '../../../src/shelf/shelf.js';
import { orders, pistonWays, ringWays, shellWays, thrustWays, topWays } from './brute-fits.js';
import { type BlockWay, blockWays, crankWays } from './brute-parts.js';
import { rodWays, spanOf } from './brute-rods.js';
import { search } from './brute-search.js';
import { repairsOf, type Stock, stockOf, taking, thousandths, workCost } from './brute-stock.js';
import { bestWays, everyWay, NOTHING, together, type Way } from './brute-ways.js';

/** The best that a shelf makes. */
export interface BruteAnswer {
  readonly engines: number;
  /** Machining and buying, in thousandths. */
  readonly cost: number;
  /** Smallest margin, in nanometres; undefined if no clearance is judged. */
  readonly margin: number | undefined;
}

/** The best builds of a small shelf by trying everything. Blocks that must be built are not heeded. */
export function bruteForce(shelf: Shelf, options: PlanOptions = {}): BruteAnswer {
  const stock = stockOf(shelf, options);
  const cap = options.mostPerEngine ? thousandths(options.mostPerEngine) : Infinity;
  const engines = enginesByBlock(shelf, stock).map((ways) =>
    ways.filter(({ cost }) => cost <= cap),
  );
  const best = search(engines, Object.values(stock), options.atMost ?? Infinity);
  return { ...best, margin: best.margin === Infinity ? undefined : best.margin };
}

/** Every engine that each block can be built up to, on its own. */
export function enginesByBlock(shelf: Shelf, stock: Stock): readonly (readonly Way[])[] {
  const { rodJournals, mainJournals, rodsPerJournal = 1 } = shelf.engine;
  const tops = topWays(shelf, headWays(shelf, stock.heads), stock.valveSets);
  const rods = rodWays(shelf, stock.rods);
  const cranks = stock.crankshafts.flatMap((bin) => crankWays(shelf, bin));
  const bottoms = cranks.map((crank) => {
    const { step, sizes } = crank.rods;
    const journals = { step, sizes: sizes.flatMap((size) => Array(rodsPerJournal).fill(size)) };
    const ways = rods.flatMap((rod) =>
      orders(rod.housings).flatMap((housings) =>
        joined(rod, shellWays(stock.shells, 'rods', rodJournals, journals, housings)),
      ),
    );
    return { crank, ways: bestWays(joined(crank, ways)) };
  });
  const builtOn = (block: BlockWay): readonly Way[] => {
    const upper = bestWays(
      everyWay([
        [block],
        pistonWays(shelf, stock.pistonSets, block),
        ringWays(shelf, stock.ringSets, block),
        tops,
      ]),
    );
    if (upper.length === 0) return [];
    return bottoms.flatMap(({ crank, ways }) => {
      const { mains, part } = crank;
      const mainShells = mainJournals
        ? shellWays(stock.shells, 'mains', mainJournals, mains, block.housings)
        : [NOTHING];
      const washers = thrustWays(
        shelf,
        stock.thrustWashers,
        block.part.thrustWidth,
        part.thrustWidth,
      );
      return everyWay([upper, ways, mainShells, washers]);
    });
  };
  return stock.blocks.map((bin) => bestWays(blockWays(shelf, bin).flatMap(builtOn)));
}

const joined = (one: Way, ways: readonly Way[]) => ways.flatMap((way) => together(one, way) ?? []);

/** Every head, skimmed where it must be. */
function headWays(shelf: Shelf, bins: Stock['heads']) {
  const most = shelf.engine.headFlatness?.max ?? Infinity;
  return bins.flatMap((bin) => {
    const { flatness = 0, guideBore } = bin.part;
    const skimmed = flatness > most + 1e-9 || repairsOf('heads', bin.part).has('skim head');
    const work = workCost(shelf, 'skim head', skimmed ? 1 : 0);
    if (work === undefined) return [];
    const way = taking(bin);
    return [
      {
        way: { ...way, cost: way.cost + work },
        ...(guideBore !== undefined && { guideBore: spanOf(guideBore) }),
      },
    ];
  });
}
