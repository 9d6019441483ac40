import {
  type BoltPlace,
  boltStrength,
  boltStretch,
  degree,
  describeTighteningPlan,
  describeTorqueSetting,
  type Force,
  inch,
  jointUnderLoad,
  type Length,
  lbf,
  lbfFoot,
  lbfInch,
  lbfPerInch,
  MPa,
  memberStiffness,
  mm,
  nextSlot,
  nutFactor,
  permanentStretch,
  preloadFromTorque,
  psi,
  type Ratio,
  ratio,
  type Stiffness,
  screwTorque,
  thou,
  threadAreas,
  threadOf,
  tighteningPlan,
  tighteningTorque,
  torqueSetting,
  turnOfNut,
  unknownBolt,
  valueIn,
  wrenchSetting,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('boltStrength', () => {
  it('takes the edge of a size range to the smaller sizes', () => {
    const at = (size: number) => boltStrength({ grade: 'SAE 5', diameter: inch(size) }).proofStress;
    expect([at(1), at(1.0625)]).toEqual([psi(85_000), psi(74_000)]);
  });

  it('never gives a larger bolt of the softest grades more, nor yields below proof', () => {
    for (const grade of ['SAE 1', 'SAE 2', 'SAE 5', 'SAE 8'] as const) {
      for (const size of [0.25, 0.5, 0.75, 0.875, 1, 1.25, 1.5]) {
        const { proofStress, yieldStrength, tensileStrength } = boltStrength({
          grade,
          diameter: inch(size),
        });
        expect(proofStress).toBeLessThan(yieldStrength);
        expect(yieldStrength).toBeLessThan(tensileStrength);
      }
    }
  });

  it.each([
    ['SAE 5', 0.19],
    ['SAE 8', 1.75],
    ['SAE 5.2', 1.125],
    ['ISO 9.8', 0.75],
    ['ISO 8.8', 1.75],
  ] as const)('refuses %s at %s in, which is not made', (grade, size) => {
    expect(refusal(() => boltStrength({ grade, diameter: inch(size) })).parameter).toBe('diameter');
  });
});

describe('unknownBolt', () => {
  it('reckons with the low end of the lowest reading', () => {
    const bolt = unknownBolt({
      hardness: { scale: 'HB', number: { min: ratio(180), max: ratio(220) } },
    });
    if (bolt.outcome !== 'from hardness') return expect.fail(bolt.outcome);
    // 3.1 * 180 = 558; 0.545 * 558 = 304.1; 3.8 * 220 = 836.
    expect(valueIn(bolt.tensile.min, MPa)).toBeCloseTo(558, 6);
    expect(valueIn(bolt.tensile.max, MPa)).toBeCloseTo(836, 6);
    expect(valueIn(bolt.proofStress, MPa)).toBeCloseTo(304.11, 6);
    expect(bolt.proofStress).toBe(bolt.proof.min);
  });

  it('reads Vickers 5 % lower', () => {
    const hv = unknownBolt({ hardness: { scale: 'HV', number: ratio(200) } });
    const hb = unknownBolt({ hardness: { scale: 'HB', number: ratio(190) } });
    expect(hv).toEqual(hb);
  });

  it('never promises more than the weakest grade of that hardness has', () => {
    fc.assert(
      fc.property(between(90, 414), (number) => {
        const bolt = unknownBolt({ hardness: { scale: 'HB', number: ratio(number) } });
        expect(bolt.outcome).toBe('from hardness');
        if ('proofStress' in bolt) expect(bolt.proofStress).toBeLessThan(0.55 * bolt.tensile.min);
      }),
    );
  });
});

describe('torque', () => {
  const bolt = fc.record({
    preload: between(500, 50_000).map((force) => force as Force),
    diameter: between(0.004, 0.03).map((size) => size as Length),
    factor: between(0.05, 0.4).map((factor) => factor as Ratio),
  });

  it('comes back as the preload', () => {
    fc.assert(
      fc.property(bolt, ({ preload, diameter, factor }) => {
        const { max } = tighteningTorque({ preload, diameter, nutFactor: factor });
        const back = preloadFromTorque({ torque: max, diameter, nutFactor: factor });
        expect(back.min / preload).toBeCloseTo(1, 12);
        expect(back.max).toBe(back.min);
      }),
    );
  });

  it('of the full equation is the nut factor of it, and more than stretches the bolt', () => {
    const thread = threadOf('M10');
    fc.assert(
      fc.property(between(0.05, 0.3), between(0.05, 0.3), (inThread, under) => {
        const {
          torque,
          nutFactor: factor,
          toStretch,
        } = screwTorque({
          thread,
          preload: lbf(5000),
          threadFriction: ratio(inThread),
          faceFriction: ratio(under),
        });
        const short = tighteningTorque({
          preload: lbf(5000),
          diameter: thread.diameter,
          nutFactor: factor,
        });
        expect(short.max / torque.max).toBeCloseTo(1, 12);
        expect(torque.min).toBeGreaterThan(toStretch);
      }),
    );
  });

  it('falls to what stretches the bolt as friction vanishes', () => {
    const { torque, toStretch } = screwTorque({
      thread: threadOf('M10'),
      preload: lbf(5000),
      threadFriction: ratio(0.01),
      faceFriction: ratio(0.01),
    });
    expect(torque.max).toBeLessThan(1.6 * toStretch);
  });
});

describe('bolts as springs', () => {
  it('stretch by the length over the area of each section', () => {
    // 20 kN / 207 GPa * (30 mm / 78.54 mm² + 15 mm / 58.0 mm²) = 9.6618e-5 mm² * 0.64060 /mm = 0.0619 mm.
    const { stretch, stiffness } = boltStretch({
      preload: 20_000 as Force,
      sections: [
        { length: mm(30), diameter: mm(10) },
        { length: mm(15), diameter: threadAreas(threadOf('M10')).stressDiameter },
      ],
    });
    expect(valueIn(stretch, mm)).toBeCloseTo(0.0619, 4);
    expect(stretch * stiffness).toBeCloseTo(20_000, 6);
  });

  it('clamp parts that are as stiff whichever way they lie, and in how many slices', () => {
    const layers = [
      { thickness: mm(12), elasticity: MPa(207_000) },
      { thickness: mm(25), elasticity: MPa(100_000) },
    ];
    const parts = { hole: mm(10), face: mm(16) };
    const stiffness = memberStiffness({ ...parts, layers });
    expect(memberStiffness({ ...parts, layers: [...layers].reverse() }) / stiffness).toBeCloseTo(
      1,
      12,
    );
    const sliced = layers.flatMap(({ thickness, elasticity }) =>
      Array.from({ length: 5 }, () => ({ thickness: (thickness / 5) as Length, elasticity })),
    );
    expect(memberStiffness({ ...parts, layers: sliced }) / stiffness).toBeCloseTo(1, 12);
  });

  const joints = fc.record({
    preload: between(1000, 50_000).map((force) => force as Force),
    pull: between(0, 80_000).map((force) => force as Force),
    boltStiffness: between(1e8, 1e9).map((k) => k as Stiffness),
    memberStiffness: between(2e8, 5e9).map((k) => k as Stiffness),
  });

  it('share a load: what holds the joint and what pulls at it make up the load on the bolt', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const { boltLoad, clampLeft, opensAt, outcome } = jointUnderLoad(joint);
        expect(boltLoad.max).toBeCloseTo(joint.pull + clampLeft.max, 6);
        expect(boltLoad.max).toBeGreaterThanOrEqual(Math.max(joint.preload, joint.pull) - 1e-6);
        if (Math.abs(joint.pull - opensAt.min) > 1) {
          expect(outcome).toBe(joint.pull < opensAt.min ? 'stays closed' : 'opens');
        }
      }),
    );
  });

  it('turn by the pitch for each pitch of stretch and squeeze', () => {
    // 10 kN on 1e8 N/m and 1e9 N/m: 0.1 mm + 0.01 mm, of a pitch of 1.1 mm a tenth of a turn.
    const turn = turnOfNut({
      preload: 11_000 as Force,
      snug: 1000 as Force,
      pitch: mm(1.1),
      boltStiffness: 1e8 as Stiffness,
      memberStiffness: 1e9 as Stiffness,
    });
    expect(valueIn(turn, degree)).toBeCloseTo(36, 9);
  });
});

describe('nextSlot', () => {
  const nut = {
    torque: { min: lbfFoot(20), max: lbfFoot(45) },
    diameter: inch(0.375),
    pitch: inch(1 / 24),
    nutFactor: ratio(0.18),
    boltStiffness: lbfPerInch(1_750_000),
    memberStiffness: lbfPerInch(7_000_000),
  };

  it.each([
    [6, 1, 60],
    [6, 2, 30],
    [4, 1, 90],
    [4, 2, 90],
    [8, 2, 45],
    [10, 2, 18],
  ] as const)('of %i slots and %i holes is %i degrees on', (slots, holes, angle) => {
    expect(valueIn(nextSlot({ ...nut, slots, holes }).slotPitch, degree)).toBeCloseTo(angle, 9);
  });

  it('is judged by the torque that it takes', () => {
    // 20° at 1.4e6 lbf/in and 24 threads: 3241 lbf, 18.2 lbf·ft on top of 20.
    const at = (turn: number, max: number) =>
      nextSlot({ ...nut, turn: degree(turn), torque: { ...nut.torque, max: lbfFoot(max) } });
    expect(at(20, 45).outcome).toBe('within the torque');
    expect(at(20, 30).outcome).toBe('another nut or washer');
    expect(valueIn(at(20, 45).torque.max, lbfFoot)).toBeCloseTo(38.23, 2);
    expect(valueIn(at(20, 45).preloadGain.max, lbf)).toBeCloseTo(3240.7, 1);
  });

  it('may be anywhere up to a slot where it was not measured', () => {
    const { outcome, turn, torque } = nextSlot(nut);
    expect(outcome).toBe('may pass the torque');
    expect(turn.min).toBe(0);
    expect(torque.min).toBe(nut.torque.min);
  });

  it('never turns back', () => {
    const wrong = { ...nut, turn: degree(-5) };
    expect(refusal(() => nextSlot(wrong)).parameter).toBe('turn');
    expect(refusal(() => nextSlot({ ...nut, slots: 7 })).parameter).toBe('slots');
  });
});

describe('wrenchSetting', () => {
  it('gives the fastener its torque, whatever the angle', () => {
    fc.assert(
      fc.property(between(0.15, 0.6), between(0, 0.12), between(0, Math.PI), (arm, off, angle) => {
        const torque = lbfFoot(40);
        const adapter = { wrench: arm as Length, adapter: off as Length, angle: angle as never };
        const set = wrenchSetting({ torque, prevailing: lbfInch(12), adapter });
        const force = set / arm;
        expect(force * (arm + off * Math.cos(angle))).toBeCloseTo(torque + lbfInch(12), 9);
      }),
    );
  });
});

describe('permanentStretch', () => {
  const bolt = { length: inch(2.2515), asNew: inch(2.25) };

  it('lets the limit of the caller win over the rule of thumb', () => {
    expect(permanentStretch(bolt).finding.verdict).toBe('above');
    const own = permanentStretch({ ...bolt, limits: { max: thou(2) } });
    expect(own.finding.verdict).toBe('within');
    expect(own.finding.basis).toEqual({ kind: 'specified' });
  });

  it('gives no verdict that the reading does not bear', () => {
    const { finding } = permanentStretch({ ...bolt, uncertainty: thou(1) });
    expect(finding.verdict).toBe('undecided');
  });
});

describe('torqueSetting', () => {
  const bolt = {
    thread: threadOf('3/8-24 UNF'),
    proofStress: psi(85_000),
    condition: 'oiled',
  } as const;

  it('never takes the bolt past its proof load by its own reckoning, whatever the thread is like', () => {
    const any = fc.record({
      condition: fc.constantFrom(
        'dry',
        'oiled',
        'waxed',
        'anti-seize',
        'zinc plated',
        'cadmium plated',
        'phosphated and oiled',
      ),
      proofStress: between(1.6e8, 9e8).map((stress) => stress as never),
      share: between(0.1, 1).map((share) => share as Ratio),
    });
    fc.assert(
      fc.property(any, (given) => {
        const setting = torqueSetting({ ...bolt, ...given });
        expect(setting.finding.verdict).toBe('within');
        expect(setting.preload.max).toBeLessThanOrEqual(setting.proofLoad * (1 + 1e-9));
        const { span } = nutFactor(given.condition);
        const { min, max } = preloadFromTorque({
          torque: setting.torque.max,
          diameter: bolt.thread.diameter,
          nutFactor: span,
        });
        expect(setting.preload.min / min).toBeCloseTo(1, 12);
        expect(setting.preload.max / max).toBeCloseTo(1, 12);
      }),
    );
  });

  it('reckons with a shank that is thinner than the thread', () => {
    const waisted = torqueSetting({ ...bolt, leastDiameter: inch(0.3) });
    // π / 4 * 0.3² * 85 000 = 6008 lbf.
    expect(valueIn(waisted.proofLoad, lbf)).toBeCloseTo(6008.3, 1);
    expect(torqueSetting({ ...bolt, leastDiameter: inch(0.375) }).proofLoad).toBe(
      torqueSetting(bolt).proofLoad,
    );
  });

  it('keeps the torque of a dry thread as reckoned, and an oiled one down', () => {
    expect(torqueSetting({ ...bolt, condition: 'dry' }).keptDown).toBeUndefined();
    expect(torqueSetting(bolt).keptDown).toBe(true);
  });
});

describe('tighteningPlan', () => {
  const place = (name: string, along: number, across: number): BoltPlace => ({
    name,
    along: mm(along),
    across: mm(across),
  });
  const circle = (count: number) =>
    Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * i) / count;
      return place(String(i + 1), 40 * Math.cos(angle), 40 * Math.sin(angle));
    });
  const orderOf = (bolts: readonly BoltPlace[]) =>
    tighteningPlan({ bolts, torque: lbfFoot(30) }).sequence.join(' ');

  it.each([
    [4, '1 3 2 4'],
    [5, '1 3 5 2 4'],
    [6, '1 4 2 5 3 6'],
    [8, '1 5 3 7 2 6 4 8'],
  ])('goes crosswise over %i bolts on a circle: %s', (count, order) => {
    expect(orderOf(circle(count))).toBe(order);
  });

  it('goes from the middle outwards over a head of two rows', () => {
    const rows = [0, 1].flatMap((row) =>
      [0, 1, 2, 3, 4].map((column) =>
        place('abcdefghij'[row * 5 + column] ?? '', 60 * column, 80 * row),
      ),
    );
    const order = orderOf(rows).split(' ');
    expect(order.slice(0, 2)).toEqual(['c', 'h']);
    expect(order.slice(2, 6).sort()).toEqual(['b', 'd', 'g', 'i']);
    expect(order.slice(6).sort()).toEqual(['a', 'e', 'f', 'j']);
    // Crosswise: each second one is across the middle from the one before.
    expect(order.slice(2, 4)).toEqual(['b', 'i']);
  });

  it('takes every bolt once, wherever the pattern lies', () => {
    const bolts = fc.uniqueArray(
      fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 })),
      {
        minLength: 2,
        maxLength: 12,
        selector: ([along, across]) => along * 10 + across,
      },
    );
    fc.assert(
      fc.property(bolts, between(-500, 500), (places, shift) => {
        const at = (by: number) =>
          places.map(([along, across], i) => place(`b${i}`, 30 * along + by, 30 * across - by));
        const { sequence } = tighteningPlan({ bolts: at(0), torque: lbfFoot(30) });
        expect([...sequence].sort()).toEqual(
          at(0)
            .map(({ name }) => name)
            .sort(),
        );
        expect(tighteningPlan({ bolts: at(shift), torque: lbfFoot(30) }).sequence).toHaveLength(
          places.length,
        );
      }),
    );
  });

  it('ends at the full torque, to the bit', () => {
    for (const rounds of [2, 3] as const) {
      const plan = tighteningPlan({ bolts: circle(4), torque: lbfFoot(31.7), rounds });
      expect(plan.rounds).toHaveLength(rounds);
      expect(plan.rounds.at(-1)).toEqual({ share: 1, torque: lbfFoot(31.7) });
    }
  });

  it('is told in the units of the wrench', () => {
    const plan = tighteningPlan({ bolts: circle(4), torque: lbfInch(90), rounds: 3 });
    const told = (wrench: 'lbf·in' | 'lbf·ft' | 'N·m' | 'kgf·m') =>
      describeTighteningPlan(plan, { units: 'inch', wrench }).slice(1, 4);
    expect(told('lbf·in')).toEqual([
      'round 1: 30 lbf·in',
      'round 2: 60 lbf·in',
      'round 3: 90 lbf·in',
    ]);
    expect(told('lbf·ft')).toEqual([
      'round 1: 2.5 lbf·ft',
      'round 2: 5.0 lbf·ft',
      'round 3: 7.5 lbf·ft',
    ]);
    expect(told('kgf·m').at(-1)).toBe('round 3: 1.04 kgf·m');
  });
});

describe('what is said of a torque', () => {
  it('names the state of the thread, the span of preloads and the doubt', () => {
    const lines = describeTorqueSetting(
      torqueSetting({
        thread: threadOf('M8'),
        proofStress: MPa(580),
        condition: 'waxed',
      }),
      { units: 'metric' },
    );
    expect(lines[0]).toContain('waxed');
    expect(lines[1]).toContain('torque is a poor measure of preload');
    expect(lines.at(-1)).toContain("for want of the maker's figure");
  });
});
