import { planBuilds } from 'crankwright/planning';
import { triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { diceOf } from '../support/dice.js';
import { bruteForce } from './brute-force.js';
import { withHidden, withOdds, without, withTwins } from './hidden-parts.js';
import { randomShed } from './random-sheds.js';
import { searched, solver, untidy } from './searched.js';

const seeds = (count: number) => Array.from({ length: count }, (_, seed) => seed);

/** Every choice of some of a list, the smaller ones first. */
function subsets<T>(list: readonly T[]): readonly (readonly T[])[] {
  const all = Array.from({ length: 2 ** list.length }, (_, bits) =>
    list.filter((__, i) => bits & (1 << i)),
  );
  return all.toSorted((a, b) => a.length - b.length);
}

describe('a plan of parts of which some were not measured', () => {
  it('lies with all its engines between what is proven and what may be, whatever they measure', async () => {
    let [more, fewer] = [0, 0];
    for (const seed of seeds(30)) {
      const full = randomShed(seed);
      const { shed } = withHidden(full, seed, 3);
      const measured = (await planBuilds(full)).builds.length;
      const plan = await planBuilds(shed);
      const proven = plan.builds.length;
      const mayBe = plan.mayBe?.engines ?? proven;
      expect(proven, `seed ${seed}`).toBeLessThanOrEqual(measured);
      expect(measured, `seed ${seed}`).toBeLessThanOrEqual(mayBe);
      more += Number(measured > proven);
      fewer += Number(measured < mayBe);
    }
    // Both happen: some unknown parts turn out good, and some do not.
    expect(more).toBeGreaterThan(0);
    expect(fewer).toBeGreaterThan(0);
  }, 240_000);

  it('names the likeliest of the shortest lists, by trying every choice of them', async () => {
    let choices = 0;
    for (const seed of seeds(30)) {
      const full = randomShed(seed);
      if (triage(full).parts.some(({ disposition }) => disposition === 'undecided')) continue;
      const { shed, hidden } = withTwins(withHidden(full, seed, 2));
      const dice = diceOf(seed + 911);
      // No two products of up to four of these are equal.
      const odds = new Map(hidden.map((name) => [name, dice.oneOf([0.35, 0.5, 0.62, 0.83, 0.97])]));
      const plan = await planBuilds(withOdds(shed, odds));
      const named = plan.measureFirst.find(({ mayBring: { kind } }) => kind === 'one more engine');
      if (named === undefined) continue;
      const lists = subsets(hidden).filter((some) => {
        if (some.length !== named.parts.length) return false;
        const left = hidden.filter((name) => !some.includes(name));
        return bruteForce(without(shed, left)).engines > plan.builds.length;
      });
      const likely = (names: readonly string[]) =>
        names.reduce((product, name) => product * (odds.get(name) ?? NaN), 1);
      const best = Math.max(...lists.map(likely));
      expect(likely(named.parts.map(({ name }) => name)), `seed ${seed}`).toBeCloseTo(best, 9);
      choices += Number(new Set(lists.map(likely)).size > 1);
    }
    expect(choices).toBeGreaterThan(0);
  }, 240_000);

  it('names the fewest parts that may bring something, by trying every choice of them', async () => {
    const brought = { engine: 0, cost: 0, margin: 0 };
    for (const seed of seeds(30)) {
      const full = randomShed(seed);
      // What is undecided for another reason counts as not known too, but brute force does not know it.
      if (triage(full).parts.some(({ disposition }) => disposition === 'undecided')) continue;
      const { shed, hidden } = withHidden(full, seed, 3);
      const plan = await planBuilds(shed);
      const only = (known: readonly string[]) =>
        without(
          shed,
          hidden.filter((name) => !known.includes(name)),
        );
      const choices = subsets(hidden);
      const proven = bruteForce(only([]));
      expect(plan.builds.length, `seed ${seed}`).toBe(proven.engines);
      const most = Math.max(...choices.map((some) => bruteForce(only(some)).engines));
      expect(plan.mayBe?.engines ?? proven.engines, `seed ${seed}`).toBe(most);
      const partsFor = (kind: string) =>
        plan.measureFirst.find(({ mayBring }) => mayBring.kind === kind)?.parts.length;
      const fewest = (isBetter: (some: readonly string[]) => boolean) =>
        choices.find(isBetter)?.length;

      const engine = fewest((some) => bruteForce(only(some)).engines > proven.engines);
      expect(partsFor('one more engine'), `seed ${seed}`).toBe(engine);
      brought.engine += Number(engine !== undefined);
      if (proven.engines === 0) continue;
      const asMany = choices.map((some) => ({
        some,
        best: bruteForce(only(some), { atMost: proven.engines }),
      }));
      const cheaper = asMany.find(({ best }) => best.cost < proven.cost)?.some.length;
      expect(partsFor('lower cost'), `seed ${seed}`).toBe(cheaper);
      brought.cost += Number(cheaper !== undefined);
      // Of a choice that costs less too, brute force does not tell what else there is at the old cost.
      if (cheaper !== undefined || proven.margin === undefined) continue;
      const wider = asMany.find(({ best }) => (best.margin ?? Infinity) > (proven.margin as number))
        ?.some.length;
      expect(partsFor('wider margin'), `seed ${seed}`).toBe(wider);
      brought.margin += Number(wider !== undefined);
    }
    expect(Math.min(brought.engine, brought.cost, brought.margin)).toBeGreaterThan(0);
  }, 240_000);
});

describe('the search for what to measure first', () => {
  it('keeps what it found, wherever the solver fails', async () => {
    const whole = await planBuilds(untidy);
    const found: number[] = [];
    for (let failing = 0; failing < 40; failing++) {
      let asked = 0;
      const { measureFirst, mayBe, ended } = searched(untidy, {
        solve: (stage, model, question) =>
          asked++ === failing
            ? { status: 'solver failure', values: [], bound: 0 }
            : solver.solve(stage, model, question),
      });
      found.push(measureFirst.length);
      expect(whole.measureFirst.slice(0, measureFirst.length)).toMatchObject(
        measureFirst.map(({ mayBring: { kind }, parts }) => ({ mayBring: { kind }, parts })),
      );
      if (mayBe) expect(mayBe).toEqual(whole.mayBe);
      if (asked <= failing) break;
      // A margin that could not be widened further is no failure of what was found before.
      if (measureFirst.length < whole.measureFirst.length) expect(ended).toBe('solver failure');
    }
    // It never finds less for failing later, and in the end it finds all.
    expect(found).toEqual(found.toSorted((a, b) => a - b));
    expect(found[0]).toBe(0);
    expect(found.at(-1)).toBe(whole.measureFirst.length);
  });
});
