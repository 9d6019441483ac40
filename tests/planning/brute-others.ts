import { needing } from '../support/needing.js';
import type { Engine } from './brute-engines.js';
import { type Bin, type Stock, taking } from './brute-stock.js';
import { bestWays, everyWay, type Way } from './brute-ways.js';
import type { Shed } from './full.js';

/** For every kind of other part that an engine needs, every choice of so many of it. */
export function otherWays(
  { engine }: Shed,
  bins: Stock['otherParts'],
): readonly (readonly Way[])[] {
  const { alsoNeeds = needing('head', 'valve set') } = engine;
  return alsoNeeds
    .filter(({ part }) => part !== 'head' && part !== 'valve set')
    .map(({ part: kind, count }) => {
      const right = bins.filter(({ part }) => part.kind === kind);
      const choices = Array.from({ length: count }, () => right.map(taking));
      return bestWays(everyWay(choices)).filter(({ takes }) =>
        right.every((bin) => takes.filter((id) => id === bin.id).length <= bin.count),
      );
    });
}

/** An engine without the ways in which a part is without all that it fits only with: blocks and crankshafts. */
export function inCompany(engine: Engine, stock: Stock): Engine {
  const bins = new Map(
    Object.values(stock).flatMap((all: readonly Bin[]) => all.map((bin) => [bin.id, bin.part])),
  );
  const fixed = engine[0]?.[0]?.takes ?? [];
  const holds = ({ takes }: Way) => {
    const parts = [...fixed, ...takes].flatMap((id) => bins.get(id) ?? []);
    return parts.every(
      ({ onlyWith }) => onlyWith?.some((mate) => parts.some(({ name }) => name === mate)) ?? true,
    );
  };
  return engine.map((ways) => ways.filter(holds));
}
