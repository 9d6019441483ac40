import type { Length, Limits, Span } from 'crankwright';
import { type Build, type Plan, planBuilds } from 'crankwright/planning';
import type { Section, Shed } from 'crankwright/shed';
import { beforeAll, describe, expect, it } from 'vitest';
import { SECTIONS } from '../../src/shed/sections.js';
import { bruteForce } from './brute-force.js';
import { thousandths } from './brute-stock.js';
import { randomShed } from './random-sheds.js';
import { partNamed, workedAgain } from './worked-again.js';

/** How far a clearance stays inside its limits at its worse end. */
const roomIn = ({ min, max }: Span<Length>, limits: Limits<Length>) =>
  Math.min(min - (limits.min ?? -Infinity), (limits.max ?? Infinity) - max);

const nanometres = (length: number) => Math.round(length * 1e9) + 0;

/** The names that come more than once. */
const repeated = (names: readonly string[]) => names.filter((name, i) => names.indexOf(name) < i);

/** How many an engine takes of each part of a section. */
const takenOf = (builds: readonly Build[], section: Section) => {
  const taken = new Map<string, number>();
  for (const part of builds.flatMap(({ parts }) => parts)) {
    if (part.section === section) taken.set(part.name, (taken.get(part.name) ?? 0) + part.count);
  }
  return taken;
};

/** A shed with nothing on it, nor to buy, but what one engine takes. */
function withOnly(shed: Shed, build: Build): Shed {
  const kept = (section: Section, bought: boolean) =>
    build.parts
      .filter((part) => part.section === section && part.bought === bought)
      .map(({ name, count }) => ({
        ...partNamed(shed, section, name),
        ...(section === 'shells' ? { pairs: count } : { count }),
      }));
  const sections = (bought: boolean) =>
    Object.fromEntries(SECTIONS.map((section) => [section, kept(section, bought)]));
  return { ...shed, ...sections(false), toBuy: sections(true) } as Shed;
}

describe('every engine of a plan', () => {
  const planned: { readonly shed: Shed; readonly plan: Plan }[] = [];
  const builds = () =>
    planned.flatMap(({ shed, plan }) => plan.builds.map((build) => ({ shed, plan, build })));

  beforeAll(async () => {
    for (let seed = 300; seed < 400; seed++) {
      const shed = randomShed(seed);
      planned.push({ shed, plan: await planBuilds(shed) });
    }
  }, 120_000);

  it('is one of many', () => {
    expect(builds().length).toBeGreaterThanOrEqual(60);
  });

  it('has the clearances that its parts leave, all within their limits', () => {
    for (const { shed, build } of builds()) {
      for (const { what, stated, worked, limits, margin } of workedAgain(shed, build)) {
        const where = `${shed.shed}, ${build.name}, ${what}`;
        expect(stated.min, where).toBeCloseTo(worked.min, 12);
        expect(stated.max, where).toBeCloseTo(worked.max, 12);
        expect(margin === undefined, where).toBe(limits === undefined);
        if (limits === undefined || margin === undefined) continue;
        expect(margin, where).toBeCloseTo(roomIn(worked, limits), 12);
        expect(margin, where).toBeGreaterThanOrEqual(-1e-9);
      }
    }
  });

  it('has every bearing and cylinder once, and the shells and pistons for them', () => {
    for (const { shed, build } of builds()) {
      const { cylinders, mains, rodsPerJournal = 1 } = shed.engine;
      const of = (kind: 'rods' | 'mains') =>
        build.bearings.filter((bearing) => bearing.kind === kind);
      const where = `${shed.shed}, ${build.name}`;
      expect([of('rods').length, of('mains').length], where).toEqual([cylinders, mains]);
      expect(build.cylinders.length, where).toBe(cylinders);
      const journals = of('rods').map(({ journal }) => journal);
      expect(new Set(journals).size, where).toBe(cylinders / rodsPerJournal);
      // Mains are positional: journal and housing have one number.
      for (const { journal, housing } of of('mains')) {
        expect(journal, where).toBe(housing.place.replace('main', 'main journal'));
      }
      const once = [
        of('mains').map(({ journal }) => journal),
        build.bearings.map(({ housing }) => `${housing.part}: ${housing.place}`),
        build.cylinders.map(({ bore }) => bore),
        build.cylinders.map(({ piston }) => piston),
      ];
      expect(once.flatMap(repeated), where).toEqual([]);
      const used = new Map<string, number>();
      for (const { shells } of build.bearings) used.set(shells, (used.get(shells) ?? 0) + 1);
      expect(takenOf([build], 'shells'), where).toEqual(used);
    }
  });

  it('can be built of its own parts alone, for no other cost and no narrower a margin', () => {
    for (const { shed, plan, build } of builds()) {
      const alone = bruteForce(withOnly(shed, build), {}, shed);
      const where = `${shed.shed}, ${build.name}`;
      expect([alone.engines, alone.cost], where).toEqual([1, thousandths(build.cost as never)]);
      expect(alone.margin, where).toBeGreaterThanOrEqual(nanometres(plan.smallestMargin ?? NaN));
    }
  });

  it('takes nothing that another takes, nor more than there is', () => {
    for (const { shed, plan } of planned) {
      for (const section of SECTIONS) {
        for (const [name, taken] of takenOf(plan.builds, section)) {
          const part = partNamed(shed, section, name) as { count?: number; pairs?: number };
          const isOffer = shed.toBuy?.[section]?.some((offer) => offer.name === name);
          const isCounted = !['blocks', 'crankshafts', 'rods', 'heads'].includes(section);
          const there = part.pairs ?? part.count ?? (isOffer && isCounted ? Infinity : 1);
          expect(taken, `${shed.shed}, ${name}`).toBeLessThanOrEqual(there);
        }
      }
    }
  });

  it('costs what its jobs and its bought parts cost, and all of them what the plan does', () => {
    for (const { shed, plan } of planned) {
      const sum = (costs: readonly { cost: { amount: number } }[]) =>
        costs.reduce((total, { cost }) => total + Math.round(cost.amount * 1000), 0);
      for (const { name, parts, jobs, cost } of plan.builds) {
        const bought = parts.filter((part) => part.bought);
        const prices = bought.map((part) => {
          const offer = shed.toBuy?.[part.section]?.find((each) => each.name === part.name);
          return part.count * thousandths(offer?.price as never);
        });
        const total = prices.reduce((a, b) => a + b, sum(jobs));
        expect(Math.round(cost.amount * 1000), `${shed.shed}, ${name}`).toBe(total);
      }
      const whole = Math.round(plan.cost.amount * 1000);
      expect(sum(plan.builds), shed.shed).toBe(whole);
      expect(sum(plan.orders) + sum(plan.shopping), shed.shed).toBe(whole);
    }
  });

  it('sets the smallest margin among all that the plan states', () => {
    for (const { shed, plan } of planned) {
      const margins = plan.builds.flatMap((build) =>
        workedAgain(shed, build)
          .filter(({ what }) => what !== 'end play')
          .flatMap(({ limits, worked }) => (limits ? [roomIn(worked, limits)] : [])),
      );
      const smallest = plan.smallestMargin === undefined ? Infinity : plan.smallestMargin;
      expect(nanometres(smallest), shed.shed).toBe(nanometres(Math.min(...margins)));
    }
  });
});
