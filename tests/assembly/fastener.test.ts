import { inch, lbf, lbfFoot, threadOf, valueIn } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { describeFastener } from '../../src/assembly/describe-fastener.js';
import { fastenerSetting } from '../../src/assembly/fastener-setting.js';
import type { FastenerData, FastenersData } from '../../src/reading/index.js';

const thread = threadOf('3/8-24 UNF');
const known: FastenerData = { thread, grade: 'SAE 5', condition: 'oiled' };
const pair = [
  { name: 'left', along: inch(0), across: inch(0) },
  { name: 'right', along: inch(3), across: inch(0) },
];
const adapter = { wrench: inch(18), adapter: inch(6) };
const span = (min: number, max: number) => ({ min: lbfFoot(min), max: lbfFoot(max) });

/** What is said of a fastener, in one text. */
function words(
  data: FastenerData,
  holds: keyof FastenersData = 'head',
  wrench?: 'lbf·in' | 'N·m',
): string {
  const said = describeFastener(fastenerSetting(holds, data), { units: 'inch' }, wrench);
  return [said.torque ?? 'no torque', ...said.notes].join('\n');
}

describe('a fastener', () => {
  it('of which nothing is known has no torque, and says what it lacks', () => {
    const setting = fastenerSetting('rodCaps', {});
    expect(setting).toEqual({ holds: 'rodCaps', missing: ['thread', 'grade', 'condition'] });
    expect(words({})).toBe(
      'no torque\nno torque is stated, and none can be reckoned: thread, grade of the bolts and state of the thread (dry or oiled) are not stated\nlook for marks on the heads, or have the hardness read; where a life hangs on them, fit new bolts of a known grade',
    );
  });

  it('of a soft grade is doubted in a rod, where its torque is reckoned', () => {
    const soft = 'softer than rod bolts mostly are';
    expect(words({ ...known, grade: 'SAE 2' }, 'rodCaps')).toContain(soft);
    expect(words({ ...known, grade: 'SAE 2' }, 'head')).not.toContain(soft);
    expect(words(known, 'rodCaps')).not.toContain(soft);
    // The maker who gives the torque knows his bolts.
    expect(words({ ...known, grade: 'SAE 2', torque: span(4, 5) }, 'rodCaps')).not.toContain(soft);
  });

  it('gets no torque from half of what it takes', () => {
    for (const left of ['thread', 'grade', 'condition'] as const) {
      const { [left]: _, ...rest } = known;
      const setting = fastenerSetting('head', rest);
      expect(setting.torque).toBeUndefined();
      expect(setting.missing).toEqual([left]);
    }
    const { grade: _, ...rest } = known;
    expect(words(rest)).toContain('none can be reckoned: grade of the bolts is not stated');
  });

  it('gets a reckoned torque that overloads no slippery bolt', () => {
    const { torque, setting, basis } = fastenerSetting('head', known);
    // Stress area 0.0878 in², proof stress 85 000 psi: 7465.5 lbf. Usual 0.18 * 0.75 * 7465.5 * 0.375 = 377.9 lbf·in,
    // but no more than 0.10 * 7465.5 * 0.375 = 279.96 lbf·in = 23.33 lbf·ft, that of the most slippery oiled thread.
    expect(torque?.min).toBe(torque?.max);
    expect(torque && valueIn(torque.max, lbfFoot)).toBeCloseTo(23.33, 2);
    expect(setting?.outcome).toBe('reckoned');
    expect(setting?.finding.verdict).toBe('within');
    expect(basis?.kind).toBe('computed');
    expect(words(known)).toMatch(/^23\.3 lbf·ft at the fastener, thread and face oiled \(computed/);
  });

  it('warns of a reckoned torque, and of a life that hangs on it', () => {
    const warning = "reckoned for want of the maker's figure";
    expect(words(known)).toContain(warning);
    expect(words(known)).toContain('threads in iron or aluminium may strip at less');
    expect(words(known)).not.toContain('before you trust');
    expect(words(known, 'rodCaps')).toContain(
      "find the maker's figure before you trust rods to it",
    );
    expect(words(known, 'flywheel')).toContain(
      "find the maker's figure before you trust a flywheel to it",
    );
    expect(words({ ...known, torque: lbfFoot(20) })).not.toContain(warning);
  });

  it("takes the maker's torque as it is, with whose it is", () => {
    const bare = fastenerSetting('mainCaps', { torque: span(18, 20), source: 'sheet 4' });
    expect(bare).toEqual({
      holds: 'mainCaps',
      torque: span(18, 20),
      basis: { kind: 'specified', by: 'sheet 4' },
      missing: ['thread', 'grade', 'condition'],
    });
    expect(fastenerSetting('head', { torque: lbfFoot(20) }).basis).toEqual({ kind: 'specified' });
    const full = fastenerSetting('head', { ...known, torque: lbfFoot(20), source: 'sheet 4' });
    expect(full.torque).toEqual(span(20, 20));
    expect(full.basis).toEqual({ kind: 'specified', by: 'sheet 4' });
    expect(full.missing).toEqual([]);
    // 20 lbf·ft = 240 lbf·in: 240 / (0.26 * 0.375) = 2461.5 lbf to 240 / (0.10 * 0.375) = 6400 lbf.
    expect(full.setting && valueIn(full.setting.preload.min, lbf)).toBeCloseTo(2461.5, 1);
    expect(full.setting && valueIn(full.setting.preload.max, lbf)).toBeCloseTo(6400, 6);
  });

  it('is looked up first where nobody said whether it is oiled', () => {
    const { condition: _, ...rest } = known;
    const said = words({ ...rest, torque: lbfFoot(20) });
    expect(said).toMatch(/^20\.0 lbf·ft at the fastener \(specified\)/);
    expect(said).toContain('does not say whether thread and face are dry or oiled');
    expect(words({ ...known, torque: lbfFoot(20) })).not.toContain('does not say');
  });

  it('is told of if its torque may overload it', () => {
    // 30 lbf·ft = 360 lbf·in on the most slippery oiled thread: 360 / (0.10 * 0.375) = 9600 lbf over 7465 lbf.
    const over = { ...known, torque: lbfFoot(30) };
    expect(fastenerSetting('head', over).setting?.finding.verdict).toBe('above');
    expect(words(over)).toContain(
      "the maker's torque may overload the bolt if its thread is slippery: highest preload",
    );
    expect(words({ ...known, torque: lbfFoot(20) })).not.toContain('overload');
  });

  it('is weaker where its shank is thinner than its thread', () => {
    // 0.300 in: π / 4 * 0.09 * 85 000 = 6008 lbf, less than the 7465 lbf of the thread.
    const { setting } = fastenerSetting('head', { ...known, leastDiameter: inch(0.3) });
    expect(setting && valueIn(setting.proofLoad, lbf)).toBeCloseTo(6008.3, 1);
  });

  it('has another figure on the wrench with an adapter, a locking nut or both', () => {
    const at = (data: Partial<FastenerData>) => {
      const { wrench } = fastenerSetting('head', { torque: span(18, 20), ...data });
      return wrench && [wrench.min, wrench.max].map((torque) => valueIn(torque, lbfFoot));
    };
    expect(at({})).toBeUndefined();
    // 18 * 18 / 24 and 20 * 18 / 24.
    expect(at({ adapter })).toEqual([expect.closeTo(13.5, 9), expect.closeTo(15, 9)]);
    expect(at({ prevailing: lbfFoot(2) })).toEqual([expect.closeTo(20, 9), expect.closeTo(22, 9)]);
    // (18 + 2) * 18 / 24 and (20 + 2) * 18 / 24.
    expect(at({ adapter, prevailing: lbfFoot(2) })).toEqual([
      expect.closeTo(15, 9),
      expect.closeTo(16.5, 9),
    ]);
    expect(words({ torque: span(18, 20), adapter })).toContain(
      'set the wrench to 13.5 to 15.0 lbf·ft for that',
    );
    // Without a torque there is nothing to set.
    expect(fastenerSetting('head', { adapter, bolts: pair })).toEqual({
      holds: 'head',
      missing: ['thread', 'grade', 'condition'],
    });
  });

  it('is tightened in rounds to the middle of its torque', () => {
    const { plan } = fastenerSetting('head', { torque: span(18, 22), bolts: pair, rounds: 2 });
    expect(plan?.sequence).toEqual(['left', 'right']);
    // (18 + 22) / 2 = 20, and half of it first.
    expect(plan?.rounds.map(({ torque }) => valueIn(torque, lbfFoot))).toEqual([
      expect.closeTo(10, 9),
      expect.closeTo(20, 9),
    ]);
    const byDefault = fastenerSetting('head', { torque: span(18, 22), bolts: pair });
    expect(byDefault.plan?.rounds).toHaveLength(3);
    expect(words({ torque: span(18, 22), bolts: pair, rounds: 2 })).toContain(
      'round 1: 10.0 lbf·ft\nround 2: 20.0 lbf·ft',
    );
  });

  it('has its rounds in what the wrench is set to, where that is another figure', () => {
    const data: FastenerData = {
      torque: lbfFoot(20),
      bolts: pair,
      rounds: 2,
      adapter,
      prevailing: lbfFoot(2),
    };
    const { plan } = fastenerSetting('head', data);
    // (10 + 2) * 18 / 24 and (20 + 2) * 18 / 24: the drag of the nut is there in every round.
    expect(plan?.rounds.map(({ torque }) => valueIn(torque, lbfFoot))).toEqual([
      expect.closeTo(9, 9),
      expect.closeTo(16.5, 9),
    ]);
    expect(words(data)).toContain('the rounds are what to set the wrench to');
    expect(words({ torque: lbfFoot(20), bolts: pair })).not.toContain('the rounds are');
  });
});

describe('a castle nut', () => {
  const pinned: FastenerData = { torque: span(14, 18), locking: 'pins' };

  it('is tightened to the least torque and on to its slot, never back', () => {
    expect(words(pinned, 'rodCaps')).toContain(
      'find the slot: tighten to 14.0 lbf·ft, then on to the next slot, at most to 18.0 lbf·ft; if none comes by then, take another nut or washer, and never slacken it to a slot',
    );
  });

  it('has no room to turn on if only one torque is known', () => {
    expect(words({ ...pinned, torque: lbfFoot(16) })).toContain(
      'find the slot: if none meets its hole at 16.0 lbf·ft, take another nut or washer',
    );
  });

  it('is brought to the least torque in rounds, and then to its slot', () => {
    const said = words({ ...pinned, bolts: pair });
    expect(said).toContain('round 3: 14.0 lbf·ft');
    expect(said.indexOf('find the slot')).toBeGreaterThan(said.indexOf('once more round at 14.0'));
  });

  it('finds its slot by what the wrench shows, where that is another figure', () => {
    // 14 * 18 / 24 = 10.5 and 18 * 18 / 24 = 13.5.
    expect(words({ ...pinned, adapter })).toContain(
      'tighten to 10.5 lbf·ft on the wrench, then on to the next slot, at most to 13.5 lbf·ft on the wrench',
    );
  });

  it('is no other nut', () => {
    expect(words({ ...pinned, locking: 'tabs' })).not.toContain('slot');
  });
});

describe('the wrench', () => {
  it('has its own scale', () => {
    // 20 lbf·ft = 240 lbf·in = 27.116 N·m.
    expect(words({ torque: lbfFoot(20) }, 'head', 'lbf·in')).toMatch(/^240 lbf·in/);
    expect(words({ torque: lbfFoot(20) }, 'head', 'N·m')).toMatch(/^27\.1 N·m/);
    expect(words({ torque: lbfFoot(20) })).toMatch(/^20\.0 lbf·ft/);
  });
});
