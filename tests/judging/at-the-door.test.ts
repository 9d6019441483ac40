import {
  type Angle,
  degree,
  describe as describeFinding,
  describeGrindPlan,
  type Finding,
  type GrindPlan,
  grindPlan,
  inch,
  journalShape,
  judge,
  kelvin,
  type Length,
  mm,
  newtonMetre,
  pistonClearance,
  type Quantity,
  thou,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { guardList, guardQuantity, guardWhole } from '../../src/judging/guards.js';
import { describeLimits, sayDistance } from '../../src/judging/say.js';
import { notNumbers, refusal } from '../quantities/refusal.js';

const readings = (angle: Angle = degree(90), station: Length = inch(1)) =>
  [degree(0), angle].flatMap((at) =>
    [inch(0), station].map((place) => ({ station: place, angle: at, diameter: inch(2) })),
  );

describe('what an engine can have', () => {
  const plan = (more: object) =>
    grindPlan({
      journals: [
        { name: 'rod 1', smallest: mm(50), largest: mm(50), outOfRound: mm(0), taper: mm(0) },
      ],
      standard: { min: mm(50), max: mm(50) },
      steps: [mm(0.25)],
      ...more,
    });

  it.each<[string, string, (size: Length) => unknown, Length, Length]>([
    ['an undersize', 'steps[0]', (size) => plan({ steps: [size] }), mm(0), mm(3)],
    ['stock', 'cleanUpAllowance', (size) => plan({ cleanUpAllowance: size }), mm(0), mm(0.5)],
    ['a tolerance', 'sizeAllowance', (size) => plan({ sizeAllowance: size }), mm(0), mm(0.2)],
    [
      'a resolution',
      'options.resolution',
      (resolution) => journalShape(readings(), { resolution }),
      mm(0),
      mm(0.2),
    ],
  ])('of %s ends where a unit was forgotten, both ends in it', (_, parameter, use, least, most) => {
    expect(() => use(least)).not.toThrow();
    expect(() => use(most)).not.toThrow();
    for (const outside of [least - 1e-9, most + 1e-9]) {
      const error = refusal(() => use(outside as Length));
      expect([error.parameter, error.value]).toEqual([parameter, outside]);
    }
  });

  it('of angles is two turns either way', () => {
    for (const turns of [-720 + 90, 720 - 90]) {
      expect(journalShape(readings(degree(turns))).lines).toHaveLength(2);
    }
    for (const beyond of [degree(720.001), degree(-720.001)]) {
      const error = refusal(() => journalShape(readings(beyond)));
      expect([error.parameter, error.value]).toEqual(['readings[2].angle', beyond]);
    }
  });

  it('of a piston is within 5 % of its bore', () => {
    const bore = mm(100);
    expect(pistonClearance({ bore, piston: mm(95.001) })).toBeCloseTo(mm(4.999), 12);
    expect(pistonClearance({ bore, piston: mm(104.999) })).toBeCloseTo(mm(-4.999), 12);
    for (const piston of [mm(94.999), mm(105.001)]) {
      const error = refusal(() => pistonClearance({ bore, piston }));
      expect([error.parameter, error.value]).toEqual(['piston', piston]);
    }
  });
});

describe('a whole number', () => {
  const guard = (value: unknown, multipleOf?: number) =>
    guardWhole('places', value as number, [4, 12], 'a hint', multipleOf);

  it('is one within its bounds, both bounds in it', () => {
    expect([4, 7, 12].map((value) => guard(value))).toEqual([4, 7, 12]);
    for (const wrong of [3, 13, 4.5, '8', ...notNumbers]) {
      const error = refusal(() => guard(wrong));
      expect([error.parameter, error.value]).toEqual(['places', wrong]);
    }
  });

  it('is a multiple of another where that is asked for', () => {
    expect([4, 8, 12].map((value) => guard(value, 4))).toEqual([4, 8, 12]);
    for (const wrong of [0, 6, 7, 16]) {
      expect(refusal(() => guard(wrong, 4)).parameter).toBe('places');
    }
  });
});

describe('a list', () => {
  it('may be empty where nothing is asked of it, but has no hole', () => {
    expect(() => guardList('faults', [], 0, 'faults')).not.toThrow();
    expect(() => guardList('faults', ['pitted'], 0, 'faults')).not.toThrow();
    for (const holed of [[undefined], ['pitted', undefined], new Array(1)]) {
      expect(refusal(() => guardList('faults', holed, 0, 'faults')).parameter).toMatch(/^faults/);
    }
  });
});

describe('a quantity', () => {
  it('is so small that the sum of two can be held', () => {
    for (const sign of [1, -1]) {
      const most = (0.999e100 * sign) as Quantity<'torque'>;
      expect(guardQuantity('torque', most, 'torque')).toBe(most);
      const more = (1e100 * sign) as Quantity<'torque'>;
      const error = refusal(() => guardQuantity('torque', more, 'torque'));
      expect([error.parameter, error.value]).toEqual(['torque', more]);
    }
  });
});

describe('a finding at the door', () => {
  const good = judge({
    feature: 'end play',
    dimension: 'length',
    value: thou(12),
    limits: { min: thou(4), max: thou(10) },
    basis: { kind: 'specified' },
    uncertainty: thou(1),
  });
  const said = (changed: object) => () =>
    describeFinding({ ...good, ...changed } as Finding<'length'>, { units: 'inch' });

  it.each([
    ['feature', ''],
    ['dimension', 'mood'],
    ['value', Number.NaN],
    ['margin', Number.NaN],
    ['uncertainty', thou(-1)],
    ['uncertainty', Number.NaN],
    ['verdict', 'good'],
    ['limits', {}],
    ['basis', null],
  ])('is refused by the name of its %s, %j', (field, wrong) => {
    expect(refusal(said({ [field]: wrong })).parameter).toBe(`finding.${field}`);
  });

  it('names a part of its limits or basis too', () => {
    expect(refusal(said({ limits: { max: 'x' } })).parameter).toBe('finding.limits.max');
    expect(refusal(said({ basis: { kind: 'published' } })).parameter).toBe('finding.basis.source');
  });

  it('names the units of a wording', () => {
    expect(refusal(() => describeFinding(good, { units: 'si' as never })).parameter).toBe(
      'wording.units',
    );
  });
});

describe('what another function made', () => {
  const plan = grindPlan({
    journals: [
      { name: 'rod 1', smallest: mm(49.9), largest: mm(49.9), outOfRound: mm(0), taper: mm(0) },
    ],
    standard: { min: mm(50), max: mm(50) },
    steps: [mm(0.25)],
  });

  it('is refused by its name where it holds something else', () => {
    for (const wrong of [{}, { because: [] }, { ...plan, because: undefined }]) {
      const call = () => describeGrindPlan(wrong as unknown as GrindPlan, { units: 'inch' });
      expect(refusal(call).parameter).toMatch(/^plan/);
    }
  });

  it('is not blamed for what goes wrong in the caller’s own function', () => {
    const nameBasis = () => {
      throw new Error('no such note');
    };
    const call = () => describeGrindPlan(plan, { units: 'inch', nameBasis });
    expect(call).toThrow('no such note');
  });
});

describe('a distance', () => {
  it('has the decimals of the trade as long as they show half a digit', () => {
    expect(sayDistance(inch(0.0003), 'length', 'inch')).toBe('0.0003 in');
    expect(sayDistance(inch(0.00005), 'length', 'inch')).toBe('0.0001 in');
    expect(sayDistance(inch(0.00004), 'length', 'inch')).toBe('0.00004 in');
    expect(sayDistance(inch(-0.00004), 'length', 'inch')).toBe('-0.00004 in');
    expect(sayDistance(kelvin(5) as number, 'temperature', 'metric')).toBe('5.0 °C');
  });

  it('of nothing is said without looking for a digit for ever', () => {
    expect(sayDistance(0, 'length', 'metric')).toMatch(/^0\.0+ mm$/);
  });
});

describe('one limit', () => {
  it('is said alone, whichever it is', () => {
    expect(describeLimits({ max: newtonMetre(50) }, 'torque', 'metric')).toBe(
      'the limit of 50.0 N·m',
    );
    expect(describeLimits({ min: mm(1) }, 'length', 'metric')).toBe('the limit of 1.000 mm');
  });
});
