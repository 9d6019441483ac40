import {
  inch,
  type Length,
  lbf,
  mm,
  newton,
  percent,
  perSecond,
  ratio,
  rpm,
  springAtHeight,
  springSurge,
  springTest,
  valveSpring,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const spring = {
  wire: mm(3),
  outside: mm(27),
  coils: ratio(8),
  ends: 'squared and ground',
} as const;

describe('valveSpring', () => {
  it('is twice as stiff with half the coils, and sixteen times with double the wire on the same mean', () => {
    const { rate, activeCoils, meanDiameter, springIndex } = valveSpring(spring);
    expect([activeCoils, springIndex]).toEqual([6, 8]);
    expect(meanDiameter).toBeCloseTo(mm(24), 12);
    expect(valveSpring({ ...spring, coils: ratio(5) }).rate / rate).toBeCloseTo(2, 9);
    const thick = valveSpring({ ...spring, wire: mm(6), outside: mm(30) });
    expect(thick.rate / rate).toBeCloseTo(16, 9);
  });

  it('swings as a bar of its mass and stiffness does: half a wave along it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.002, max: 0.004, noNaN: true }),
        fc.integer({ min: 5, max: 12 }),
        (wire, coils) => {
          const of = { ...spring, wire: wire as Length, coils: ratio(coils) };
          const { rate, activeMass, surgeFrequency, waveTime } = valveSpring(of);
          // Wire of that length and section, by hand.
          const mass = 7850 * Math.PI * (0.027 - wire) * (coils - 2) * ((Math.PI * wire ** 2) / 4);
          expect(activeMass / mass).toBeCloseTo(1, 9);
          expect((2 * surgeFrequency) ** 2 * activeMass).toBeCloseTo(rate, 6);
          expect(2 * waveTime * surgeFrequency).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  it('is one wire higher with round ends, when shut', () => {
    const { solidHeight } = valveSpring(spring);
    expect(solidHeight).toBeCloseTo(mm(24), 12);
    expect(valveSpring({ ...spring, ends: 'squared' }).solidHeight).toBeCloseTo(mm(27), 12);
  });

  it('refuses a wire that no such coil is wound of, and coils that are all dead', () => {
    expect(refusal(() => valveSpring({ ...spring, outside: mm(8) })).parameter).toBe('outside');
    expect(refusal(() => valveSpring({ ...spring, outside: mm(130) })).parameter).toBe('outside');
    expect(refusal(() => valveSpring({ ...spring, coils: ratio(2) })).parameter).toBe('coils');
  });
});

describe('springAtHeight', () => {
  const free = { ...spring, freeHeight: mm(50) };

  it('presses by its rate, with nothing at its free height, and the stress follows', () => {
    const { rate } = valveSpring(spring);
    const at = (height: number) => springAtHeight({ ...free, height: mm(height) });
    expect(at(50)).toMatchObject({ force: 0, shearStress: 0 });
    expect(at(40).force).toBeCloseTo(rate * 0.01, 9);
    expect(at(30).shearStress / at(40).shearStress).toBeCloseTo(2, 9);
    // C = 8: K = 31 / 28 + 0.615 / 8 = 1.184018; stress K 8 F 24 / (π 27).
    expect(at(40).shearStress / at(40).force).toBeCloseTo(
      (1.1840179 * 8 * 0.024) / (Math.PI * 27e-9),
      -3,
    );
  });

  it('judges its room before coil bind, by a rule of thumb that it calls one', () => {
    const room = (height: number) => springAtHeight({ ...free, height: mm(height) });
    expect(room(25.5).finding).toMatchObject({
      verdict: 'within',
      basis: { kind: 'common practice' },
    });
    expect(room(24.5).finding.verdict).toBe('below');
    expect(room(23).toCoilBind).toBeCloseTo(mm(-1), 12);
    const own = springAtHeight({ ...free, height: mm(25.5), limits: { min: mm(2) } });
    expect(own.finding).toMatchObject({ verdict: 'below', basis: { kind: 'specified' } });
  });

  it('refuses a height above the free one', () => {
    expect(refusal(() => springAtHeight({ ...free, height: mm(51) })).parameter).toBe('height');
  });
});

describe('springSurge', () => {
  it('finds the lowest harmonic of the cam that meets the spring at that speed or below', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 1000 }),
        fc.integer({ min: 100, max: 3000 }),
        (frequency, speed) => {
          const { order, lowestHarmonic, meetsAt } = springSurge({
            surgeFrequency: perSecond(frequency),
            camSpeed: rpm(speed),
          });
          expect(order).toBeCloseTo((frequency * 60) / speed, 9);
          expect(meetsAt).toBeLessThanOrEqual(rpm(speed) * (1 + 1e-9));
          expect((lowestHarmonic * meetsAt) / (2 * Math.PI)).toBeCloseTo(frequency, 6);
          // The harmonic below it would need more speed.
          if (lowestHarmonic > 1) expect(lowestHarmonic - 1).toBeLessThan(order);
        },
      ),
    );
  });

  it('takes an order on a harmonic for that harmonic', () => {
    const on = springSurge({ surgeFrequency: perSecond(300), camSpeed: rpm(900) });
    expect(on.lowestHarmonic).toBe(20);
    expect(on.finding.verdict).toBe('within');
  });

  it('takes the safe end of its rule, and the caller’s own limit before it', () => {
    const fast = { surgeFrequency: perSecond(300), camSpeed: rpm(1100) };
    expect(springSurge(fast).finding).toMatchObject({
      verdict: 'below',
      basis: { kind: 'common practice' },
    });
    expect(springSurge(fast).finding).not.toHaveProperty('grade');
    expect(springSurge({ ...fast, limits: { min: ratio(12) } }).finding).toMatchObject({
      verdict: 'within',
      basis: { kind: 'specified' },
    });
    expect(refusal(() => springSurge({ ...fast, basis: { kind: 'specified' } })).parameter).toBe(
      'surging.limits',
    );
  });
});

describe('springTest', () => {
  const tested = {
    closed: { height: inch(1.095), force: lbf(19), specified: lbf(19) },
    open: { height: inch(0.88), force: lbf(42), specified: lbf(42) },
  };

  it('finds a sound spring sound: nothing lost, the rate that is specified', () => {
    const test = springTest(tested);
    expect(test.rateShare).toBeCloseTo(1, 12);
    expect(test.closed).toMatchObject({ value: 0, verdict: 'within', grade: 'serviceable' });
    expect(test.rateSpan.min).toBe(test.rate);
  });

  it('reads off a spring what it was computed to be', () => {
    const free = { ...spring, freeHeight: mm(50) };
    const at = (height: number) => ({
      height: mm(height),
      force: springAtHeight({ ...free, height: mm(height) }).force,
    });
    const { rate, freeHeight } = springTest({ closed: at(40), open: at(31) });
    expect(rate / valveSpring(spring).rate).toBeCloseTo(1, 9);
    expect(freeHeight).toBeCloseTo(mm(50), 9);
  });

  it('tells a spring that has sagged from one of another rate', () => {
    const force = (newtons: number, of: typeof tested.open) => ({ ...of, force: lbf(newtons) });
    // Sagged: as much force gone at both heights, the rate as before.
    const sagged = springTest({ closed: force(16, tested.closed), open: force(39, tested.open) });
    expect(sagged.rateShare).toBeCloseTo(1, 9);
    expect(sagged.closed?.value).toBeCloseTo(3 / 19, 9);
    expect(sagged.closed).toMatchObject({ verdict: 'above', grade: 'undecided' });
    expect(sagged.open?.grade).toBe('serviceable');
    // Another: the same force closed, less gained.
    const other = springTest({ closed: tested.closed, open: force(37, tested.open) });
    expect(other.rateShare).toBeCloseTo(18 / 23, 9);
  });

  it('condemns by a limit of the caller’s own, as far as the tester bears it', () => {
    const weak = {
      ...tested,
      closed: { ...tested.closed, force: lbf(16.5) },
      limits: { max: percent(10) },
    };
    expect(springTest(weak).closed?.grade).toBe('worn out');
    const rough = springTest({ ...weak, forceWithin: lbf(1) });
    expect(rough.closed?.verdict).toBe('undecided');
    // 25.5 ± 2 lb over 0.215 in.
    expect(rough.rateSpan.min / rough.rate).toBeCloseTo(23.5 / 25.5, 9);
    expect(rough.rateSpan.max / rough.rate).toBeCloseTo(27.5 / 25.5, 9);
    expect(springTest({ ...weak, forceWithin: lbf(20) }).rateSpan.min).toBe(0);
  });

  it('leaves out what was not specified', () => {
    const bare = springTest({
      closed: { height: mm(40), force: newton(90) },
      open: { height: mm(31), force: newton(180), specified: newton(190) },
    });
    expect(Object.keys(bare)).toEqual(['rate', 'rateSpan', 'freeHeight', 'open']);
  });

  it('refuses readings that are swapped, by name', () => {
    const swapped = { closed: tested.open, open: tested.closed };
    expect(refusal(() => springTest(swapped)).parameter).toBe('open.height');
    const force = { ...tested, open: { ...tested.open, force: lbf(10) } };
    expect(refusal(() => springTest(force)).parameter).toBe('open.force');
    const printed = { ...tested, open: { ...tested.open, specified: lbf(10) } };
    expect(refusal(() => springTest(printed)).parameter).toBe('open.specified');
    const loose = { ...tested, limits: { max: ratio(10) } };
    expect(refusal(() => springTest(loose)).parameter).toBe('tested.limits.max');
  });
});
