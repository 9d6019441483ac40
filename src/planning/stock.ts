import { shellWall } from '../bearings/internal.js';
import type { Span } from '../judging/index.js';
import { guardSpan, spanOf } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { type Known, ringsFit } from '../reading/index.js';
import type { Job, Parts, RingSetPart, Section, Shed } from '../shed/index.js';
import {
  boresOf,
  mainHousingsOf,
  mainJournalsOf,
  pistonSizes,
  pistonsOf,
  readyBlock,
  readyCrankshaft,
  readyHead,
  readyRods,
  readyValves,
  rodJournalsOf,
  rodsOf,
  type Way,
} from '../shed/internal.js';
import {
  type Kind,
  kindsOf,
  type StockOptions,
  standing,
  type Usable,
  usableWhole,
} from './kinds.js';
import { type SleevesToMake, shellsToMake, washersToMake, withSleeves } from './made-stock.js';
import { type PricedJob, priced, totalOf } from './money.js';
import { testingOf, withOwnTests } from './testing.js';

/** A way to make a part ready, with its cost [thousandths]. */
export interface PricedWay extends Omit<Way, 'jobs'> {
  readonly jobs: readonly PricedJob[];
  readonly cost: number;
  /** The sleeves made for it, if any are on the list; their price is in its cost. */
  readonly sleeves?: SleevesToMake;
}

/** All usable parts, grouped by kind. */
export interface Stock {
  readonly blocks: readonly Kind<{
    readonly bores: readonly PricedWay[];
    /** Empty for a missing part, which may have any size; undefined where one was not measured. */
    readonly housings: readonly Known[];
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
    /** Empty for a missing part, which may have any size; undefined where one was not measured. */
    readonly housings: readonly Known[];
  }>[];
  readonly pistonSets: readonly Kind<{
    /** Absent if it is not known. */
    readonly step?: Length;
    /** Empty for a missing part, which may have any size; undefined where one was not measured. */
    readonly sizes: readonly Known[];
  }>[];
  readonly ringSets: readonly Kind<{
    /** Absent if it is not known. */
    readonly step?: Length;
    readonly rings: NonNullable<RingSetPart['rings']>;
  }>[];
  readonly shells: readonly Kind<{
    /** What was not measured is absent. */
    readonly fits?: 'rods' | 'mains';
    readonly step?: Length;
    readonly wall?: Span<Length>;
    /** The least and the most wall, if they are made to suit. */
    readonly toSuit?: Span<Length>;
  }>[];
  readonly thrustWashers: readonly Kind<{
    readonly thickness?: Length;
    /** The least and the most thickness, if it is made to suit. */
    readonly toSuit?: Span<Length>;
  }>[];
  readonly heads: readonly Kind<{ readonly guide?: Span<Length> }>[];
  readonly valveSets: readonly Kind<{ readonly stem?: Span<Length> }>[];
  readonly otherParts: readonly Kind<{ readonly of: string }>[];
}

const namesOf = (places: readonly { readonly name: string }[]) => places.map(({ name }) => name);

/** The repairs of a part that is used whole, and what of it is to be measured. */
const wholeOf = ({
  as,
  ...unknown
}: {
  readonly as: { readonly repairs: readonly Job[] };
  readonly unknown?: number;
}) => ({ repairs: as.repairs, ...unknown });

/** Sorts the parts of a shed and those to buy into kinds, without scrap and parts kept back. */
export function stockOf(shed: Shed, options: StockOptions): Stock {
  const { engine, machining = [] } = shed;
  const testing = testingOf(shed);
  const ways = (
    all: readonly Way[],
    jobsOf: (way: Way) => readonly Job[] = ({ jobs }) => jobs,
  ): readonly PricedWay[] =>
    all.flatMap((way) => {
      const jobs = priced(jobsOf(way), machining);
      return jobs ? [{ ...way, jobs, cost: totalOf(jobs) }] : [];
    });
  const kinds = <S extends Section, R>(
    section: S,
    ready: (part: Parts[S][number]) => Usable<R> | undefined,
  ) => kindsOf(shed, section, options, testing, ready);

  const made = options.buying ? shed : { ...shed, toMake: {} };
  return {
    blocks: kinds('blocks', (part) => {
      const stands = standing(readyBlock(part, shed));
      if (stands === undefined) return undefined;
      const { as: ready, ...unknown } = stands;
      const bores = ways(ready.bores, ({ jobs }) =>
        withOwnTests(testing, 'blocks', part, ready.repairs, jobs),
      ).flatMap((way) => withSleeves(way, shed, options.buying) ?? []);
      if (bores.length === 0) return undefined;
      return {
        ...unknown,
        repairs: ready.repairs,
        ready: {
          bores,
          housings: ready.housings,
          ...(part.thrustWidth !== undefined && { thrustWidth: part.thrustWidth }),
          places: namesOf(boresOf(part, engine)),
          housingPlaces: namesOf(mainHousingsOf(part, engine)),
        },
      };
    }),
    crankshafts: kinds('crankshafts', (part) => {
      const stands = standing(readyCrankshaft(part, shed));
      if (stands === undefined) return undefined;
      const { as: ready, ...unknown } = stands;
      const [rods, mains] = [ways(ready.rods), ways(ready.mains)];
      if (rods.length === 0 || mains.length === 0) return undefined;
      return {
        ...unknown,
        repairs: ready.repairs,
        ready: {
          rods,
          mains,
          ...(part.thrustWidth !== undefined && { thrustWidth: part.thrustWidth }),
          rodPlaces: namesOf(rodJournalsOf(part, engine)),
          mainPlaces: namesOf(mainJournalsOf(part, engine)),
        },
      };
    }),
    rods: kinds('rods', (part) => {
      const stands = standing(readyRods(part, shed));
      if (stands === undefined) return undefined;
      const { as, ...unknown } = stands;
      const places = namesOf(rodsOf(part, engine));
      return { ...unknown, repairs: as.repairs, ready: { housings: as.housings }, places };
    }),
    pistonSets: kinds('pistonSets', (part) => {
      const pistons = pistonsOf(part, engine);
      const sizes = pistonSizes(part, shed);
      const step = part.oversize === undefined ? {} : { step: part.oversize };
      return usableWhole('pistonSets', part, shed, { ...step, sizes }, namesOf(pistons));
    }),
    ringSets: kinds('ringSets', (part) => {
      const { oversize, rings = [] } = part;
      const bore = (engine.bores.standard.min + (oversize ?? 0)) as Length;
      // Impossible rings are refused here, where their set is still known.
      ringsFit(rings, [{ min: bore, max: bore }], engine);
      const step = oversize === undefined ? {} : { step: oversize };
      return usableWhole('ringSets', part, shed, { ...step, rings });
    }),
    shells: [
      ...kinds('shells', (part) => {
        const { fits, undersize, wall } = part;
        return usableWhole('shells', part, shed, {
          ...(fits !== undefined && { fits }),
          ...(undersize !== undefined && { step: undersize }),
          ...(wall !== undefined && { wall: guardSpan('part.wall', wall, shellWall) }),
        });
      }),
      ...shellsToMake(made),
    ],
    thrustWashers: [
      ...kinds('thrustWashers', (part) => {
        const { thickness } = part;
        return usableWhole(
          'thrustWashers',
          part,
          shed,
          thickness === undefined ? {} : { thickness },
        );
      }),
      ...washersToMake(made),
    ],
    heads: kinds('heads', (part) => {
      const stands = standing(readyHead(part, shed));
      const guide = part.guideBore === undefined ? {} : { guide: spanOf(part.guideBore) };
      return stands && { ...wholeOf(stands), ready: guide };
    }),
    valveSets: kinds('valveSets', (part) => {
      const stands = standing(readyValves(part, shed));
      const stem = part.stem === undefined ? {} : { stem: spanOf(part.stem) };
      return stands && { ...wholeOf(stands), ready: stem };
    }),
    otherParts: kinds('otherParts', (part) =>
      usableWhole('otherParts', part, shed, { of: part.kind }),
    ),
  };
}
