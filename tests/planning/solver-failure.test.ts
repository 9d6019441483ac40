import { type Plan, type PlanOptions, planReport, type Unproven } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { plainShed } from '../shed/sheds.js';
import { highsFailing } from './fake-highs.js';

const shed = readShed(plainShed());

const nanometres = (length = NaN) => Math.round(length * 1e9);

/** How many questions the solver answers before it fails. */
let answers = Infinity;

/** Plans the plain shed with a solver that answers so many questions and fails from then on. */
let planWith: (answers: number, options: PlanOptions) => Promise<Plan>;

beforeAll(async () => {
  vi.resetModules();
  vi.doMock('highs', () => ({ default: async () => highsFailing(() => answers-- <= 0) }));
  const { planBuilds } = await import('../../src/planning/plan-builds.js');
  planWith = (so, options) => {
    answers = so;
    return planBuilds(shed, options);
  };
});

afterAll(() => {
  vi.doUnmock('highs');
  vi.resetModules();
});

describe.each<[string, PlanOptions, boolean]>([
  ['', {}, true],
  // Block B costs 95, wherever its parts come from: it is sought by itself.
  [', where no engine may cost 95', { mostPerEngine: { amount: 94.999, currency: 'EUR' } }, false],
])('a plan for which the solver fails%s', (_, options, isChosen) => {
  const failed: { readonly plan: Plan; readonly proof: Unproven }[] = [];
  let whole: Plan;

  beforeAll(async () => {
    whole = await planWith(Infinity, options);
    for (let first = 0; ; first++) {
      const plan = await planWith(first, options);
      if (plan.proof.outcome === 'optimal') break;
      failed.push({ plan, proof: plan.proof });
    }
  }, 120_000);

  const at = (stage: Unproven['stage']) => failed.filter(({ proof }) => proof.stage === stage);

  it('says at which stage, and that the time was not to blame', () => {
    const stages = new Set(failed.map(({ proof }) => proof.stage));
    expect([...stages].sort()).toEqual([
      // Equal plans are not compared where the cost of each engine is limited.
      ...(isChosen ? ['equal plans'] : []),
      'least cost',
      'most engines',
      'next engine',
      'widest margin',
    ]);
    for (const { plan, proof } of failed) {
      expect(proof.outcome).toBe('solver failure');
      const text = planReport(plan).replace(/\s+/g, ' ');
      expect(text).toContain('the solver failed');
      expect(text).not.toMatch(/time was up|undefined|NaN|Infinity/);
    }
  });

  it('promises no less than there is, and no more than there are blocks', () => {
    for (const { plan, proof } of at('most engines')) {
      expect(proof.found).toBe(plan.builds.length);
      expect(proof.bound).toBeGreaterThanOrEqual(whole.builds.length);
      expect(proof.bound).toBeLessThanOrEqual(shed.blocks?.length ?? 0);
    }
    for (const { plan, proof } of at('least cost')) {
      expect(plan.builds).toHaveLength(whole.builds.length);
      expect(proof.found).toBe(plan.cost.amount);
      expect(proof.found).toBeGreaterThanOrEqual(whole.cost.amount);
      expect(proof.bound).toBeLessThanOrEqual(whole.cost.amount);
    }
    for (const { plan, proof } of at('widest margin')) {
      expect(plan.cost).toEqual(whole.cost);
      expect(proof.found).toBe(plan.smallestMargin);
      expect(proof.found).toBeLessThanOrEqual(proof.bound);
      expect(nanometres(proof.found)).toBeLessThanOrEqual(nanometres(whole.smallestMargin));
      expect(nanometres(proof.bound)).toBeGreaterThanOrEqual(nanometres(whole.smallestMargin));
    }
  });

  it('keeps the plan, with its proof, where only the next engine could not be told', () => {
    for (const { plan, proof } of at('next engine')) {
      const { nextEngine, ...rest } = whole;
      expect(nextEngine).toBeDefined();
      expect(plan).toEqual({ ...rest, proof });
      expect(planReport(plan).replace(/\s+/g, ' ')).toMatch(
        /Proven: no plan is better, compared by engines, cost.*in this order\. What one more engine needs is not known, because the solver failed\./,
      );
    }
  });

  it('keeps what it is the best in where the choice among equal plans failed', () => {
    for (const { plan } of at('equal plans')) {
      expect(plan.builds).toHaveLength(whole.builds.length);
      expect([plan.cost, plan.smallestMargin]).toEqual([whole.cost, whole.smallestMargin]);
      expect(whole.compared.slice(0, plan.compared.length)).toEqual(plan.compared);
      expect(plan.compared.slice(0, 3)).toEqual(['engines', 'cost', 'tightest margin']);
      expect(plan.compared.length).toBeLessThan(whole.compared.length);
    }
  });
});
