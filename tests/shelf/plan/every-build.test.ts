import type { Length, Limits, Span } from 'crankwright';
import { type Build, type Plan, planBuilds, type Section, type Shelf } from 'crankwright/shelf';
import { beforeAll, describe, expect, it } from 'vitest';
import { SECTIONS } from '../../../src/shelf/shelf.js';
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

/** A shelf with nothing on it, nor to buy, but what one engine takes. */
function withOnly(shelf: Shelf, build: Build): Shelf {
  const kept = (section: Section, bought: boolean) =>
    build.parts
      .filter((part) => part.section === section && part.bought === bought)
      .map(({ name, count }) => ({
        ...partNamed(shelf, section, name),
        ...(section === 'shells' ? { pairs: count } : { count }),
      }));
  const sections = (bought: boolean) =>
    Object.fromEntries(SECTIONS.map((section) => [section, kept(section, bought)]));
  return { ...shelf, ...sections(false), toBuy: sections(true) } as Shelf;
}

describe('every engine of a plan', () => {
  const planned: { readonly shelf: Shelf; readonly plan: Plan }[] = [];
  const builds = () =>
    planned.flatMap(({ shelf, plan }) => plan.builds.map((build) => ({ shelf, plan, build })));

  beforeAll(async () => {
    for (let seed = 300; seed < 400; seed++) {
      const shelf = randomShed(seed);
      planned.push({ shelf, plan: await planBuilds(shelf) });
    }
  }, 120_000);

  it('is one of many', () => {
    expect(builds().length).toBeGreaterThan(60);
  });

  it('has the clearances that its parts leave, all within their limits', () => {
    for (const { shelf, build } of builds()) {
      for (const { what, stated, worked, limits, margin } of workedAgain(shelf, build)) {
        const where = `${shelf.shelf}, ${build.name}, ${what}`;
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
    for (const { shelf, build } of builds()) {
      const { cylinders, mains, rodsPerJournal = 1 } = shelf.engine;
      const of = (kind: 'rods' | 'mains') =>
        build.bearings.filter((bearing) => bearing.kind === kind);
      const where = `${shelf.shelf}, ${build.name}`;
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
    for (const { shelf, plan, build } of builds()) {
      const alone = bruteForce(withOnly(shelf, build));
      const where = `${shelf.shelf}, ${build.name}`;
      expect([alone.engines, alone.cost], where).toEqual([1, thousandths(build.cost as never)]);
      expect(alone.margin, where).toBeGreaterThanOrEqual(nanometres(plan.smallestMargin ?? NaN));
    }
  });

  it('takes nothing that another takes, nor more than there is', () => {
    for (const { shelf, plan } of planned) {
      for (const section of SECTIONS) {
        for (const [name, taken] of takenOf(plan.builds, section)) {
          const part = partNamed(shelf, section, name) as { count?: number; pairs?: number };
          const isOffer = shelf.toBuy?.[section]?.some((offer) => offer.name === name);
          const isCounted = !['blocks', 'crankshafts', 'rods', 'heads'].includes(section);
          const there = part.pairs ?? part.count ?? (isOffer && isCounted ? Infinity : 1);
          expect(taken, `${shelf.shelf}, ${name}`).toBeLessThanOrEqual(there);
        }
      }
    }
  });

  it('costs what its jobs and its bought parts cost, and all of them what the plan does', () => {
    for (const { shelf, plan } of planned) {
      const sum = (costs: readonly { cost: { amount: number } }[]) =>
        costs.reduce((total, { cost }) => total + Math.round(cost.amount * 1000), 0);
      for (const { name, parts, jobs, cost } of plan.builds) {
        const bought = parts.filter((part) => part.bought);
        const prices = bought.map((part) => {
          const offer = shelf.toBuy?.[part.section]?.find((each) => each.name === part.name);
          return part.count * thousandths(offer?.price as never);
        });
        const total = prices.reduce((a, b) => a + b, sum(jobs));
        expect(Math.round(cost.amount * 1000), `${shelf.shelf}, ${name}`).toBe(total);
      }
      const whole = Math.round(plan.cost.amount * 1000);
      expect(sum(plan.builds), shelf.shelf).toBe(whole);
      expect(sum(plan.orders) + sum(plan.shopping), shelf.shelf).toBe(whole);
    }
  });

  it('sets the smallest margin among all that the plan states', () => {
    for (const { shelf, plan } of planned) {
      const margins = plan.builds.flatMap((build) =>
        workedAgain(shelf, build)
          .filter(({ what }) => what !== 'end play')
          .flatMap(({ limits, worked }) => (limits ? [roomIn(worked, limits)] : [])),
      );
      const smallest = plan.smallestMargin === undefined ? Infinity : plan.smallestMargin;
      expect(nanometres(smallest), shelf.shelf).toBe(nanometres(Math.min(...margins)));
    }
  });
});
