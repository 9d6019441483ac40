import type { Price } from '../reading/index.js';
import type { Counted, Job, Part, Parts, Section, Shed } from '../shed/index.js';
import { ofPart, readyWhole } from '../shed/internal.js';
import { inThousandths, type PricedJob, priced, totalOf } from './money.js';

/** Parts that are alike in all that matters to a plan. */
export interface Kind<R> {
  readonly section: Section;
  /** The parts, in the order of the file. */
  readonly members: readonly Member[];
  /** How many there are of them all. */
  readonly count: number;
  /** The groups it interchanges with; absent if it goes into all. */
  readonly interchange?: readonly string[];
  /** What buying one and repairing it costs [thousandths]. */
  readonly cost: number;
  /** Repairs that it needs in any case. */
  readonly repairs: readonly PricedJob[];
  /** Its block must be among those built. */
  readonly mustBuild: boolean;
  /** What it offers an engine. */
  readonly ready: R;
  /** It is not there: it stands for whatever part would fit. */
  readonly lacking?: true;
}

/** One entry of the shed. */
export interface Member {
  readonly name: string;
  readonly from?: string;
  readonly count: number;
  /** What its rods or pistons are called, which makes no difference to a plan. */
  readonly places: readonly string[];
  /** Price of one, if it is bought [thousandths]. */
  readonly price?: number;
}

/** What of a shed may be used. */
export interface StockOptions {
  readonly buying: boolean;
  readonly reserved: readonly string[];
  readonly mustBuild: readonly string[];
}

/** What a part offers once its repairs are done. */
export interface Usable<R> {
  readonly repairs: readonly Job[];
  readonly ready: R;
  readonly places?: readonly string[];
}

export function whole<R>(
  section: Section,
  part: Part,
  offers: R,
  places: readonly string[] = [],
): Usable<R> | undefined {
  const { ready } = readyWhole(section, part);
  return ready && { repairs: ready.repairs, ready: offers, places };
}

export function kindsOf<S extends Section, R>(
  shed: Shed,
  section: S,
  { buying, reserved, mustBuild }: StockOptions,
  readyPart: (part: Parts[S][number]) => Usable<R> | undefined,
): readonly Kind<R>[] {
  const own = (shed[section] ?? []) as readonly Parts[S][number][];
  const offered = (buying ? (shed.toBuy?.[section] ?? []) : []) as readonly (Parts[S][number] & {
    readonly price: Price;
  })[];
  const kinds = new Map<string, { members: Member[]; kind: Omit<Kind<R>, 'members' | 'count'> }>();
  for (const part of [...own, ...offered]) {
    if (reserved.includes(part.name)) continue;
    const usable = ofPart(shed, part, () => readyPart(part));
    const repairs = usable && priced(usable.repairs, shed.machining ?? []);
    if (usable === undefined || repairs === undefined) continue;
    const price = 'price' in part ? inThousandths(part.price as Price) : undefined;
    const { name, from, interchange } = part;
    const kind = {
      section,
      repairs,
      ready: usable.ready,
      cost: (price ?? 0) + totalOf(repairs),
      ...(interchange !== undefined && { interchange: [...interchange].sort() }),
      // A block that must be built is not like any other.
      mustBuild: section === 'blocks' && mustBuild.includes(name),
    };
    const key = JSON.stringify([kind, price, kind.mustBuild && name]);
    const group = kinds.get(key) ?? { members: [] as Member[], kind };
    group.members.push({
      name,
      count: countOf(section, part, price !== undefined),
      places: usable.places ?? [],
      ...(from !== undefined && { from }),
      ...(price !== undefined && { price }),
    });
    kinds.set(key, group);
  }
  return [...kinds.values()].map(({ members, kind }) => ({
    ...kind,
    members,
    count: members.reduce((sum, { count }) => sum + count, 0),
  }));
}

/** More of a thing that can be bought than any plan takes. */
const AS_MANY_AS_WANTED = 10_000;

/** Sections whose parts are bought off a list, not one by one. */
const BY_THE_DOZEN: readonly Section[] = ['pistonSets', 'ringSets', 'thrustWashers', 'valveSets'];

function countOf(
  section: Section,
  part: Part & Counted & { readonly pairs?: number },
  offered: boolean,
) {
  const named = part.pairs ?? part.count;
  if (named !== undefined) return named;
  return offered && BY_THE_DOZEN.includes(section) ? AS_MANY_AS_WANTED : 1;
}
