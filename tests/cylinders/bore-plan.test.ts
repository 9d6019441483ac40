import {
  type BoreRequest,
  type BoreToMachine,
  borePlan,
  describeBorePlan,
  format,
  inch,
  type Length,
  oversizeSteps,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** A cylinder from ten-thousandths of an inch over 3 in. */
function cylinder(
  name: string,
  smallest: number,
  largest: number,
  more: Partial<BoreToMachine> = {},
): BoreToMachine {
  const at = (tenths: number) => inch(3 + tenths / 10_000);
  return {
    name,
    smallest: at(smallest),
    largest: at(largest),
    outOfRound: inch(0),
    taper: inch(0),
    ...more,
  };
}

const standard = { min: inch(3), max: inch(3.0005) };
const request = (
  cylinders: readonly BoreToMachine[],
  more: Partial<BoreRequest> = {},
): BoreRequest => ({
  cylinders,
  standard,
  steps: oversizeSteps('inch'),
  ...more,
});
const good = cylinder('good', 1, 4);
/** Needs 3.0081 + 0.0019 + 0.0030 for the hone = 3.0130 in: 20 over at the least. */
const worn = cylinder('worn', 9, 81, { outOfRound: thou(1.9), taper: thou(6.9) });
/** Needs 3.0350 + 0.0050 + 0.0030 = 3.0430 in: more than 30 over. */
const gone = cylinder('gone', 9, 350, { outOfRound: thou(5), taper: thou(20) });

function served(plan: ReturnType<typeof borePlan>) {
  if (plan.outcome === 'none') throw new Error('no step serves');
  return plan;
}

describe('borePlan', () => {
  it('bores a good bore that has faults to be seen', () => {
    const plan = served(borePlan(request([{ ...good, faults: ['pitted'] }])));
    expect(plan).toMatchObject({ outcome: 'bore', oversize: thou(10) });
    expect(plan.because).toContainEqual({ kind: 'faults', cylinder: 'good', faults: ['pitted'] });
    expect(describeBorePlan(plan, { units: 'inch' })).toContain('good must be bored: pitted');
  });

  it('leaves good bores alone', () => {
    const plan = served(borePlan(request([good])));
    expect(plan).toMatchObject({ outcome: 'use as it is', oversize: 0 });
    expect(plan.because.map(({ kind }) => kind)).toEqual(['good as it is']);
  });

  it('bores every cylinder of a block to the smallest step that serves them all', () => {
    const plan = served(borePlan(request([good, worn])));
    expect(plan.outcome).toBe('bore');
    expect(format(plan.oversize, thou)).toBe('20.0 thou');
    expect(format(plan.target.min, inch)).toBe('3.0200 in');
    expect(format(plan.boreTo.min, inch)).toBe('3.0170 in');
    expect(plan.cylinders.map(({ work }) => work)).toEqual(['bore', 'bore']);
    // 3.0200 - 3.0009 in at the least, 3.0205 - 3.0009 in at the most.
    expect(format(plan.cylinders[1]?.stockRemoved?.min as Length, inch)).toBe('0.0191 in');
    expect(format(plan.cylinders[1]?.stockRemoved?.max as Length, inch)).toBe('0.0196 in');
  });

  it('takes a larger step where only that has pistons, and none where no step has', () => {
    const plan = served(borePlan(request([worn], { pistonsAtHand: [thou(30)] })));
    expect(format(plan.oversize, thou)).toBe('30.0 thou');
    expect(plan.because.map(({ kind }) => kind)).toContain('no pistons at hand');
    expect(borePlan(request([good], { pistonsAtHand: [] }))).toMatchObject({ outcome: 'none' });
  });

  it('sleeves what no step cleans up, at the step that needs the fewest sleeves', () => {
    const plan = served(borePlan(request([worn, gone])));
    expect(plan.outcome).toBe('sleeve');
    expect(format(plan.oversize, thou)).toBe('20.0 thou');
    expect(plan.cylinders.map(({ work }) => work)).toEqual(['bore', 'sleeve']);
    const alone = served(borePlan(request([good, gone])));
    expect(alone).toMatchObject({ outcome: 'sleeve', oversize: 0 });
    expect(alone.cylinders.map(({ work }) => work)).toEqual(['use as it is', 'sleeve']);
  });

  it('keeps the least wall', () => {
    // 0.1500 - (3.0205 - 3.0009) / 2 = 0.1402 in is left at 20 over.
    const thin = { ...worn, wall: inch(0.15) };
    const kept = served(borePlan(request([thin], { leastWall: inch(0.14) })));
    expect(format(kept.cylinders[0]?.wallLeft as Length, inch)).toBe('0.1402 in');
    const lost = served(borePlan(request([thin], { leastWall: inch(0.1403) })));
    expect(lost.outcome).toBe('sleeve');
    expect(lost.because.map(({ kind }) => kind)).toContain('wall too thin');
  });

  it('takes the caller’s allowances, wear and shape', () => {
    const step = (more: Partial<BoreRequest>) => {
      const plan = served(borePlan(request([worn], more)));
      return [plan.outcome, format(plan.oversize, thou, 0)];
    };
    // 3.0081 + 0.0019 = 3.0100 in is just 10 over without stock for the hone.
    expect(step({ honingAllowance: thou(0) })).toEqual(['bore', '10 thou']);
    expect(step({ honingAllowance: thou(1.9), wear: 'all round' })).toEqual(['bore', '10 thou']);
    const loose = { sizeAllowance: thou(7.6), shape: { limits: { max: thou(7) } } };
    expect(step(loose)).toEqual(['use as it is', '0 thou']);
  });

  it('never gives a smaller step to a larger bore, and passes over none that serves', () => {
    const tenths = fc.integer({ min: 20, max: 300 });
    fc.assert(
      fc.property(tenths, tenths, (a, b) => {
        const at = (largest: number) =>
          borePlan(request([cylinder('c', 0, largest, { taper: thou(2) })]));
        const [small, large] = [served(at(Math.min(a, b))), served(at(Math.max(a, b)))];
        const rank = ({ outcome, oversize }: typeof small) => (outcome === 'sleeve' ? 1 : oversize);
        expect(rank(large)).toBeGreaterThanOrEqual(rank(small));
        // By hand: largest and 30 tenths for the hone must lie within the step.
        const needed = Math.max(a, b) + 30;
        const first = [0, 100, 200, 300].find((step) => needed <= step);
        expect(large.outcome === 'sleeve' ? undefined : Math.round(large.oversize / 2.54e-6)).toBe(
          first,
        );
      }),
    );
  });

  it('says its decision and reasons in sentences', () => {
    expect(describeBorePlan(borePlan(request([good, worn])), { units: 'inch' })).toEqual([
      'bore to 3.0170 to 3.0175 in and hone to 0.0200 in over, 3.0200 to 3.0205 in',
      'not standard: worn does not clean up (needs 3.0130 in, the step starts at 3.0000 in)',
      'not 0.0100 in over: worn does not clean up (needs 3.0130 in, the step starts at 3.0100 in)',
      'good is to be bored: it reads 3.0001 to 3.0004 in, and the step asks for 3.0200 to 3.0205 in',
      'good cleans up at 0.0200 in over (needs 3.0034 in)',
      'worn is to be bored: taper 0.0069 in: 0.0059 in above the limit of 0.0010 in (common practice: bore out-of-round and taper up to 0.001 in (0.025 mm)), of new parts; no service limit is given',
      'worn cleans up at 0.0200 in over (needs 3.0130 in)',
      'honing allowance 0.0030 in (common practice: boring leaves 0.003 in (0.076 mm) for the hone)',
    ]);
  });

  it('says in short no step that was passed over, unless only pistons are wanting or a sleeve is needed', () => {
    const said = (plan: ReturnType<typeof borePlan>) =>
      describeBorePlan(plan, { units: 'inch', why: false });
    expect(said(borePlan(request([good])))).toEqual([
      'no boring needed at standard, 3.0000 to 3.0005 in',
    ]);
    expect(said(borePlan(request([good, worn]))).filter((each) => /^not /.test(each))).toEqual([]);
    // 20 over would clean up, but only 30 over is at hand.
    const wanting = borePlan(request([worn], { pistonsAtHand: [thou(30)] }));
    expect(said(wanting).filter((each) => /^not /.test(each))).toEqual([
      'not 0.0200 in over: no pistons at hand',
    ]);
    const sleeved = borePlan(request([worn, gone]));
    expect(said(sleeved)).toEqual(describeBorePlan(sleeved, { units: 'inch' }));
    const none = borePlan(request([good], { pistonsAtHand: [] }));
    expect(said(none)).toEqual(describeBorePlan(none, { units: 'inch' }));
  });

  it('says sleeves, thin walls, sizes outside the target and want of pistons', () => {
    const said = (plan: ReturnType<typeof borePlan>) => describeBorePlan(plan, { units: 'metric' });
    expect(said(borePlan(request([worn, gone])))[0]).toBe(
      'sleeve gone; bore to 76.632 to 76.645 mm and hone to 0.508 mm over, 76.708 to 76.721 mm',
    );
    expect(said(borePlan(request([good], { pistonsAtHand: [] })))).toEqual([
      'no pistons are at hand for any step',
      'not standard: no pistons at hand',
      'not 0.254 mm over: no pistons at hand',
      'not 0.508 mm over: no pistons at hand',
      'not 0.762 mm over: no pistons at hand',
    ]);
    const over = said(borePlan(request([cylinder('over', 1, 10)], { sizeAllowance: thou(1) })));
    expect(over[1]).toBe(
      'over needs no boring at standard: 0.013 mm above it, within the allowance (specified)',
    );
    const under = said(borePlan(request([cylinder('under', -5, 3)])));
    expect(under[1]).toMatch(
      /^under needs no boring at standard: 0.013 mm below it, within the allowance \(common/,
    );
    const thin = borePlan(request([{ ...worn, wall: inch(0.15) }], { leastWall: inch(0.1403) }));
    expect(said(thin)).toContain(
      'not 0.508 mm over: worn would have a wall of 3.561 mm, below the least of 3.564 mm',
    );
  });

  it.each<[string, object, RegExp]>([
    ['a bore smaller than standard', { cylinders: [cylinder('c', -80, 0)] }, /only wear larger/],
    [
      'a wall without the least one',
      { cylinders: [{ ...worn, wall: inch(0.15) }] },
      /leastWall: is missing/,
    ],
    [
      'a shape that contradicts the diameters',
      { cylinders: [{ ...good, outOfRound: thou(0.4) }] },
      /outOfRound: 0.01016 mm is not at most largest less smallest, 0.00762 mm/,
    ],
    [
      'a smallest above its largest',
      { cylinders: [{ ...good, smallest: inch(3.01) }] },
      /^cylinders\[0\]: min/,
    ],
    ['a misspelt option', { leastwall: inch(0.1) }, /not a known field/],
    ['no cylinder', { cylinders: [] }, /at least 1 cylinder/],
    ['no step', { steps: [] }, /at least 1 oversize/],
    ['a bare number', { steps: [0.01] }, /outside 0 m … 3 mm/],
  ])('refuses %s', (_, wrong, message) => {
    expect(() => borePlan({ ...request([worn]), ...wrong })).toThrow(message);
  });
});

describe('borePlan where cylinders differ', () => {
  it('bores a bore of the right size that is out of round or tapered beyond its limit', () => {
    // 2.9995 to 3.0010 in lies within the half thousandth that a size may be outside.
    for (const flaw of ['outOfRound', 'taper'] as const) {
      const oval = cylinder('oval', -5, 10, { [flaw]: thou(1.2) });
      const plan = served(borePlan({ ...request([oval]), shape: { limits: { max: thou(1) } } }));
      expect(plan).toMatchObject({ outcome: 'bore', oversize: thou(10) });
      const kinds = plan.because.map(({ kind }) => kind);
      expect(kinds).toContain('shape');
      expect(kinds).not.toContain('good as it is');
      const passed = { ...oval, [flaw]: thou(1) };
      expect(served(borePlan(request([passed]))).outcome).toBe('use as it is');
    }
  });

  it('keeps a bore that is at the step already while another is bored to it', () => {
    const bored = cylinder('bored', 201, 204);
    const plan = served(borePlan(request([bored, worn])));
    expect(plan.outcome).toBe('bore');
    expect(plan.cylinders.map(({ work }) => work)).toEqual(['use as it is', 'bore']);
    expect(plan.because.map(({ kind }) => kind)).toContain('allowance');
  });

  it('leaves nothing for the hone where nothing is bored', () => {
    for (const cylinders of [[good], [good, gone]]) {
      const plan = served(borePlan(request(cylinders)));
      expect(plan.because.map(({ kind }) => kind)).not.toContain('allowance');
    }
  });
});
