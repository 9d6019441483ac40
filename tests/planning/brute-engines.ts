import { repairsOf, testsOf } from './brute-faults.js';
import { orders, pistonWays, ringWays, shellWays, thrustWays, topWays } from './brute-fits.js';
import type { Guards } from './brute-guard.js';
import { inCompany, otherWays } from './brute-others.js';
import { blockWays, crankWays } from './brute-parts.js';
import { rodWays, spanOf } from './brute-rods.js';
import { type Bin, mendCost, type Stock, taking, testsCost, worksCost } from './brute-stock.js';
import { bestWays, NOTHING, together, type Way } from './brute-ways.js';
import type { Shed } from './full.js';

/**
 * An engine whose block, crankshaft and rods are chosen, with their steps. What
 * else it takes is chosen layer by layer, one way of each; no bin is in two layers.
 */
export type Engine = readonly (readonly Way[])[];

/** Every engine of one interchange group, by the id of its block. */
export function enginesOn(
  shed: Shed,
  stock: Stock,
  history: Shed,
  guards: Guards,
): ReadonlyMap<number, readonly Engine[]> {
  const bottoms = bottomsOf(shed, stock, history, guards);
  const tops = bestWays(
    topWays(shed, headWays(shed, stock.heads, history), stock.valveSets, guards),
  );
  const others = otherWays(shed, stock.otherParts);
  const { mainJournals } = shed.engine;
  const engines = stock.blocks.map((bin) => {
    const onIt = blockWays(shed, bin, history).flatMap((block) => {
      const pistons = pistonWays(shed, stock.pistonSets, block, guards);
      const rings = ringWays(shed, stock.ringSets, block);
      return bottoms.map(({ crank, fixed, rodShells }): Engine => {
        const widths = [block.part.thrustWidth, crank.part.thrustWidth] as const;
        const mainShells = mainJournals
          ? shellWays(stock.shells, 'mains', mainJournals, crank.mains, block.housings, guards.oil)
          : [NOTHING];
        const washers = thrustWays(shed, stock.thrustWashers, ...widths, guards);
        const engine = [
          [together(block, fixed)],
          pistons,
          rings,
          rodShells,
          mainShells,
          washers,
          tops,
        ];
        return inCompany([...engine, ...others], stock);
      });
    });
    const whole = onIt.filter((engine) => engine.every((ways) => ways.length > 0));
    return [bin.id, whole.map((engine) => withStrangers(engine, bin, stock))] as const;
  });
  return new Map(engines);
}

/** An engine whose ways count the parts that are not from where its block is from. */
function withStrangers(engine: Engine, block: Stock['blocks'][number], stock: Stock): Engine {
  const from = new Map(
    Object.values(stock).flatMap((bins: readonly Bin[]) =>
      bins.map(({ id, part }) => [id, part.from] as const),
    ),
  );
  const isStranger = (id: number) => from.get(id) !== block.part.from;
  return engine.map((ways) =>
    ways.map((way) => ({ ...way, strangers: way.takes.filter(isStranger).length })),
  );
}

/** Every crankshaft with rods, and the shells that go between. */
function bottomsOf(shed: Shed, stock: Stock, history: Shed, { oil }: Guards) {
  const { rodJournals, rodsPerJournal = 1 } = shed.engine;
  const rods = rodWays(shed, stock.rods, history);
  const cranks = stock.crankshafts.flatMap((bin) => crankWays(shed, bin, history));
  return cranks.flatMap((crank) => {
    const { step, sizes } = crank.rods;
    const journals = { step, sizes: sizes.flatMap((size) => Array(rodsPerJournal).fill(size)) };
    return rods.map((rod) => ({
      crank,
      fixed: together(crank, rod),
      rodShells: bestWays(
        orders(rod.housings).flatMap((housings) =>
          shellWays(stock.shells, 'rods', rodJournals, journals, housings, oil),
        ),
      ),
    }));
  });
}

/** Every head, mended, skimmed and recut where it must be. */
function headWays(shed: Shed, bins: Stock['heads'], history: Shed) {
  const most = shed.engine.headFlatness?.max ?? Infinity;
  return bins.flatMap((bin) => {
    const { flatness = 0, guideBore } = bin.part;
    const repairs = repairsOf('heads', bin.part);
    const skimmed = flatness > most + 1e-9 || repairs.has('skim head');
    const work = worksCost(shed, [
      ['skim head', skimmed ? 1 : 0],
      ['recut seats', repairs.has('recut seats') ? 1 : 0],
    ]);
    const mend = mendCost(shed, repairs.has('mend') ? 1 : 0);
    if (work === undefined || mend === undefined) return [];
    const tests = testsOf('heads', bin.part, skimmed || repairs.size > 0, history);
    const way = taking(bin);
    const pieces = [skimmed, repairs.has('recut seats'), repairs.has('mend')].filter(Boolean);
    return [
      {
        way: {
          ...way,
          cost: way.cost + work + mend + testsCost(shed, tests),
          work: pieces.length,
        },
        ...(guideBore !== undefined && { guideBore: spanOf(guideBore) }),
      },
    ];
  });
}
