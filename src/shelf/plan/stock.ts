import { type Span, spanOf } from '../../judging/limits.js';
import type { Length } from '../../quantities/dimensions.js';
import type { Price } from '../price.js';
import type { Counted, Part, Parts, RingSetPart, Section, Shelf } from '../shelf.js';
import { readyBlock } from '../triage/ready-block.js';
import { readyCrankshaft } from '../triage/ready-crankshaft.js';
import { readyHead, readyRods, readyWhole } from '../triage/ready-others.js';
import type { Job } from '../triage/triage-types.js';
import type { Way } from '../triage/ways.js';
import { inThousandths, type PricedJob, priced, totalOf } from './money.js';

/** A way to make a part ready, with what it costs [thousandths]. */
export interface PricedWay extends Omit<Way, 'jobs'> {
  readonly jobs: readonly PricedJob[];
  readonly cost: number;
}

/** Parts that are alike in all that matters to a plan. */
export interface Kind<R> {
  readonly section: Section;
  /** The parts, in the order of the shelf. */
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

/** One entry of the shelf. */
export interface Member {
  readonly name: string;
  readonly from?: string;
  readonly count: number;
  /** Price of one, if it is bought [thousandths]. */
  readonly price?: number;
}

/** Everything that engines can be built of, alike parts together. */
export interface Stock {
  readonly blocks: readonly Kind<{
    readonly bores: readonly PricedWay[];
    /** Empty where any would do. */
    readonly housings: readonly Span<Length>[];
    readonly thrustWidth?: Length;
    readonly places: readonly string[];
    readonly housingPlaces: readonly string[];
  }>[];
  readonly crankshafts: readonly Kind<{
    readonly rods: readonly PricedWay[];
    readonly mains: readonly PricedWay[];
    readonly thrustWidth?: Length;
    readonly rodPlaces: readonly string[];
    readonly mainPlaces: readonly string[];
  }>[];
  readonly rods: readonly Kind<{
    /** Empty where any would do. */
    readonly housings: readonly Span<Length>[];
    readonly places: readonly string[];
  }>[];
  readonly pistonSets: readonly Kind<{
    readonly step: Length;
    /** Empty where any would do. */
    readonly sizes: readonly Span<Length>[];
    readonly places: readonly string[];
  }>[];
  readonly ringSets: readonly Kind<{
    readonly step: Length;
    readonly rings: NonNullable<RingSetPart['rings']>;
  }>[];
  readonly shells: readonly Kind<{
    readonly fits: 'rods' | 'mains';
    readonly step: Length;
    readonly wall: Span<Length>;
  }>[];
  readonly thrustWashers: readonly Kind<{ readonly thickness: Length }>[];
  readonly heads: readonly Kind<{ readonly guide?: Span<Length> }>[];
  readonly valveSets: readonly Kind<{ readonly stem?: Span<Length> }>[];
}

/** What of a shelf may be used. */
export interface StockOptions {
  readonly buying: boolean;
  readonly reserved: readonly string[];
  readonly mustBuild: readonly string[];
}

/** Sorts a shelf and what can be bought into kinds, leaving out what is past use or kept back. */
export function stockOf(shelf: Shelf, options: StockOptions): Stock {
  const { engine, units, machining = [] } = shelf;
  const ways = (all: readonly Way[]): readonly PricedWay[] =>
    all.flatMap((way) => {
      const jobs = priced(way.jobs, machining);
      return jobs ? [{ ...way, jobs, cost: totalOf(jobs) }] : [];
    });
  const kinds = <S extends Section, R>(
    section: S,
    ready: (part: Parts[S][number]) => Usable<R> | undefined,
  ) => kindsOf(shelf, section, options, ready);

  return {
    blocks: kinds('blocks', (part) => {
      const { ready } = readyBlock(part, engine, units);
      const bores = ways(ready?.bores ?? []);
      if (ready === undefined || bores.length === 0) return undefined;
      return {
        repairs: ready.repairs,
        ready: {
          bores,
          housings: ready.housings,
          ...(part.thrustWidth !== undefined && { thrustWidth: part.thrustWidth }),
          places: part.bores.map(({ name }) => name),
          housingPlaces: part.mainHousings?.map(({ name }) => name) ?? [],
        },
      };
    }),
    crankshafts: kinds('crankshafts', (part) => {
      const { ready } = readyCrankshaft(part, engine, units);
      const [rods, mains] = [ways(ready?.rods ?? []), ways(ready?.mains ?? [])];
      if (ready === undefined || rods.length === 0 || mains.length === 0) return undefined;
      return {
        repairs: ready.repairs,
        ready: {
          rods,
          mains,
          ...(part.thrustWidth !== undefined && { thrustWidth: part.thrustWidth }),
          rodPlaces: part.rodJournals.map(({ name }) => name),
          mainPlaces: part.mainJournals?.map(({ name }) => name) ?? [],
        },
      };
    }),
    rods: kinds('rods', (part) => {
      const { ready } = readyRods(part, engine);
      const places = part.rods.map(({ name }) => name);
      return ready && { repairs: ready.repairs, ready: { housings: ready.housings, places } };
    }),
    pistonSets: kinds('pistonSets', (part) =>
      whole('pistonSets', part, {
        step: part.oversize,
        sizes: part.pistons.map(({ diameter }) => spanOf(diameter)),
        places: part.pistons.map(({ name }) => name),
      }),
    ),
    ringSets: kinds('ringSets', (part) =>
      whole('ringSets', part, { step: part.oversize, rings: part.rings ?? [] }),
    ),
    shells: kinds('shells', (part) =>
      whole('shells', part, {
        fits: part.fits,
        step: part.undersize,
        wall: spanOf(part.wall),
      }),
    ),
    thrustWashers: kinds('thrustWashers', (part) =>
      whole('thrustWashers', part, { thickness: part.thickness }),
    ),
    heads: kinds('heads', (part) => {
      const { ready } = readyHead(part, engine);
      const guide = part.guideBore === undefined ? {} : { guide: spanOf(part.guideBore) };
      return ready && { repairs: ready.repairs, ready: guide };
    }),
    valveSets: kinds('valveSets', (part) =>
      whole('valveSets', part, part.stem === undefined ? {} : { stem: spanOf(part.stem) }),
    ),
  };
}

/** What a part offers once its repairs are done. */
interface Usable<R> {
  readonly repairs: readonly Job[];
  readonly ready: R;
}

function whole<R>(section: Section, part: Part, offers: R): Usable<R> | undefined {
  const { ready } = readyWhole(section, part);
  return ready && { repairs: ready.repairs, ready: offers };
}

function kindsOf<S extends Section, R>(
  shelf: Shelf,
  section: S,
  { buying, reserved, mustBuild }: StockOptions,
  readyPart: (part: Parts[S][number]) => Usable<R> | undefined,
): readonly Kind<R>[] {
  const own = (shelf[section] ?? []) as readonly Parts[S][number][];
  const offered = (buying ? (shelf.toBuy?.[section] ?? []) : []) as readonly (Parts[S][number] & {
    readonly price: Price;
  })[];
  const kinds = new Map<string, { members: Member[]; kind: Omit<Kind<R>, 'members' | 'count'> }>();
  for (const part of [...own, ...offered]) {
    if (reserved.includes(part.name)) continue;
    const usable = readyPart(part);
    const repairs = usable && priced(usable.repairs, shelf.machining ?? []);
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
