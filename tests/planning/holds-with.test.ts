import { type Length, meanExpansion, sizeAt20C } from 'crankwright';
import { type PlanOptions, planBuilds, planReport } from 'crankwright/planning';
import { type Shed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { howItHolds } from '../../src/planning/how-it-holds.js';
import { accuracyOfShed } from '../../src/shed/accuracy-of-shed.js';
import { needing } from '../support/needing.js';
import { bruteForce } from './brute-force.js';
import { reached } from './reached.js';
import {
  block,
  crankshaft,
  eur,
  length,
  pistons,
  rings,
  shells,
  single,
  span,
  TENTH,
  two,
  withEngine,
} from './single-shed.js';

// Sizes are tenths of a thou. Chances are of the table of the normal distribution.

/** Instruments that read so well, in tenths of a thou; about 95 times in 100. */
const reading = (boreGauge: number, micrometer: number, wallGauge: number, depthGauge?: number) => {
  const within = (tenths: number) => ({ within: length(tenths) });
  return {
    instruments: {
      boreGauge: within(boreGauge),
      micrometer: within(micrometer),
      wallGauge: within(wallGauge),
      ...(depthGauge !== undefined && { depthGauge: within(depthGauge) }),
    },
  };
};

/** √(0.8² + 0.6²) = 1, of pistons; with two walls of 1.2, √(1 + 2.4²) = 2.6, of oil. */
const fine = reading(0.8, 0.6, 1.2);

/** What the planner makes of a shed; brute force makes the same of it. */
async function planOf(changes: Partial<Shed>, options: PlanOptions = {}) {
  const shed = { ...single, ...changes };
  const plan = await planBuilds(shed, options);
  expect(plan.proof).toEqual({ outcome: 'optimal' });
  expect(reached(plan)).toEqual(bruteForce(shed, options));
  return plan;
}

const nanometres = (tenths: number) => Math.round(tenths * TENTH);

describe('a plan whose clearances must hold with a chance', () => {
  it('takes margins after the guard band', async () => {
    // Oil 19 in 10 … 30, known to 1.3: 9 - 1.6449 * 1.3 = 6.8617.
    const plan = await planOf(fine, { holdsWith: 0.95 });
    expect(nanometres((plan.smallestMargin ?? NaN) / TENTH / 1e-9)).toBe(nanometres(6.8617));
    expect(plan.holdsWith).toBe(0.95);
    expect(reached(await planOf(fine)).margin).toBe(9 * TENTH);
  });

  it('takes what is more surely inside its limits, not what reads as further inside', async () => {
    const limits = { oilClearance: span(10, 50) };
    const groups = (name: string, bore: number, wall: number): Partial<Shed> => {
      const interchange = [name];
      return {
        blocks: [{ ...block(`block ${name}`, bore), interchange }],
        shells: [{ ...shells(`shells ${name}`, 0, wall, 1), interchange }],
      };
    };
    // Early: oil 17505 - 2 * 620 - 16248 = 17, 7 inside; piston 30002 - 29970 = 32, 12 inside.
    const early = groups('early', 30002, 620);
    // Late: oil 17505 - 2 * 618.5 - 16248 = 20, 10 inside; piston 29996 - 29970 = 26, 6 inside.
    const late = groups('late', 29996, 618.5);
    const both: Partial<Shed> = {
      ...withEngine({ rodJournals: { ...single.engine.rodJournals, ...limits } }),
      ...fine,
      blocks: [...(early.blocks ?? []), ...(late.blocks ?? [])],
      shells: [...(early.shells ?? []), ...(late.shells ?? [])],
    };
    const built = async (options: PlanOptions) =>
      (await planOf(both, { atMost: 1, ...options })).builds.map(({ name }) => name);
    expect(await built({})).toEqual(['block early']);
    // Three standard uncertainties: early 7 - 3.9 = 3.1, late 6 - 1.5 = 4.5.
    expect(await built({ holdsWith: 0.99865 })).toEqual(['block late']);
  });

  it('lets a clearance that is near both its limits hold against both at once', async () => {
    // 9 above the one and 11 below the other. Oil known to u: √(1 + 4 wall²) = 2u.
    const known = (u: number) => reading(0.8, 0.6, Math.sqrt(4 * u * u - 1) / 2);
    // u = 5.0: beyond 1.8 and 2.2 lie 0.0359 and 0.0139, together 0.0498.
    expect((await planOf(known(5), { holdsWith: 0.95 })).builds.length).toBe(1);
    // u = 5.1: beyond 1.765 and 2.157 lie 0.0388 and 0.0155, together 0.0543; each alone is less than 0.05.
    const plan = await planOf(known(5.1), { holdsWith: 0.95 });
    expect(plan.builds.length).toBe(0);
    expect(planReport(plan).replace(/\s+/g, ' ')).toContain(
      'no choice of parts makes a complete engine whose clearances each hold with a chance of 0.95 or more.',
    );
    // Shells between would do: 20 is 10 from either limit, beyond 1.961 lie 0.0249 and again 0.0249.
    expect(plan.nextEngine?.lacks).toEqual([
      { section: 'shells', fits: 'rods', step: 0, count: 1 },
    ]);
    // u = 5.2: the middle is 1.923 from either, beyond which lie 0.0272 and 0.0272: no shells do.
    const none = await planOf(known(5.2), { holdsWith: 0.95 });
    expect(none.nextEngine?.lacks).toEqual([]);
    expect(planReport(none)).toContain('No part completes one more engine');
  });

  it('asks it of the end play too, though washers set it', async () => {
    // 25000 - 23000 - 3 * 640 = 80 in 50 … 120, known to √(2 depth² + 0.6²) / 2.
    const packed = (depth: number): Partial<Shed> => ({
      ...withEngine({ endPlay: span(50, 120) }),
      ...reading(0.8, 0.6, 1.2, depth),
      blocks: [{ ...block('block A', 30003), thrustWidth: length(23000) }],
      crankshafts: [{ ...crankshaft('crankshaft A', 16248), thrustWidth: length(25000) }],
      thrustWashers: [{ name: 'washers', thickness: length(640), count: 3 }],
    });
    const count = async (depth: number) =>
      (await planOf(packed(depth), { holdsWith: 0.95 })).builds.length;
    // 20: 14.1 each, beyond 2.12 and 2.83 lie 0.017 and 0.002. 30: 21.2, beyond 1.41 alone 0.079.
    expect([await count(20), await count(30)]).toEqual([1, 0]);
  });

  it.each([0.5, 0.3, 1, 1.5, Number.NaN, '0.95' as never])('refuses %s', async (holdsWith) => {
    await expect(planBuilds({ ...single, ...fine }, { holdsWith })).rejects.toMatchObject({
      parameter: 'options.holdsWith',
    });
  });

  it('refuses what instruments that nobody described cannot show', async () => {
    const hintOf = async (changes: Partial<Shed>) => {
      try {
        await planBuilds({ ...single, ...changes }, { holdsWith: 0.95 });
      } catch (error) {
        expect(error).toMatchObject({ parameter: 'options.holdsWith' });
        return (error as { hint: string }).hint;
      }
      throw new Error('nothing was refused');
    };
    expect(await hintOf({})).toContain('instruments.boreGauge (bore gauge)');
    const hint = await hintOf({ instruments: { micrometer: { within: length(1) } } });
    expect(hint).toContain('instruments.wallGauge (wall gauge)');
    expect(hint).not.toContain('micrometer');
    // No end play is planned, so nothing is asked of a depth gauge.
    expect(hint).not.toContain('depthGauge');
  });
});

describe('what a plan wants measured once more', () => {
  // Two walls of 4.4721: oil known to √(1 + 80) / 2 = 4.5.
  const coarse = reading(0.8, 0.6, Math.sqrt(80) / 2);

  it('is what holds with less than 0.99, with its chance at both ends', async () => {
    const { near, allHold } = await planOf(coarse);
    expect(near.map(({ engine, of, place }) => [engine, of, place])).toEqual([
      ['block A', 'rods', 'rod journal'],
    ]);
    // 9 and 11 inside: beyond 2.000 and 2.444 lie 0.02275 and 0.00725.
    expect(near[0]?.holds).toBeCloseTo(0.97, 4);
    expect(near[0]?.measure).toEqual(['the journal', 'the housing', 'the shell walls']);
    // The piston is 12 and 13 inside, known to 0.5: no chance is lost on it.
    expect(allHold).toBeCloseTo(0.97, 4);
    expect((await planOf(fine)).near).toEqual([]);
  });

  it('names first what most money rests on', async () => {
    // Block B is 10 over; its pistons are bought for 20, and the other engine costs nothing.
    const shed: Partial<Shed> = {
      ...two,
      ...coarse,
      blocks: [block('block A', 30003), block('block B', 30103)],
      pistonSets: [pistons('piston A', 29970)],
      ringSets: [rings(1), { name: 'rings N', oversize: length(100) }],
      toBuy: {
        pistonSets: [{ ...pistons('piston N', 30070), oversize: length(100), price: eur(20) }],
      },
    };
    const { near, allHold } = await planOf(shed);
    expect(near.map(({ engine, atStake }) => [engine, atStake.amount])).toEqual([
      ['block B', 20],
      ['block A', 0],
    ]);
    // 10 either way: beyond 2.222 lie 0.01314, four times.
    expect(allHold).toBeCloseTo(1 - 4 * 0.01314, 4);
  });

  it('names a spare that would do instead, but none with a fault', async () => {
    // 10 … 60: shells of 619 leave 19, 9 above 10; of 615 leave 27, 17 above it.
    const wide = { ...single.engine.rodJournals, oilClearance: span(10, 60) };
    const there = [
      shells('near', 0, 619, 1),
      shells('for a ground journal', 100, 615, 1),
      shells('clear', 0, 615, 1),
    ];
    const shed: Shed = {
      ...single,
      ...withEngine({ rodJournals: wide }),
      ...coarse,
      shells: there,
    };
    const { builds } = await planBuilds(shed, { reserved: ['clear'] });
    const insteadOf = (faults: { faults?: readonly 'scored'[] }) => {
      const leftOver = there.slice(1).map(({ name }) => ({
        ...{ section: 'shells' as const, name, count: 1, why: 'spare' as const },
        ...(name === 'clear' && faults),
      }));
      return howItHolds(shed, builds, leftOver, accuracyOfShed(shed)).near[0]?.instead;
    };
    expect(insteadOf({})).toBe('clear');
    expect(insteadOf({ faults: ['scored'] })).toBeUndefined();
  });

  it('knows the spares of pistons, guides and end play, and what to measure of each', async () => {
    const there = {
      pistonSets: [pistons('piston A', 29970), pistons('loose', 29968), pistons('right', 29975)],
      valveSets: [
        { name: 'valves', stem: length(3126) },
        { name: 'thinner', stem: length(3116) },
      ],
      thrustWashers: [
        { name: 'washers', thickness: length(640), count: 3 },
        { name: 'thinner washer', thickness: length(635) },
      ],
    };
    const shed: Shed = {
      ...single,
      ...withEngine({
        bores: { ...single.engine.bores, pistonClearance: span(20, 36) },
        guideClearance: span(12, 40),
        endPlay: span(50, 120),
        alsoNeeds: needing('head', 'valve set'),
      }),
      // Pistons and stems known to √(4² + 3²) / 2 = 2.5; oil no worse; end play to √(2 * 18² + 3²) / 2 = 12.8.
      ...reading(4, 3, 0.1, 18),
      ...there,
      blocks: [{ ...block('block A', 30003), thrustWidth: length(23000) }],
      crankshafts: [{ ...crankshaft('crankshaft A', 16248), thrustWidth: length(25000) }],
      heads: [{ name: 'head A', guideBore: length(3140) }],
    };
    const spares = ['loose', 'right', 'thinner', 'thinner washer'];
    const { builds, leftOver } = await planBuilds(shed, { reserved: spares });
    const free = leftOver.map((part) => ({ ...part, why: 'spare' as const }));
    const { near } = howItHolds(shed, builds, free, accuracyOfShed(shed));
    // Pistons: 33, 3 below 36; those of 29975 leave 28, 8 inside. Stems: 14, 2 above 12; the others leave 24.
    // End play: 80, beyond 2.34 and 3.12 lie 0.0105; 85 is 35 from either limit, beyond 2.73 lie 0.0032 and 0.0032.
    expect(near.map(({ of, instead, measure }) => [of, instead, measure])).toEqual([
      ['guides', 'thinner', ['the guides', 'the stems']],
      ['cylinder', 'right', ['the bore', 'the piston']],
      [
        'end play',
        'thinner washer',
        [
          'the block over its thrust faces',
          'the crankshaft between its thrust faces',
          'the washers',
        ],
      ],
    ]);
    const text = planReport({ ...(await planBuilds(shed, { reserved: spares })), near });
    const flowing = text.replace(/\s+/g, ' ');
    expect(flowing).toContain('A spare set of pistons would do instead: right.');
    expect(flowing).toContain(
      'Measure the block over its thrust faces, the crankshaft between its thrust faces and the washers again.',
    );
  });

  it('does not ask for what is still to be bought or cut', async () => {
    const shed: Partial<Shed> = {
      ...coarse,
      shells: [],
      toBuy: { shells: [{ ...shells('new', 0, 619, 1), price: eur(5) }] },
    };
    const plan = await planOf(shed);
    expect(plan.near[0]?.measure).toEqual(['the journal', 'the housing']);
    const unread = plan.near.map((each) => ({ ...each, measure: [] }));
    expect(planReport({ ...plan, near: unread }).replace(/\s+/g, ' ')).toContain(
      'Nothing of it can be measured yet',
    );
  });

  it('counts a clearance only if all that reads it is described, and says of what is not', async () => {
    const { wallGauge: _, ...others } = coarse.instruments;
    const plan = await planOf({ instruments: others });
    expect(plan.notDescribed).toEqual(['wallGauge']);
    expect(plan.allHold).toBeCloseTo(1, 6);
    const text = planReport(plan).replace(/\s+/g, ' ');
    expect(text).toContain('Nobody said how well these measure: wall gauge.');
    expect(text).toContain('All the clearances that described instruments read hold together');
  });

  it('is not known where nobody said how well anything was measured, which is said once', async () => {
    const plan = await planOf({});
    expect([plan.near, plan.allHold]).toEqual([[], undefined]);
    const text = planReport(plan).replace(/\s+/g, ' ');
    expect(text.split('margins are of sizes as read').length).toBe(2);
    expect(text).not.toContain('MEASURE ONCE MORE');
  });
});

describe('pistons that were read warm', () => {
  const warm = (at: number): Partial<Shed> => ({
    // Bores of steel grow with the steel of the gauge.
    warmth: { parts: (293.15 + at) as never, pistons: 'cast piston alloy', bores: 'steel' },
  });
  const grown = (size: number, at: number) => {
    const temperature = (293.15 + at) as never;
    const { size: at20 } = sizeAt20C({
      size: length(size),
      part: { temperature, expansion: meanExpansion('cast piston alloy') },
      instrument: { temperature, expansion: meanExpansion('steel') },
    });
    return at20 as Length;
  };

  it('count in a plan as they are at 20 °C', async () => {
    const { builds } = await planBuilds({ ...single, ...warm(10) });
    const [cylinder] = builds[0]?.cylinders ?? [];
    expect(cylinder?.pistonSize.max).toBeCloseTo(grown(29970, 10), 12);
    expect(cylinder?.clearance.min).toBeCloseTo(length(30003) - grown(29970, 10), 10);
  });

  it('count in the triage as they are at 20 °C', () => {
    // 44 loose as read, in 20 … 45; 20 K warmer they are more than 45 loose at 20 °C.
    const shed = { ...single, pistonSets: [pistons('piston A', 29959)] };
    expect(length(30003) - grown(29959, 20)).toBeGreaterThan(length(45));
    const unmatched = (of: Shed) =>
      JSON.stringify(triage(of).parts.find(({ section }) => section === 'pistonSets'));
    expect(unmatched({ ...shed, ...warm(20) })).not.toBe(unmatched(shed));
  });
});
