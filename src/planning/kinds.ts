import type { Price } from '../reading/index.js';
import type { Core, Counted, Job, Part, Parts, Section, Shed } from '../shed/index.js';
import {
  groupsIn,
  ofPart,
  type Readiness,
  readyWhole,
  SECTIONS,
  thingsToMeasure,
  withTests,
} from '../shed/internal.js';
import { inThousandths, type PricedJob, priced, totalOf } from './money.js';
import { type OpenKind, openKindsIn } from './open-kind.js';
import { originsThatRan } from './ran.js';
import type { Testing } from './testing.js';

/** Parts that are the same to a plan. */
export interface Kind<R> extends OpenKind {
  readonly section: Section;
  /** The parts, in the order of the file. */
  readonly members: readonly Member[];
  /** The number of parts of this kind. */
  readonly count: number;
  /** The interchange groups it fits, those that its own supersede among them; absent if it fits all. */
  readonly interchange?: readonly string[];
  /** The names of the parts that it fits only with. */
  readonly onlyWith?: readonly string[];
  /** The cost of buying and repairing one [thousandths]. */
  readonly cost: number;
  /** Repairs and tests it needs in any case. */
  readonly repairs: readonly PricedJob[];
  /** Whether this block must be built. */
  readonly mustBuild: boolean;
  /** The part as an engine gets it. */
  readonly ready: R;
  /** Whether it is made to suit. */
  readonly made?: true;
  /** A missing part, of whatever size fits. */
  readonly lacking?: true;
}

/** One entry of the shed. */
export interface Member {
  readonly name: string;
  readonly from?: string;
  readonly count: number;
  /** The names of its rods or pistons, which do not matter to a plan. */
  readonly places: readonly string[];
  /** Price of one, if it is to be bought [thousandths]. */
  readonly price?: number;
  /** The part or the engine that it stays with where that costs nothing. */
  readonly belongsTo?: string;
  readonly make?: string;
  readonly homeMade?: true;
  /** What it is made of, if it is made to suit. */
  readonly material?: string;
  /** Whether the engine it is from ran. */
  readonly ran?: true;
}

/** Which parts of a shed may be used. */
export interface StockOptions {
  readonly buying: boolean;
  readonly reserved: readonly string[];
  readonly mustBuild: readonly string[];
  /** Whether parts count that were not measured, as if they turned out good. */
  readonly unknown?: boolean;
  /** The engine that each part is still in, by the name of the part. */
  readonly inCore?: ReadonlyMap<string, Core>;
}

/** A usable part, after its repairs. */
export interface Usable<R> {
  readonly repairs: readonly Job[];
  readonly ready: R;
  readonly places?: readonly string[];
  /** How many things of it are to be measured before it counts. */
  readonly unknown?: number;
}

/** How a part counts: as it is ready, or else as it may turn out to be where only measuring is wanting. */
export function standing<R>({
  ready,
  atBest,
  aside,
  because,
}: Readiness<R>): { readonly as: R; readonly unknown?: number } | undefined {
  if (ready) return { as: ready };
  return atBest && aside === 'undecided'
    ? { as: atBest, unknown: thingsToMeasure(because) }
    : undefined;
}

export function usableWhole<R>(
  section: Section,
  part: Part,
  shed: Shed,
  offers: R,
  places: readonly string[] = [],
): Usable<R> | undefined {
  const stands = standing(readyWhole(section, part, shed));
  if (stands === undefined) return undefined;
  const { as, ...unknown } = stands;
  return { repairs: as.repairs, ready: offers, places, ...unknown };
}

export function kindsOf<S extends Section, R>(
  shed: Shed,
  section: S,
  { buying, reserved, mustBuild, unknown = false, inCore }: StockOptions,
  testing: Testing,
  readyPart: (part: Parts[S][number]) => Usable<R> | undefined,
): readonly Kind<R>[] {
  const own = (shed[section] ?? []) as readonly Parts[S][number][];
  const offered = (buying ? (shed.toBuy?.[section] ?? []) : []) as readonly (Parts[S][number] & {
    readonly price: Price;
  })[];
  const ran = originsThatRan(shed);
  const groupsOf = groupsIn(shed);
  const mates = matesIn(shed);
  const openKindOf = openKindsIn(shed, inCore);
  const kinds = new Map<string, { members: Member[]; kind: Omit<Kind<R>, 'members' | 'count'> }>();
  for (const part of [...own, ...offered]) {
    if (reserved.includes(part.name) || isKeptBack(part)) continue;
    const usable = ofPart(shed, part, () => readyPart(part));
    if (usable?.unknown !== undefined && !unknown) continue;
    const repairs =
      usable &&
      priced(
        withTests(usable.repairs, testing(section, part, usable.repairs)),
        shed.machining ?? [],
      );
    if (usable === undefined || repairs === undefined) continue;
    const price = 'price' in part ? inThousandths(part.price as Price) : undefined;
    const interchange = groupsOf(section, part);
    const { name, from, onlyWith, belongsTo, make, homeMade } = part;
    const kind = {
      section,
      repairs,
      ready: usable.ready,
      cost: (price ?? 0) + totalOf(repairs),
      ...openKindOf(section, part, usable),
      ...(interchange !== undefined && { interchange: [...interchange].sort() }),
      ...(onlyWith !== undefined && { onlyWith: [...onlyWith].sort() }),
      // A block that must be built is a kind of its own.
      mustBuild: section === 'blocks' && mustBuild.includes(name),
    };
    const count = countOf(section, part, price !== undefined);
    // A lot that is to be measured as one is a kind of its own, and so is what is to keep company.
    const isLot = kind.unknown !== undefined && count > 1;
    const isAlone = kind.mustBuild || isLot || mates.has(name);
    const key = JSON.stringify([kind, price, isAlone && name]);
    const group = kinds.get(key) ?? { members: [] as Member[], kind };
    group.members.push({
      name,
      count,
      places: usable.places ?? [],
      ...(from !== undefined && { from }),
      ...(price !== undefined && { price }),
      ...(belongsTo !== undefined && { belongsTo }),
      ...(make !== undefined && { make }),
      ...(homeMade && { homeMade }),
      ...(from !== undefined && ran.has(from) && { ran: true as const }),
    });
    kinds.set(key, group);
  }
  return [...kinds.values()].map(({ members, kind }) => ({
    ...kind,
    members,
    count: members.reduce((sum, { count }) => sum + count, 0),
  }));
}

/** The parts that others fit only with. */
function matesIn(shed: Shed): ReadonlySet<string> {
  const parts = SECTIONS.flatMap((section): readonly Part[] => [
    ...(shed[section] ?? []),
    ...(shed.toBuy?.[section] ?? []),
  ]);
  return new Set(parts.flatMap(({ onlyWith }) => onlyWith ?? []));
}

/** Whether its owner keeps a part back, or has built it in. */
export const isKeptBack = ({ reserved, builtInto }: Part): boolean =>
  reserved !== undefined || builtInto !== undefined;

/** More than any plan takes. */
export const NO_LIMIT = 10_000;

/** Sections whose parts can be bought in any number. */
const SOLD_IN_ANY_NUMBER: readonly Section[] = [
  'pistonSets',
  'ringSets',
  'thrustWashers',
  'valveSets',
];

function countOf(
  section: Section,
  part: Part & Counted & { readonly pairs?: number },
  offered: boolean,
) {
  const named = part.pairs ?? part.count;
  if (named !== undefined) return named;
  return offered && SOLD_IN_ANY_NUMBER.includes(section) ? NO_LIMIT : 1;
}
