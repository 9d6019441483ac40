import {
  type BorePlan,
  type BoreRequest,
  type BoreToMachine,
  borePlan,
  describeBorePlan,
  inch,
  type Length,
  mm,
  oversizeSteps,
  pistonClearanceSpan,
  recommendedRingGap,
  ringFilingNeeded,
  ringGapAlongBore,
  ringGapIn,
  thou,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

/** From ten-thousandths of an inch over 3 in. */
const bore = (smallest: number, largest: number, more: Partial<BoreToMachine> = {}) => ({
  name: 'cylinder 1',
  smallest: inch(3 + smallest / 10_000),
  largest: inch(3 + largest / 10_000),
  outOfRound: inch(0),
  taper: inch(0),
  ...more,
});
const request = (cylinders: readonly BoreToMachine[], more: object = {}): BoreRequest => ({
  cylinders,
  standard: { min: inch(3), max: inch(3.0005) },
  steps: oversizeSteps('inch'),
  ...more,
});
const off = (size: Length, nanometres: number) => (size + nanometres * 1e-9) as Length;
const served = (plan: BorePlan) => {
  if (plan.outcome === 'none') throw new Error('no step serves');
  return plan;
};

describe('borePlan at the door', () => {
  const good = bore(1, 4);
  const refused = (more: object, cylinder: object = {}) => {
    const error = refusal(() => borePlan(request([good, { ...good, ...cylinder }], more)));
    return [error.parameter, error.value];
  };

  it('names what it does not know', () => {
    expect(refused({ leastwall: mm(3) })).toEqual(['request.leastwall', mm(3)]);
    expect(refused({ shape: { limit: 1 } })).toEqual(['shape.limit', 1]);
    expect(refusal(() => borePlan(null as never)).parameter).toBe('request');
  });

  it.each<[string, unknown, string]>([
    ['cylinders', [], 'cylinders'],
    ['cylinders', undefined, 'cylinders'],
    ['standard', { min: inch(3), max: 3 }, 'standard.max'],
    ['standard', { min: inch(3.001), max: inch(3) }, 'standard'],
    ['steps', [], 'steps'],
    ['steps', [thou(10), 20], 'steps[1]'],
    ['pistonsAtHand', 'all', 'pistonsAtHand'],
    ['pistonsAtHand', [thou(10), 20], 'pistonsAtHand[1]'],
    ['leastWall', mm(0.4), 'leastWall'],
    ['leastWall', mm(51), 'leastWall'],
    ['honingAllowance', thou(-1), 'honingAllowance'],
    ['honingAllowance', mm(0.6), 'honingAllowance'],
    ['sizeAllowance', mm(0.3), 'sizeAllowance'],
    ['wear', 'even', 'wear'],
    ['shape', { limits: { max: mm(0.5) } }, 'shape.limits.max'],
    ['shape', 5, 'shape'],
  ])('names the %s of %j', (field, wrong, parameter) => {
    expect(refused({ [field]: wrong })[0]).toBe(parameter);
  });

  it.each<[string, unknown, string]>([
    ['name', '', 'cylinders[1].name'],
    ['smallest', 3, 'cylinders[1].smallest'],
    ['taper', thou(0.4), 'cylinders[1].taper'],
    ['faults', ['scored', ''], 'cylinders[1].faults[1]'],
    ['wall', mm(3), 'leastWall'],
  ])('names the cylinder with a %s of %j', (field, wrong, parameter) => {
    expect(refused({}, { [field]: wrong })[0]).toBe(parameter);
  });

  it('takes a wall of half a millimetre to 50', () => {
    const walled = (wall: Length) => () =>
      borePlan(request([{ ...good, wall }], { leastWall: mm(0.5) }));
    for (const wall of [mm(0.5), mm(50)]) expect(walled(wall)).not.toThrow();
    for (const wall of [mm(0.49), mm(50.1)]) {
      const error = refusal(walled(wall));
      expect([error.parameter, error.value]).toEqual(['cylinders[0].wall', wall]);
    }
  });

  it('takes a bore for one of its kind down to 0.1 mm below standard', () => {
    const standard = { min: mm(76), max: mm(76.01) };
    const of = (size: number) => () =>
      borePlan(request([{ ...good, smallest: mm(size), largest: mm(size) }], { standard }));
    expect(of(75.901)).not.toThrow();
    expect(refusal(of(75.899)).parameter).toBe('cylinders[0].smallest');
  });

  it('takes a shape of nothing for none', () => {
    expect(borePlan(request([good], { shape: {} }))).toEqual(borePlan(request([good])));
  });
});

describe('borePlan says whose rule it took', () => {
  const worn = bore(9, 81, { outOfRound: thou(1.9), taper: thou(6.9) });

  it('for the hone, and the caller’s in its place', () => {
    const allowance = (more: object) =>
      borePlan(request([worn], more)).because.find(({ kind }) => kind === 'allowance');
    expect(allowance({})).toEqual({
      kind: 'allowance',
      honingAllowance: thou(3),
      basis: { kind: 'common practice', rule: expect.stringContaining('0.003 in') },
    });
    expect(allowance({ honingAllowance: thou(2) })).toEqual({
      kind: 'allowance',
      honingAllowance: thou(2),
      basis: { kind: 'specified' },
    });
  });

  it('for a bore outside its size, and the caller’s in its place', () => {
    const kept = (more: object) => borePlan(request([bore(0, 15)], more)).because[0];
    expect(kept({})).toMatchObject({
      kind: 'good as it is',
      outside: expect.closeTo(thou(1), 12),
      basis: { kind: 'common practice', rule: expect.stringContaining('0.001 in') },
    });
    expect(kept({ sizeAllowance: thou(1) })).toMatchObject({ basis: { kind: 'specified' } });
    expect(kept({ sizeAllowance: thou(0.9) })).toMatchObject({ kind: 'does not clean up' });
  });

  it('for shape', () => {
    const shape = borePlan(request([worn])).because.find(({ kind }) => kind === 'shape');
    expect(shape).toMatchObject({
      cylinder: 'cylinder 1',
      finding: { limits: { max: thou(1) }, basis: { kind: 'common practice' } },
    });
  });
});

describe('borePlan to the nanometre', () => {
  it('cleans up a bore that just leaves what the hone takes', () => {
    // All round: 3.0070 in and 3 thou for the hone are 10 over.
    const at = (nanometres: number) =>
      served(borePlan(request([{ ...bore(20, 70), largest: off(inch(3.007), nanometres) }])))
        .oversize;
    expect([at(0), at(0.9)]).toEqual([thou(10), thou(10)]);
    expect(at(1.1)).toBe(thou(20));
  });

  it('keeps just the least wall', () => {
    // 0.1500 - (3.0105 - 3.0020) / 2 = 0.14575 in is left at 10 over.
    const at = (nanometres: number) =>
      served(
        borePlan(
          request([bore(20, 70, { wall: inch(0.15) })], {
            leastWall: off(inch(0.14575), nanometres),
            steps: [thou(10)],
          }),
        ),
      ).outcome;
    expect([at(0), at(0.9), at(1.1)]).toEqual(['bore', 'bore', 'sleeve']);
  });

  it('knows pistons of its oversize and no others', () => {
    const at = (nanometres: number) =>
      borePlan(request([bore(20, 70)], { pistonsAtHand: [off(thou(10), nanometres)] })).outcome;
    expect([at(0.9), at(-0.9), at(1.1), at(-1.1)]).toEqual(['bore', 'bore', 'none', 'none']);
  });
});

describe('borePlan with sleeves', () => {
  const worn = { ...bore(9, 70), name: 'worn' };
  const gone = { ...bore(9, 350, { outOfRound: thou(5), taper: thou(20) }), name: 'gone' };

  const kinds = (plan: BorePlan) =>
    plan.because.map((reason) => ('oversize' in reason ? [reason.kind, reason.oversize] : []));

  it('tells what stands in the way of every step, and of none that it did not need to try', () => {
    // gone cleans up nowhere; worn needs 3.0100 in.
    const sleeved = borePlan(request([worn, gone]));
    expect(sleeved).toMatchObject({ outcome: 'sleeve', oversize: thou(10) });
    expect(kinds(sleeved).filter(([kind]) => kind === 'does not clean up')).toEqual([
      ['does not clean up', 0],
      ['does not clean up', 0],
      ['does not clean up', thou(10)],
      ['does not clean up', thou(20)],
      ['does not clean up', thou(30)],
    ]);
    const bored = borePlan(request([worn]));
    expect(kinds(bored).filter(([kind]) => kind === 'does not clean up')).toEqual([
      ['does not clean up', 0],
    ]);
  });

  it('tells nothing of larger steps than the one that serves', () => {
    const plan = borePlan(request([worn], { pistonsAtHand: [thou(10)] }));
    expect(plan).toMatchObject({ outcome: 'bore', oversize: thou(10) });
    expect(kinds(plan).filter(([kind]) => kind === 'no pistons at hand')).toEqual([
      ['no pistons at hand', 0],
    ]);
    const sleeved = borePlan(request([worn, gone], { pistonsAtHand: [thou(10)] }));
    expect(kinds(sleeved).filter(([kind]) => kind === 'no pistons at hand')).toEqual([
      ['no pistons at hand', 0],
      ['no pistons at hand', thou(20)],
      ['no pistons at hand', thou(30)],
    ]);
  });

  it('says nothing of the wall where none was measured', () => {
    const [work] = served(borePlan(request([worn]))).cylinders;
    expect(work).not.toHaveProperty('wallLeft');
    expect(Object.keys(work ?? {}).sort()).toEqual(['name', 'stockRemoved', 'work']);
    const measured = { ...worn, wall: inch(0.2) };
    const plan = served(borePlan(request([measured], { leastWall: inch(0.1) })));
    // 0.2000 - (3.0105 - 3.0009) / 2 = 0.1952 in.
    expect(plan.cylinders[0]?.wallLeft).toBeCloseTo(inch(0.1952), 12);
  });

  it('names every sleeve, and every bore by its reason', () => {
    const plan = borePlan(request([worn, gone, { ...gone, name: 'gone too' }]));
    const said = describeBorePlan(plan, { units: 'inch' });
    expect(said[0]).toMatch(/^sleeve gone, gone too; bore to 3\.0070 to 3\.0075 in and hone to /);
    const faulty = borePlan(request([{ ...worn, faults: ['scored', 'pitted'] }]));
    expect(describeBorePlan(faulty, { units: 'inch' })).toContain(
      'worn must be bored: scored, pitted',
    );
  });

  it('says that a good bore needs no boring, and nothing more', () => {
    const good = { ...bore(1, 4), name: 'good' };
    expect(describeBorePlan(borePlan(request([good])), { units: 'inch' })).toEqual([
      'no boring needed at standard, 3.0000 to 3.0005 in',
      'good needs no boring at standard',
    ]);
    // 10 over is 3.0100 to 3.0105 in.
    const bored = { ...bore(101, 104), name: 'bored' };
    const plan = borePlan(request([bored]));
    expect(describeBorePlan(plan, { units: 'inch' }).at(-1)).toBe(
      'bored needs no boring at 0.0100 in over',
    );
  });

  it('names who set a rule as the wording asks', () => {
    const said = describeBorePlan(borePlan(request([worn])), {
      units: 'inch',
      nameBasis: ({ kind }) => `[${kind}]`,
    });
    expect(said.at(-1)).toBe('honing allowance 0.0030 in [common practice]');
  });
});

describe('describeBorePlan refuses', () => {
  it.each([undefined, null, 5, []])('%j for a plan', (wrong) => {
    const call = () => describeBorePlan(wrong as unknown as BorePlan, { units: 'inch' });
    expect(refusal(call).parameter).toBe('plan');
  });

  it('a wording without units', () => {
    const plan = borePlan(request([bore(1, 4)], { pistonsAtHand: [] }));
    expect(refusal(() => describeBorePlan(plan, {} as never)).parameter).toBe('wording.units');
    expect(refusal(() => describeBorePlan(plan, null as never)).parameter).toBe('wording');
  });
});

describe('rings at the door', () => {
  const ring = { gap: thou(12), measuredIn: inch(3) };

  it('take a gap of up to a tenth of the bore', () => {
    const at = (gap: Length) => () => ringGapIn({ gap, measuredIn: mm(80), bore: mm(80) });
    expect(at(mm(8))()).toBe(mm(8));
    expect(at(mm(0))()).toBe(0);
    expect(refusal(at(mm(8.001))).parameter).toBe('gap');
  });

  it('take bores that are within 5 % of the one they were measured in', () => {
    const at = (size: Length) => () => ringGapIn({ ...ring, measuredIn: mm(80), bore: size });
    for (const size of [mm(76.001), mm(83.999)]) expect(at(size)).not.toThrow();
    for (const size of [mm(75.999), mm(84.001)]) {
      const error = refusal(at(size));
      expect([error.parameter, error.value]).toEqual(['bore', size]);
    }
    const far = () => ringFilingNeeded({ ...ring, smallestBore: inch(2.8) });
    expect(refusal(far).parameter).toBe('smallestBore');
  });

  it('name the station that is wrong', () => {
    const stations = [
      { station: inch(1), mean: inch(3) },
      { station: inch(2), mean: inch(2.8) },
    ];
    const call = (more: object) => () => ringGapAlongBore({ ...ring, stations, ...more });
    expect(refusal(call({})).parameter).toBe('stations[1].mean');
    expect(
      refusal(call({ stations: [stations[0], { station: 3, mean: inch(3) }] })).parameter,
    ).toBe('stations[1].station');
    expect(refusal(() => ringGapAlongBore(null as never)).parameter).toBe('ring');
  });

  it('name what they do not know, and whose limit is out of reach', () => {
    const misspelt = { ...ring, smalestBore: inch(3) };
    expect(refusal(() => ringFilingNeeded(misspelt)).parameter).toBe('ring.smalestBore');
    const limited = (limits: object) => () => ringFilingNeeded({ ...ring, limits });
    expect(refusal(limited({ min: thou(-1) })).parameter).toBe('ring.limits.min');
    expect(refusal(limited({ max: thou(91) })).parameter).toBe('ring.limits.max');
    expect(limited({ min: thou(0), max: thou(90) })).not.toThrow();
  });

  it('judge the gap by its name, and say which rule of thumb it was', () => {
    const { finding } = ringFilingNeeded(ring);
    expect(finding.feature).toBe('ring gap');
    expect(recommendedRingGap(inch(3)).basis).toMatchObject({
      rule: expect.stringContaining('0.003 to 0.004'),
    });
  });
});

describe('pistons at the door', () => {
  it('fit a bore within 5 % at either end of their spans', () => {
    const at = (piston: object) => () =>
      pistonClearanceSpan({
        bore: { min: mm(100), max: mm(101) },
        piston: piston as { min: Length; max: Length },
      });
    expect(at({ min: mm(95.96), max: mm(104.9) })).not.toThrow();
    expect(refusal(at({ min: mm(95.94), max: mm(100) })).parameter).toBe('piston');
    expect(refusal(at({ min: mm(100), max: mm(105.1) })).parameter).toBe('piston');
    expect(refusal(at({ min: mm(100), max: 105 })).parameter).toBe('piston.max');
  });
});
