import type { Batch } from './draft.js';
import type { Kind } from './kinds.js';
import type { Taken, UseOf } from './pile.js';
import type { Stock } from './stock.js';

/** A part of a section, taken by an engine. */
export type Of<S extends keyof Stock> = Taken<Stock[S][number]>;

/** A rod on its journal, with its shells. */
export interface RodBearing {
  readonly rods: Of<'rods'>;
  /** Which rod of the set. */
  readonly rod: number;
  /** Which journal of the crankshaft. */
  readonly journal: number;
  readonly shells: Of<'shells'>;
}

/** One engine: the part for each place. */
export interface Assembly {
  readonly batch: Batch;
  readonly crankshaft: Of<'crankshafts'>;
  readonly mainWay: UseOf<'mains'>['way'];
  readonly rodWay: UseOf<'rod journals'>['way'];
  readonly block: Of<'blocks'>;
  readonly boreWay: UseOf<'block'>['way'];
  /** The shells of each main. */
  readonly mains: readonly Of<'shells'>[];
  readonly rods: readonly RodBearing[];
  readonly pistons: Of<'pistonSets'>;
  readonly rings: Of<'ringSets'>;
  readonly washers?: readonly Of<'thrustWashers'>[];
  readonly head?: Of<'heads'>;
  readonly valves?: Of<'valveSets'>;
  /** The other parts that an engine needs, one after the other. */
  readonly others?: readonly Of<'otherParts'>[];
}

/** The parts of an engine; a set of rods is one part. */
export function partsTaken(assembly: Assembly): readonly Taken<Kind<unknown>>[] {
  const { block, crankshaft, rods, pistons, rings, mains, washers, head, valves } = assembly;
  return [
    block,
    crankshaft,
    ...rodParts(rods),
    pistons,
    rings,
    ...mains,
    ...rods.map(({ shells }) => shells),
    ...(washers ?? []),
    ...(head ? [head] : []),
    ...(valves ? [valves] : []),
    ...(assembly.others ?? []),
  ];
}

/** The rods as parts; a set is one part. */
export function rodParts(rods: Assembly['rods']): readonly Of<'rods'>[] {
  return [...new Map(rods.map((each) => [each.rods.member, each.rods])).values()];
}

/** The cost of machining and purchases for an engine, as far as it is assembled [thousandths]. */
export function assemblyCost(assembly: Partial<Assembly>): number {
  const { block, crankshaft, pistons, rings, washers = [], head, valves, others = [] } = assembly;
  const { boreWay, mainWay, rodWay, rods = [], mains = [] } = assembly;
  const parts: readonly (Taken<Kind<unknown>> | undefined)[] = [
    ...[block, crankshaft, pistons, rings, head, valves, ...washers, ...mains, ...others],
    // A set of rods is one part, whatever the number of its rods.
    ...new Set(rods.map((each) => each.rods)),
    ...rods.map(({ shells }) => shells),
  ];
  const work = [boreWay, mainWay, rodWay];
  return (
    parts.reduce((sum, part) => sum + (part?.kind.cost ?? 0), 0) +
    work.reduce((sum, way) => sum + (way?.cost ?? 0), 0)
  );
}
