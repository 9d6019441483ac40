import {
  type Length,
  type Limits,
  oilClearanceSpan,
  pistonClearanceSpan,
  recommendedOilClearance,
  ringGapIn,
  type Span,
} from 'crankwright';
import type { JournalKind } from '../../src/reading/engine-kind.js';
import { needing } from '../support/needing.js';
import { type Guard, type Guards, roomIn } from './brute-guard.js';
import type { BlockWay, Journals } from './brute-parts.js';
import { spanOf } from './brute-rods.js';
import { type Bin, type Stock, taking } from './brute-stock.js';
import { bestWays, everyWay, NOTHING, together, type Way } from './brute-ways.js';
import type { Shed, ShellPart } from './full.js';

/** A way to fit what fits with so much room; none where it does not fit. */
const fitted = (way: Way, room: number): readonly Way[] =>
  room < -1e-9 ? [] : [{ ...way, margins: room === Infinity ? [] : [Math.round(room * 1e9) + 0] }];

/** Steps are compared to a hundredth of a millimetre. */
const sameStep = (a: Length, b: Length) => Math.abs(a - b) < 1e-5;

/** Every order of a list. */
export function orders<T>(list: readonly T[]): readonly (readonly T[])[] {
  if (list.length === 0) return [[]];
  return list.flatMap((first, i) =>
    orders([...list.slice(0, i), ...list.slice(i + 1)]).map((rest) => [first, ...rest]),
  );
}

/** Every choice of shells for journals, each in its housing. */
export function shellWays(
  bins: readonly Bin<ShellPart>[],
  kind: 'rods' | 'mains',
  sheet: JournalKind,
  { step, sizes }: Journals,
  housings: readonly Span<Length>[],
  guard: Guard | undefined,
): readonly Way[] {
  const right = bins.filter(
    ({ part }) => part.fits === kind && (isMade(part) || sameStep(part.undersize, step)),
  );
  const choices = sizes.map((journal, i) =>
    right.flatMap((bin) => {
      const [housingBore, shellWall] = [
        housings[i],
        bin.part.wall as typeof bin.part.wall | undefined,
      ];
      // What was not measured may be of the size that fits.
      if (!housingBore || !shellWall || !journal) return fitted(taking(bin), Infinity);
      const usual = recommendedOilClearance(journal.max).limits;
      const { min, max } = sheet.oilClearance ?? usual;
      // A limit that is not given is the usual one, if that leaves any clearance.
      const least = min ?? Math.min(usual.min ?? 0, max ?? Infinity);
      const most = max ?? Math.max(usual.max ?? 0, least);
      const wall = isMade(bin.part)
        ? wallToMake(shellWall, middle(housingBore) - middle(journal) - (least + most) / 2)
        : shellWall;
      const clearance = oilClearanceSpan({ housingBore, shellWall: wall, journal });
      return fitted(taking(bin), roomIn(clearance, { min, max } as Limits<Length>, guard));
    }),
  );
  return bestWays(everyWay(choices).filter((way) => isInStock(way, right)));
}

/** Whether shells are made to suit: then their wall is the least and the most they can have, and they are for any step. */
const isMade = (part: ShellPart): boolean => !('undersize' in part);
const middle = ({ min, max }: Span<Length>) => (min + max) / 2;

/** Half of what two walls must fill, as near as it can be made. */
const wallToMake = (wall: ShellPart['wall'], both: number): Length => {
  const { min, max } = wall as Span<Length>;
  return Math.min(Math.max(both / 2, min), max) as Length;
};

/** Whether a way takes no more from any bin than there is. */
const isInStock = ({ takes }: Way, bins: readonly Bin[]) =>
  bins.every(({ id, count }) => takes.filter((taken) => taken === id).length <= count);

/** Every choice of pistons for a block, each in the bore where all leave the most room. */
export function pistonWays(
  shed: Shed,
  bins: Stock['pistonSets'],
  block: BlockWay,
  { hole }: Guards,
): readonly Way[] {
  const { pistonClearance = {} } = shed.engine.bores;
  const right = bins.filter(({ part }) => sameStep(part.oversize, block.step));
  return bestWays(
    right.flatMap((bin) =>
      orders(bin.part.pistons).flatMap((pistons) => {
        const rooms = pistons.map(({ diameter }, i) => {
          const bore = block.bores[i];
          if (!bore || !diameter) return Infinity;
          return roomIn(pistonClearanceSpan({ bore, piston: diameter }), pistonClearance, hole);
        });
        const cylinders = rooms.map((room) => fitted(NOTHING, room));
        return everyWay([[taking(bin)], ...cylinders]);
      }),
    ),
  );
}

/** Every ring set for a block. */
export function ringWays(shed: Shed, bins: Stock['ringSets'], block: BlockWay): readonly Way[] {
  const { max } = shed.engine.bores.ringGap ?? {};
  const isOpen = block.bores.some((bore) => !bore);
  const bore = (isOpen ? 0 : Math.min(...block.bores.map(({ min }) => min))) as Length;
  const close = (rings: Stock['ringSets'][number]['part']['rings'] = []) =>
    max === undefined ||
    isOpen ||
    rings.every(({ gap, measuredIn }) => ringGapIn({ gap, measuredIn, bore }) <= max + 1e-9);
  return bins
    .filter(({ part }) => sameStep(part.oversize, block.step) && close(part.rings))
    .map(taking);
}

/** Every stack of up to three washers that sets the end play, or nothing where none is to be set. */
export function thrustWays(
  shed: Shed,
  bins: Stock['thrustWashers'],
  inBlock: Length | undefined,
  ofCrank: Length | undefined,
  guards: Guards,
): readonly Way[] {
  const { endPlay } = shed.engine;
  if (endPlay === undefined || inBlock === undefined || ofCrank === undefined) return [NOTHING];
  const play = ofCrank - inBlock;
  const measured = bins.filter(({ part }) => typeof part.thickness === 'number');
  const made = bins
    .filter((bin) => !measured.includes(bin))
    .flatMap((bin) => {
      const { min, max } = bin.part.thickness as unknown as Span<Length>;
      const { min: least = 0, max: most = least } = endPlay;
      const thickness = Math.min(Math.max(play - (least + most) / 2, min), max);
      const left = (play - thickness) as Length;
      const isRoom = left > 0 && roomIn({ min: left, max: left }, endPlay, guards.endPlay) >= -1e-9;
      return isRoom ? [taking(bin)] : [];
    });
  const stacks = [[], ...measured.flatMap((a, i) => stacksFrom(measured.slice(i), a))];
  const ways = stacks.flatMap((stack) => {
    const left = stack.reduce((rest, { part }) => rest - part.thickness, play) as Length;
    if (roomIn({ min: left, max: left }, endPlay, guards.endPlay) < -1e-9) return [];
    return everyWay(stack.map((bin) => [taking(bin)]));
  });
  return bestWays([...made, ...ways].filter((way) => isInStock(way, bins)));
}

/** Stacks of up to three that begin with one, and go on with it or a later one. */
function stacksFrom(
  bins: Stock['thrustWashers'],
  first: Stock['thrustWashers'][number],
): readonly Stock['thrustWashers'][] {
  return [
    [first],
    ...bins.flatMap((second, j) => [
      [first, second],
      ...bins.slice(j).map((third) => [first, second, third]),
    ]),
  ];
}

/** Every head with its valves, as far as an engine needs them. */
export function topWays(
  shed: Shed,
  heads: readonly { readonly way: Way; readonly guideBore?: Span<Length> }[],
  valveSets: Stock['valveSets'],
  { hole }: Guards,
): readonly Way[] {
  const { alsoNeeds = needing('head', 'valve set'), guideClearance } = shed.engine;
  const isNeeded = (what: string) => alsoNeeds.some(({ part }) => part === what);
  const [needsHead, needsValves] = [isNeeded('head'), isNeeded('valve set')];
  if (!needsHead) return needsValves ? valveSets.map(taking) : [NOTHING];
  if (!needsValves) return heads.map(({ way }) => way);
  return heads.flatMap(({ way, guideBore }) =>
    valveSets.flatMap((bin) => {
      const both = together(way, taking(bin));
      if (!guideClearance || !guideBore || bin.part.stem === undefined) return [both];
      const stem = spanOf(bin.part.stem);
      const clearance = { min: guideBore.min - stem.max, max: guideBore.max - stem.min };
      return fitted(both, roomIn(clearance as Span<Length>, guideClearance, hole));
    }),
  );
}
