import { celsius, inch, type Length, lbf, thou, valueIn } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { describeValve } from '../../src/assembly/describe-valve.js';
import { valveSetting } from '../../src/assembly/valve-setting.js';
import type { TrainPieceData, ValveData } from '../../src/reading/index.js';

const lash = { min: thou(12), max: thou(14), source: 'sheet 2' };
const piece = (
  length: Length,
  material: TrainPieceData['material'],
  degrees: number,
): TrainPieceData => ({ length, material, temperature: celsius(degrees) });
/** A side valve: 6 in of block at 100 °C, 2 in of tappet at 90 °C, 4 in of valve at 220 °C. */
const train = {
  carrier: [piece(inch(6), 'grey iron', 100)],
  train: [piece(inch(2), 'steel', 90), piece(inch(4), 'austenitic valve steel', 220)],
};
const words = (data: ValveData, kind: 'inlet' | 'exhaust' = 'exhaust') => {
  const said = describeValve(valveSetting(kind, data), { units: 'inch' });
  return [said.lash ?? 'no lash', ...said.notes].join('\n');
};
const inThou = (span: { readonly min: Length; readonly max: Length } | undefined) =>
  span && [valueIn(span.min, thou), valueIn(span.max, thou)];

describe('a valve', () => {
  it('of which nothing is known has nothing to set', () => {
    expect(valveSetting('inlet', {})).toEqual({ valve: 'inlet', springs: [] });
    expect(words({})).toBe('no lash');
    // How it is set says nothing without a figure.
    expect(words({ set: 'hot', setBy: 'stem' })).toBe('no lash');
  });

  it('has its lash with whose figure it is', () => {
    const setting = valveSetting('inlet', { lash, set: 'cold', setBy: 'screw' });
    expect(setting).toEqual({
      valve: 'inlet',
      lash: {
        limits: { min: thou(12), max: thou(14) },
        basis: { kind: 'specified', by: 'sheet 2' },
        limitsOf: 'new parts',
      },
      set: 'cold',
      setBy: 'screw',
      springs: [],
    });
    expect(words({ lash, set: 'cold' })).toBe(
      '0.0120 to 0.0140 in, set cold (specified by sheet 2)',
    );
    expect(words({ lash: { min: thou(12) }, set: 'cold' })).toMatch(/^at least 0\.0120 in/);
    expect(words({ lash: { max: thou(14) }, set: 'cold' })).toMatch(/^at most 0\.0140 in/);
  });

  it('is looked up first where nobody said whether its lash is set cold or hot', () => {
    expect(words({ lash })).toBe(
      '0.0120 to 0.0140 in, cold or hot not stated (specified by sheet 2)\nwhether the lash of the exhaust valves is set cold or hot is not stated: look it up first',
    );
  });

  it('is ground a little at a time where nothing adjusts it', () => {
    expect(words({ lash, set: 'cold', setBy: 'stem' })).toContain('nothing adjusts it');
    for (const setBy of ['screw', 'shims'] as const) {
      expect(words({ lash, set: 'cold', setBy })).not.toContain('grind');
    }
  });
});

describe('a lash that is set hot', () => {
  it('is set with gloves', () => {
    expect(words({ lash, set: 'hot' })).toContain('a hot engine burns');
    expect(words({ lash, set: 'cold' })).not.toContain('burns');
  });

  it('is told cold by the growth of the train, for the least that is wanted', () => {
    // From 20 °C, coefficients of grey iron 10.4 to 11.4, steel 11.2 to 12.1, the valve 16.5 to 18.4 ppm/K. In thou:
    // block 6 * 80 gives 4.992 to 5.472, tappet 2 * 70 gives 1.568 to 1.694, valve 4 * 200 gives 13.2 to 14.72.
    // Growth 4.992 - 1.694 - 14.72 = -11.422 to 5.472 - 1.568 - 13.2 = -9.296: cold 12 + 9.296 to 12 + 11.422.
    const { cold } = valveSetting('exhaust', { lash, set: 'hot', train });
    expect(inThou(cold?.lash)).toEqual([expect.closeTo(21.296, 6), expect.closeTo(23.422, 6)]);
    expect(cold?.outsideRange).toEqual([]);
    expect(words({ lash, set: 'hot', train })).toContain('set it to 0.0234 in');
  });

  it('has none cold without a train, or where it is set cold anyway', () => {
    expect(valveSetting('exhaust', { lash, set: 'hot' }).cold).toBeUndefined();
    expect(valveSetting('exhaust', { lash, set: 'cold', train }).cold).toBeUndefined();
    expect(valveSetting('exhaust', { lash, train }).cold).toBeUndefined();
    expect(valveSetting('exhaust', { set: 'hot', train }).cold).toBeUndefined();
  });

  it('has none cold where only its most is known: the least that a valve needs is not', () => {
    expect(valveSetting('exhaust', { lash: { max: thou(14) }, set: 'hot', train }).cold).toBe(
      undefined,
    );
  });

  it('counts what lies before the rocker by its ratio', () => {
    // Head and valve of grey iron, 2 * 80: 1.664 to 1.824 thou each, so -0.16 to 0.16. Before the shaft 5 * 80 over
    // 5 * 30: 4.16 - 1.71 = 2.45 to 4.56 - 1.56 = 3.00, by the ratio of 1.5 3.675 to 4.5. Growth 3.515 to 4.66.
    const iron = (length: number, degrees: number) => [piece(inch(length), 'grey iron', degrees)];
    const { cold } = valveSetting('inlet', {
      lash: { min: thou(12) },
      set: 'hot',
      train: {
        carrier: iron(2, 100),
        train: iron(2, 100),
        rocker: { carrier: iron(5, 100), train: iron(5, 50), ratio: 1.5 as never },
      },
    });
    expect(inThou(cold?.lash)).toEqual([expect.closeTo(7.34, 6), expect.closeTo(8.485, 6)]);
  });

  it('says where a coefficient is stretched', () => {
    // That of grey iron is a mean over 0 to 100 °C.
    const hotter = { ...train, carrier: [piece(inch(6), 'grey iron', 110)] };
    const setting = valveSetting('exhaust', { lash, set: 'hot', train: hotter });
    expect(setting.cold?.outsideRange).toEqual(['carrier[0]']);
    const said = words({ lash, set: 'hot', train: hotter });
    expect(said).toContain('take that as a guess');
    expect(words({ lash, set: 'hot', train })).not.toContain('guess');
  });

  it('is never told as less than nothing: a cold engine would hold its valve open', () => {
    // 8 * 80 of alloy at 21.5 to 23.6 over 8 * 80 of steel at 11.2 to 12.1 ppm/K: 13.76 - 7.744 = 6.016 to
    // 15.104 - 7.168 = 7.936 thou more when hot, so that 4 thou hot are -3.936 to -2.016 thou cold.
    const alloy = {
      carrier: [piece(inch(8), 'aluminium alloy', 100)],
      train: [piece(inch(8), 'steel', 100)],
    };
    const said = words({ lash: { min: thou(4) }, set: 'hot', train: alloy });
    expect(said).not.toMatch(/-0\.0|set it to/);
    expect(said).toContain('set it hot only');
  });
});

describe('its spring', () => {
  const force = { min: lbf(34), max: lbf(40) };
  it('is known at each height that has a force', () => {
    const both = valveSetting('inlet', {
      closedSpring: { height: inch(1.15), force },
      openSpring: { height: inch(0.85), force: { min: lbf(80) } },
    });
    expect(both.springs).toEqual([
      {
        at: 'closed',
        height: inch(1.15),
        force: { limits: force, basis: { kind: 'specified' }, limitsOf: 'new parts' },
      },
      {
        at: 'open',
        height: inch(0.85),
        force: { limits: { min: lbf(80) }, basis: { kind: 'specified' }, limitsOf: 'new parts' },
      },
    ]);
    const one = valveSetting('inlet', { openSpring: { height: inch(0.85), force } });
    expect(one.springs.map(({ at }) => at)).toEqual(['open']);
  });
});
