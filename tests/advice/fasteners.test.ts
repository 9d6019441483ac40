import {
  degree,
  describeTorqueSetting,
  inch,
  jointUnderLoad,
  lbf,
  lbfFoot,
  lbfPerInch,
  MPa,
  nextSlot,
  permanentStretch,
  psi,
  ratio,
  threadOf,
  torqueSetting,
  unknownBolt,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const rodBolt = { thread: threadOf('3/8-24 UNF'), proofStress: psi(85_000) };

describe('a torque', () => {
  it('that the maker gives for a dry thread is kept, and found to overload an oiled one', () => {
    const makers = lbfFoot(35);
    const oiled = torqueSetting({ ...rodBolt, condition: 'oiled', makers });
    expect(oiled.outcome).toBe("maker's");
    expect(oiled.torque).toEqual({ min: makers, max: makers });
    expect(oiled.finding.verdict).toBe('above');
    const [first, second, ...others] = describeTorqueSetting(oiled, { units: 'inch' });
    // Shigley's Eq. 8-27 with the least nut factor of 0.10: 35 * 12 / (0.10 * 0.375) = 11200 lbf; a share of it at the
    // highest of 0.26 is 4308 lbf, less than the proof load of 0.0878 * 85000 = 7465 lbf.
    expect(first).toMatch(
      /^the maker's torque may overload the bolt if its thread is slippery: highest preload 11200\.0 lbf: .* look up first that its grade/,
    );
    expect(others.join()).not.toContain('highest preload');
    expect(second).toBe(
      'tighten to 35.0 lbf·ft at the fastener, thread and face oiled (specified)',
    );
  });

  it('that overloads the bolt whatever the friction is told so before it is told', () => {
    // 80 * 12 / (0.26 * 0.375) = 9846 lbf at the highest nut factor is past the proof load of 7465 lbf.
    const over = torqueSetting({ ...rodBolt, condition: 'oiled', makers: lbfFoot(80) });
    const [first] = describeTorqueSetting(over, { units: 'inch' });
    expect(first).toContain('overloads it even at the highest nut factor');
    // 23 * 12 / (0.10 * 0.375) = 7360 lbf is within it.
    const within = torqueSetting({ ...rodBolt, condition: 'oiled', makers: lbfFoot(23) });
    expect(describeTorqueSetting(within, { units: 'inch' })[0]).toMatch(/^tighten to 23\.0 lbf·ft/);
  });

  it('says what is on the thread, and that it is a poor measure of preload, every time', () => {
    for (const condition of ['dry', 'oiled', 'waxed'] as const) {
      const text = describeTorqueSetting(torqueSetting({ ...rodBolt, condition }), {
        units: 'inch',
      }).join('; ');
      expect(text).toContain(`thread and face ${condition}`);
      expect(text).toContain('poor measure of preload');
      expect(text).toContain("for want of the maker's figure");
    }
  });

  it('is lower for a slipperier thread', () => {
    const at = (condition: 'dry' | 'oiled' | 'waxed') =>
      torqueSetting({ ...rodBolt, condition }).torque.max;
    expect(at('oiled')).toBeLessThan(at('dry'));
    expect(at('waxed')).toBeLessThan(at('oiled'));
  });
});

describe('a bolt', () => {
  it('without a mark is as weak as the weakest, and no harder reading makes it a good one', () => {
    const unmarked = unknownBolt();
    expect(unmarked.outcome).toBe('weakest');
    if ('proofStress' in unmarked) expect(unmarked.proofStress).toBe(MPa(159));
    const hard = unknownBolt({ hardness: { scale: 'HB', number: ratio(450) } });
    expect(hard.outcome).toBe('too hard');
    // One of several readings in a soft place decides.
    const soft = { min: ratio(80), max: ratio(200) };
    expect(unknownBolt({ hardness: { scale: 'HB', number: soft } }).outcome).toBe('too soft');
  });

  it('of grade 8 hardness is not taken for a grade 8 bolt', () => {
    // 33 to 39 HRC is about 311 to 363 HB; grade 8 bears 827 MPa for certain, a hardness only 525.
    const bolt = unknownBolt({ hardness: { scale: 'HB', number: ratio(311) } });
    if ('proofStress' in bolt) expect(bolt.proofStress).toBeLessThan(psi(120_000));
  });

  it('that has stayed longer is past the rule of thumb, and says that it is one', () => {
    const { finding } = permanentStretch({ length: inch(2.2525), asNew: inch(2.25) });
    expect(finding.verdict).toBe('above');
    expect(finding.basis.kind).toBe('common practice');
  });
});

describe('a castle nut', () => {
  const nut = {
    torque: { min: lbfFoot(20), max: lbfFoot(25) },
    diameter: inch(0.375),
    pitch: inch(1 / 24),
    nutFactor: { min: ratio(0.1), max: ratio(0.26) },
    boltStiffness: lbfPerInch(1_750_000),
    memberStiffness: lbfPerInch(7_000_000),
  };

  it('whose next slot is far takes another nut or washer, and is never slackened back', () => {
    expect(nextSlot({ ...nut, turn: degree(40) }).outcome).toBe('another nut or washer');
    expect(refusal(() => nextSlot({ ...nut, turn: degree(-20) })).parameter).toBe('turn');
  });

  it('whose slot was not measured gets no promise', () => {
    expect(nextSlot(nut).outcome).toBe('may pass the torque');
  });
});

describe('a joint', () => {
  const joint = {
    pull: lbf(3000),
    boltStiffness: lbfPerInch(1_750_000),
    memberStiffness: lbfPerInch(7_000_000),
  };

  it('is judged at the low end of its preload for opening, and at the high end for its bolt', () => {
    // Four fifths of 3000 lbf must be held: 2400 lbf.
    const loose = jointUnderLoad({ ...joint, preload: { min: lbf(2300), max: lbf(7400) } });
    expect(loose.outcome).toBe('may open');
    const tight = jointUnderLoad({
      ...joint,
      preload: { min: lbf(2500), max: lbf(7400) },
      proofLoad: lbf(7465),
    });
    expect(tight.outcome).toBe('stays closed');
    // 7400 + 3000 / 5 = 8000 lbf.
    expect(tight.finding?.verdict).toBe('above');
  });
});

it('a thread that is of 60° or of 55° is not guessed at', () => {
  const error = refusal(() => threadOf('3/8-16'));
  expect(error.hint).toContain('3/8-16 UNC or 3/8-16 BSW');
});
