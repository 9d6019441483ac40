import { type GrindPlan, grindPlan, thou } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tries } from '../support/tries.js';
import { type InTenths, rods, tenths } from './journals.js';

/** Everything in tenths, so that the test below can be worked with whole numbers. */
const [MIN, MAX] = [21_245, 21_250];
const SHAPE = 5;
const SIZE = 5;

const anyJournal = fc
  .record({
    smallest: fc.oneof(
      fc.integer({ min: 20_880, max: 21_252 }),
      fc
        .constantFrom(0, 100, 200, 300)
        .chain((step) => fc.integer({ min: MIN - step - 8, max: MAX - step + 2 })),
    ),
    outOfRound: fc.oneof(fc.nat({ max: 6 }), fc.nat({ max: 60 })),
    taper: fc.oneof(fc.nat({ max: 6 }), fc.nat({ max: 60 })),
    runout: fc.oneof(fc.constant(0), fc.nat({ max: 20 })),
  })
  .map((size) => ({ ...size, largest: size.smallest + Math.max(size.outOfRound, size.taper) }))
  // More than 0.1 mm above standard is refused, and tested elsewhere.
  .filter(({ largest }) => largest <= MAX + 39);

const anyJob = fc.record({
  journals: fc
    .array(anyJournal, { minLength: 1, maxLength: 4 })
    .map((all) => all.map((size, i): Required<InTenths> => ({ ...size, name: `rod ${i + 1}` }))),
  shells: fc.option(fc.subarray([0, 100, 200, 300]), { nil: undefined }),
  minimum: fc.option(fc.integer({ min: 20_880, max: 21_200 }), { nil: undefined }),
  allowance: fc.constantFrom(0, 10, 25),
  wear: fc.constantFrom('one side', 'all round'),
});
type AnyJob = typeof anyJob extends fc.Arbitrary<infer J> ? J : never;

const planOf = (job: AnyJob): GrindPlan =>
  grindPlan({
    ...rods(...job.journals),
    cleanUpAllowance: tenths(job.allowance),
    wear: job.wear,
    ...(job.shells && { shellsAtHand: job.shells.map(tenths) }),
    ...(job.minimum !== undefined && { minimum: tenths(job.minimum) }),
  });

const isGood = (size: Required<InTenths>, step: number) =>
  size.outOfRound <= SHAPE &&
  size.taper <= SHAPE &&
  size.largest <= MAX - step + SIZE &&
  size.smallest >= MIN - step - SIZE;

const leftIn = (size: Required<InTenths>, { wear, allowance }: AnyJob) =>
  size.smallest - (wear === 'one side' ? size.outOfRound : 0) - size.runout - allowance;

/** Whether a step serves, from the words of the documentation. */
function serves(job: AnyJob, step: number): boolean {
  if (job.shells && !job.shells.includes(step)) return false;
  const toGrind = job.journals.filter((size) => !isGood(size, step));
  if (toGrind.some((size) => leftIn(size, job) < MAX - step)) return false;
  return toGrind.length === 0 || job.minimum === undefined || MIN - step >= job.minimum;
}

describe('the plan for any journals', () => {
  it('is the smallest step that serves, or none', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        fc.pre(job.journals.every(({ smallest }) => smallest >= (job.minimum ?? 0)));
        const step = [0, 100, 200, 300].find((at) => serves(job, at));
        const plan = planOf(job);
        if (step === undefined) {
          expect(plan.outcome).toBe('none');
          return;
        }
        if (plan.outcome === 'none') throw new Error(`none, but ${step} tenths serve`);
        expect(plan.undersize).toBeCloseTo(tenths(step), 12);
        const works = job.journals.map((size) => (isGood(size, step) ? 'use as it is' : 'grind'));
        expect(plan.journals.map(({ work }) => work)).toEqual(works);
        expect(plan.outcome).toBe(works.includes('grind') ? 'grind' : 'use as it is');
      }),
      { numRuns: tries(750, 6_000) },
    );
  });

  it('never takes more off than is there, nor leaves a journal outside its target', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const plan = planOf(job);
        if (plan.outcome === 'none') return;
        plan.journals.forEach(({ work, stockRemoved }, i) => {
          const size = job.journals[i] as Required<InTenths>;
          expect(stockRemoved === undefined).toBe(work === 'use as it is');
          if (stockRemoved === undefined) return;
          expect(tenths(size.largest) - stockRemoved.max).toBeCloseTo(plan.target.min, 12);
          expect(tenths(size.largest) - stockRemoved.min).toBeCloseTo(plan.target.max, 12);
          expect(tenths(leftIn(size, job))).toBeGreaterThanOrEqual(plan.target.max - 1e-9);
        });
      }),
      { numRuns: tries(250, 2_000) },
    );
  });

  it('gives a smaller journal never a smaller undersize, if it must be ground', () => {
    fc.assert(
      fc.property(anyJournal, fc.nat({ max: 100 }), (size, by) => {
        // A round journal just above a step's span needs stock it has not; just within it, none.
        fc.pre(size.outOfRound > SHAPE || size.taper > SHAPE);
        const undersize = (less: number) => {
          const moved = {
            name: 'rod',
            smallest: size.smallest - less,
            largest: size.largest - less,
          };
          const plan = grindPlan(rods({ ...size, ...moved }));
          return plan.outcome === 'none' ? Number.POSITIVE_INFINITY : plan.undersize;
        };
        expect(undersize(by)).toBeGreaterThanOrEqual(undersize(0));
      }),
      { numRuns: tries(250, 2_000) },
    );
  });

  it('does not depend on the order of the journals', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const [one, other] = [
          planOf(job),
          planOf({ ...job, journals: [...job.journals].reverse() }),
        ];
        expect(other.outcome).toBe(one.outcome);
        if (one.outcome === 'none' || other.outcome === 'none') {
          const blamed = (plan: GrindPlan) =>
            'defeatedBy' in plan ? [...plan.defeatedBy].sort() : [];
          expect(blamed(other)).toEqual(blamed(one));
          return;
        }
        expect(other.undersize).toBe(one.undersize);
        expect([...other.journals].reverse()).toEqual(one.journals);
      }),
    );
  });

  it('blames, without want of shells or a minimum, just the journals that the last step does not clean', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const plan = planOf({ ...job, shells: undefined, minimum: undefined });
        if (plan.outcome !== 'none') return;
        const wanted = job.journals.filter(
          (size) => !isGood(size, 300) && leftIn(size, job) < MAX - 300,
        );
        expect(plan.defeatedBy).toEqual(wanted.map(({ name }) => name));
        expect(wanted.length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });

  it('leaves its request alone', () => {
    const request = rods({ name: 'rod 1', smallest: 21_100, largest: 21_110, outOfRound: 8 });
    request.journals.forEach(Object.freeze);
    const frozen = { ...request, shellsAtHand: [thou(20)] };
    for (const part of [request.journals, request.steps, request.standard, frozen.shellsAtHand]) {
      Object.freeze(part);
    }
    expect(grindPlan(Object.freeze(frozen)).outcome).toBe('grind');
  });
});
