import type { Span } from '../judging/index.js';
import { shifted } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { Section, Shed } from '../shed/index.js';
import { needsOf } from '../shed/internal.js';
import { otherKinds } from './brief.js';
import type { Kind } from './kinds.js';
import { stepsFor } from './steps-for.js';
import type { PricedWay, Stock } from './stock.js';

/** Adds to a stock as many missing parts of every kind as could be needed. */
export function withLacking(stock: Stock, shed: Shed, engines: number): Stock {
  const { engine } = shed;
  const needed = needsOf(shed);
  const { rodJournals, mainJournals, bores, cylinders, mains } = engine;
  const rodSteps = stepsFor(shed, 'rodJournals');
  const mainSteps = mainJournals ? stepsFor(shed, 'mainJournals') : [];
  const boreSteps = stepsFor(shed, 'bores');
  const lacking = <R>(section: Section, ready: R): Kind<R> => ({
    section,
    members: [],
    count: engines * Math.max(1, cylinders, mains),
    cost: 0,
    repairs: [],
    mustBuild: false,
    ready,
    lacking: true,
  });
  const finished = (
    steps: readonly Length[],
    standard: Span<Length>,
    sign: 1 | -1,
    places: number,
  ) =>
    steps.map((step): PricedWay => {
      const size = shifted(standard, sign * step);
      return { step, sizes: Array.from({ length: places }, () => size), jobs: [], cost: 0 };
    });
  const journals = cylinders / (engine.rodsPerJournal ?? 1);
  const shells = (fits: 'rods' | 'mains') => (step: Length) =>
    lacking('shells', { fits, step, wall: { min: 0 as Length, max: 0 as Length } });
  return {
    blocks: [
      ...stock.blocks,
      lacking('blocks', {
        bores: finished(boreSteps, bores.standard, 1, cylinders),
        housings: [],
        places: [],
        housingPlaces: [],
      }),
    ],
    crankshafts: [
      ...stock.crankshafts,
      lacking('crankshafts', {
        rods: finished(rodSteps, rodJournals.standard, -1, journals),
        mains:
          mains > 0 && mainJournals
            ? finished(mainSteps, mainJournals.standard, -1, mains)
            : [{ step: 0 as Length, sizes: [], jobs: [], cost: 0 }],
        rodPlaces: [],
        mainPlaces: [],
      }),
    ],
    rods: [...stock.rods, lacking('rods', { housings: [] })],
    pistonSets: [
      ...stock.pistonSets,
      ...boreSteps.map((step) => lacking('pistonSets', { step, sizes: [] })),
    ],
    ringSets: [
      ...stock.ringSets,
      ...boreSteps.map((step) => lacking('ringSets', { step, rings: [] })),
    ],
    shells: [
      ...stock.shells,
      ...rodSteps.map(shells('rods')),
      ...(mains > 0 ? mainSteps.map(shells('mains')) : []),
    ],
    thrustWashers: [...stock.thrustWashers, lacking('thrustWashers', { thickness: 0 as Length })],
    heads: [...stock.heads, lacking('heads', {})],
    valveSets: [...stock.valveSets, lacking('valveSets', {})],
    otherParts: [
      ...stock.otherParts,
      ...otherKinds(needed).map(({ part, count }) => ({
        ...lacking('otherParts', { of: part }),
        count: engines * count,
      })),
    ],
  };
}
