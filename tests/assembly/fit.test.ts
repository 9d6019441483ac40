import { inch, type Length, micrometre, mm, thou, valueIn } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { describeFit, PRESSING } from '../../src/assembly/describe-fit.js';
import { fitSetting } from '../../src/assembly/fit-setting.js';
import type { FitData } from '../../src/reading/index.js';

const words = (data: FitData, uncertainty?: Length) =>
  describeFit(fitSetting(data, uncertainty === undefined ? {} : { uncertainty }), {
    units: 'metric',
  });
const inMicrometres = (span: { readonly min?: Length; readonly max?: Length } | undefined) =>
  span && [span.min, span.max].map((end) => end && valueIn(end, micrometre));
const close = (...numbers: readonly number[]) => numbers.map((each) => expect.closeTo(each, 6));

describe('a fit', () => {
  it('of which nothing is known is not measured, and says that nothing is stated', () => {
    expect(fitSetting({ name: 'pin' }, {})).toEqual({ name: 'pin', mayBePressed: false });
    expect(words({ name: 'pin' })).toEqual(['pin: not measured; what is wanted is not stated']);
  });

  it('of an ISO class has its clearance and the sizes of new parts', () => {
    // ISO 286-1: H7 at 40 mm is 0 to +25 µm, g6 is -25 to -9 µm: clearance 9 to 50 µm.
    const fit = fitSetting({ name: 'gear', isoFit: '40H7/g6' }, {});
    expect(inMicrometres(fit.wanted?.limits)).toEqual(close(9, 50));
    expect(fit.wanted?.basis).toEqual({ kind: 'published', source: 'ISO 286-1:2010, 40H7/g6' });
    expect(inMicrometres(fit.newParts?.hole)).toEqual(close(40_000, 40_025));
    expect(inMicrometres(fit.newParts?.shaft)).toEqual(close(39_975, 39_991));
    expect(fit.mayBePressed).toBe(false);
    expect(words({ name: 'gear', isoFit: '40H7/g6' })).toEqual([
      'gear: not measured; clearance 0.009 to 0.050 mm is wanted (published: ISO 286-1:2010, 40H7/g6)',
      '  new parts: hole 40.000 to 40.025 mm, shaft 39.975 to 39.991 mm (published: ISO 286-1:2010, 40H7/g6)',
    ]);
  });

  it('of an inch class likewise', () => {
    // ANSI B4.1, FN2 over 0.95 to 1.19 in: hole 0 to +0.8 thou, shaft +1.4 to +1.9 thou: clearance -1.9 to -0.6 thou.
    const fit = fitSetting({ name: 'gear', inchFit: { fitClass: 'FN2', basic: inch(1.125) } }, {});
    const { min, max } = fit.wanted?.limits ?? {};
    expect([min, max].map((end) => end && valueIn(end, thou))).toEqual(close(-1.9, -0.6));
    expect(fit.wanted?.basis).toMatchObject({ kind: 'published' });
    expect(JSON.stringify(fit.wanted?.basis)).toContain('FN2: ANSI/ASME B4.1-1967');
    expect(fit.mayBePressed).toBe(true);
  });

  it('wants the clearance of the file before that of a class, and tells whose each is', () => {
    const data: FitData = {
      name: 'gear',
      isoFit: '40H7/g6',
      clearance: { min: mm(0.02), max: mm(0.04), source: 'sheet 3' },
    };
    const fit = fitSetting(data, {});
    expect(inMicrometres(fit.wanted?.limits)).toEqual(close(20, 40));
    expect(fit.wanted?.basis).toEqual({ kind: 'specified', by: 'sheet 3' });
    // The sizes of new parts stay those of the class, and are not the manual's.
    expect(words(data)).toEqual([
      'gear: not measured; clearance 0.020 to 0.040 mm is wanted (specified by sheet 3)',
      '  new parts: hole 40.000 to 40.025 mm, shaft 39.975 to 39.991 mm (published: ISO 286-1:2010, 40H7/g6)',
    ]);
  });

  it('is measured once both of its parts are', () => {
    const hole = mm(20.012);
    const shaft = { min: mm(19.99), max: mm(20) };
    expect(fitSetting({ name: 'pin', hole }, {}).clearance).toBeUndefined();
    expect(fitSetting({ name: 'pin', shaft }, {}).clearance).toBeUndefined();
    // 20.012 - 20.000 = 12 µm to 20.012 - 19.990 = 22 µm.
    const { clearance, finding } = fitSetting({ name: 'pin', hole, shaft }, {});
    expect(inMicrometres(clearance)).toEqual(close(12, 22));
    expect(finding).toBeUndefined();
    expect(words({ name: 'pin', hole, shaft })).toEqual([
      'pin: clearance 0.012 to 0.022 mm; what is wanted is not stated',
    ]);
  });

  it('is judged at its worse end, with how well it was read', () => {
    const data: FitData = {
      name: 'pin',
      clearance: { min: mm(0.01), max: mm(0.02) },
      hole: mm(20.012),
      shaft: { min: mm(19.99), max: mm(20) },
    };
    // 12 to 22 µm: the upper end is 2 µm past 20 µm.
    const { finding } = fitSetting(data, {});
    expect(finding?.verdict).toBe('above');
    expect(finding && valueIn(finding.margin, micrometre)).toBeCloseTo(-2, 6);
    expect(fitSetting(data, { uncertainty: mm(0.005) }).finding?.verdict).toBe('undecided');
    expect(words(data)[0]).toContain(
      'pin: clearance 0.022 mm: 0.002 mm above the limit of 0.020 mm',
    );
    expect(words(data, mm(0.005))[0]).toContain('undecided');
    const tight = fitSetting({ ...data, hole: mm(20.008) }, {});
    // 8 to 18 µm: the lower end is 2 µm short of 10 µm.
    expect(tight.finding?.verdict).toBe('below');
    expect(fitSetting({ ...data, shaft: mm(19.998) }, {}).finding?.verdict).toBe('within');
  });

  it('that is worn past new and within its service limit may stay', () => {
    const clearance = { min: mm(0.01), max: mm(0.02), service: { max: mm(0.05) } };
    const data: FitData = { name: 'pin', clearance, hole: mm(20.03), shaft: mm(20) };
    // 30 µm: past 20 µm of new parts, within 50 µm.
    expect(fitSetting(data, {}).finding).toMatchObject({ verdict: 'above', grade: 'serviceable' });
  });
});

describe('parts that are pressed', () => {
  const pressed = (data: Omit<FitData, 'name'>) =>
    fitSetting({ name: 'gear', ...data }, {}).mayBePressed;

  it('are those that are wanted tight, measured tight, or both', () => {
    const wanted = { min: mm(-0.04), max: mm(-0.01) };
    expect(pressed({ clearance: wanted })).toBe(true);
    expect(pressed({ clearance: { max: mm(0) } })).toBe(true);
    expect(pressed({ hole: mm(20), shaft: mm(20.02) })).toBe(true);
    // Worn loose: the next pair is pressed all the same.
    expect(pressed({ clearance: wanted, hole: mm(20.02), shaft: mm(20) })).toBe(true);
    // Wanted loose, measured tight.
    expect(pressed({ clearance: { min: mm(0.01) }, hole: mm(20), shaft: mm(20.02) })).toBe(true);
  });

  it('are those of a transition fit too, as some of its pairs must be pressed', () => {
    // ISO 286-1: H7 at 40 mm 0 to +25 µm, k6 +2 to +18 µm: clearance -18 to 23 µm.
    expect(pressed({ isoFit: '40H7/k6' })).toBe(true);
  });

  it('are not those that slide, or of which nothing tells', () => {
    expect(pressed({ isoFit: '40H7/h6' })).toBe(false);
    expect(pressed({ clearance: { max: mm(0.02) } })).toBe(false);
    expect(pressed({ hole: mm(20), shaft: mm(20) })).toBe(false);
    expect(pressed({ isoFit: '40H7/k6', hole: mm(40.02), shaft: mm(40.005) })).toBe(false);
  });

  it('come with their caution', () => {
    expect(words({ name: 'gear', isoFit: '40H7/p6' })).toContain(`  ${PRESSING}`);
    expect(words({ name: 'gear', isoFit: '40H7/g6' })).not.toContain(`  ${PRESSING}`);
  });
});
