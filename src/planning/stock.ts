import { shellWall } from '../bearings/internal.js';
import type { Span } from '../judging/index.js';
import { guardSpan, spanOf } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { accuracyOf, at20C, ringsFit } from '../reading/index.js';
import type { Job, Parts, RingSetPart, Section, Shed } from '../shed/index.js';
import {
  readyBlock,
  readyCrankshaft,
  readyHead,
  readyRods,
  readyValves,
  type Way,
} from '../shed/internal.js';
import { type Kind, kindsOf, type StockOptions, type Usable, usableWhole } from './kinds.js';
import { type PricedJob, priced, totalOf } from './money.js';
import { testingOf, withOwnTests } from './testing.js';

/** A way to make a part ready, with its cost [thousandths]. */
export interface PricedWay extends Omit<Way, 'jobs'> {
  readonly jobs: readonly PricedJob[];
  readonly cost: number;
}

/** All usable parts, grouped by kind. */
export interface Stock {
  readonly blocks: readonly Kind<{
    readonly bores: readonly PricedWay[];
    /** Empty for a missing part, which may have any size. */
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
    /** Empty for a missing part, which may have any size. */
    readonly housings: readonly Span<Length>[];
  }>[];
  readonly pistonSets: readonly Kind<{
    readonly step: Length;
    /** Empty for a missing part, which may have any size. */
    readonly sizes: readonly Span<Length>[];
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

/** Sorts the parts of a shed and those to buy into kinds, without scrap and parts kept back. */
export function stockOf(shed: Shed, options: StockOptions): Stock {
  const { engine, machining = [] } = shed;
  const testing = testingOf(shed);
  const accuracy = accuracyOf(shed);
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

  return {
    blocks: kinds('blocks', (part) => {
      const { ready } = readyBlock(part, shed);
      if (ready === undefined) return undefined;
      const bores = ways(ready.bores, ({ jobs }) =>
        withOwnTests(testing, 'blocks', part, ready.repairs, jobs),
      );
      if (bores.length === 0) return undefined;
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
      const { ready } = readyCrankshaft(part, shed);
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
      const { ready } = readyRods(part, shed);
      const places = part.rods.map(({ name }) => name);
      return ready && { repairs: ready.repairs, ready: { housings: ready.housings }, places };
    }),
    pistonSets: kinds('pistonSets', (part) => {
      const sizes = part.pistons.map(({ diameter }) =>
        spanOf(at20C(diameter, 'pistons', accuracy)),
      );
      const places = part.pistons.map(({ name }) => name);
      return usableWhole('pistonSets', part, { step: part.oversize, sizes }, places);
    }),
    ringSets: kinds('ringSets', (part) => {
      const { oversize: step, rings = [] } = part;
      const bore = (engine.bores.standard.min + step) as Length;
      // Impossible rings are refused here, where their set is still known.
      ringsFit(rings, [{ min: bore, max: bore }], engine);
      return usableWhole('ringSets', part, { step, rings });
    }),
    shells: kinds('shells', (part) =>
      usableWhole('shells', part, {
        fits: part.fits,
        step: part.undersize,
        wall: guardSpan('part.wall', part.wall, shellWall),
      }),
    ),
    thrustWashers: kinds('thrustWashers', (part) =>
      usableWhole('thrustWashers', part, { thickness: part.thickness }),
    ),
    heads: kinds('heads', (part) => {
      const { ready } = readyHead(part, shed);
      const guide = part.guideBore === undefined ? {} : { guide: spanOf(part.guideBore) };
      return ready && { repairs: ready.repairs, ready: guide };
    }),
    valveSets: kinds('valveSets', (part) => {
      const { ready } = readyValves(part, shed);
      const stem = part.stem === undefined ? {} : { stem: spanOf(part.stem) };
      return ready && { repairs: ready.repairs, ready: stem };
    }),
  };
}
