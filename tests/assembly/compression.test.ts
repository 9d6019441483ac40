import {
  cubicInch,
  degree,
  inch,
  kPa,
  psi,
  psiGauge,
  publishedCompressionRules,
  ratio,
  squareInch,
  valueIn,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import {
  type AroundCompression,
  compressionSetting,
} from '../../src/assembly/compression-setting.js';
import {
  describeCranking,
  describeRule,
  describeSpaces,
} from '../../src/assembly/describe-compression.js';
import type { CompressionData, PlaceData } from '../../src/reading/index.js';

const at = (size: number) => ({ min: inch(size), max: inch(size) });
const around: AroundCompression = { bore: at(3), stroke: inch(3.25), rodLength: inch(6) };
const spaces: CompressionData = {
  chamber: cubicInch(4),
  gasket: { thickness: inch(0.05), bore: inch(3) },
  deckClearance: inch(0.02),
};
const words = (data: CompressionData, engine: AroundCompression = around) =>
  [describeSpaces, describeCranking].flatMap((say) =>
    say(compressionSetting(data, engine), { units: 'inch' }),
  );
const closes = (degrees: number): PlaceData => ({ angle: degree(degrees), after: 'bottom' });

describe('how far a cylinder compresses', () => {
  it('is not known of nothing, and says of what', () => {
    const setting = compressionSetting({}, {});
    expect(setting.notGiven).toEqual(['bore', 'stroke', 'chamber', 'deck clearance', 'gasket']);
    expect(setting.ratio).toBeUndefined();
    expect(words({}, {})).toEqual([
      'compression ratio not computed, as these are not given: bore, stroke, chamber, deck clearance, gasket',
    ]);
  });

  it('is not known with one space missing', () => {
    for (const [missing, said] of [
      ['chamber', 'chamber'],
      ['gasket', 'gasket'],
      ['deckClearance', 'deck clearance'],
    ] as const) {
      const { [missing]: _, ...rest } = spaces;
      const setting = compressionSetting(rest, around);
      expect(setting.ratio).toBeUndefined();
      expect(setting.notGiven).toEqual([said]);
    }
    for (const missing of ['bore', 'stroke'] as const) {
      const { [missing]: _, ...rest } = around;
      expect(compressionSetting(spaces, rest).notGiven).toEqual([missing]);
    }
    expect(words({ ratio: { min: ratio(4.6), source: 'sheet 1' } }, {})[0]).toMatch(
      /; at least 4\.60 \(specified by sheet 1\) is wanted$/,
    );
  });

  it('is computed from its spaces', () => {
    // Swept π / 4 * 3² * 3.25 = 22.9729 in³; left 4 + π / 4 * 9 * 0.05 + π / 4 * 9 * 0.02 = 4.4948 in³; 1 + 5.11099.
    const { ratio: found, clearanceVolume, notGiven } = compressionSetting(spaces, around);
    expect(found?.min).toBeCloseTo(6.11099, 5);
    expect(found?.max).toBeCloseTo(6.11099, 5);
    expect(clearanceVolume && valueIn(clearanceVolume.min, cubicInch)).toBeCloseTo(4.494801, 6);
    expect(notGiven).toEqual([]);
    expect(words(spaces)).toEqual([
      'compression ratio 6.11 by the spaces given, with 4.495 in³ left above the piston',
    ]);
  });

  it('is computed for the smallest and the largest bore', () => {
    // At 3.005 in: swept 23.04954 in³, left 4 + 0.353429 + 0.141843 = 4.495272 in³: 6.12751.
    const bore = { min: inch(3), max: inch(3.005) };
    const { ratio: found, clearanceVolume } = compressionSetting(spaces, { ...around, bore });
    expect([found?.min, found?.max]).toEqual([
      expect.closeTo(6.11099, 5),
      expect.closeTo(6.12751, 5),
    ]);
    expect(clearanceVolume && valueIn(clearanceVolume.max, cubicInch)).toBeCloseTo(4.495272, 6);
    expect(words(spaces, { ...around, bore })[0]).toContain('compression ratio 6.11 to 6.13');
  });

  it('counts the crown and what of the chamber lies in the block', () => {
    // Left 4.494801 + 1 - 0.5 = 4.994801 in³: 1 + 22.972896 / 4.994801 = 5.59937.
    const data = { ...spaces, blockChamber: cubicInch(1), crown: cubicInch(0.5) };
    expect(compressionSetting(data, around).ratio?.min).toBeCloseTo(5.59936, 4);
  });

  it('says that a piston stands past the face of the head', () => {
    // 0.060 in above the deck, under a gasket of 0.050 in.
    const proud = { ...spaces, deckClearance: inch(-0.06) };
    expect(words(proud).join()).toContain(
      'the flat edge of the piston stands 0.0100 in past the face of the head: it strikes unless',
    );
    expect(words(proud)[0]).toMatch(/^the piston stands proud of the deck by 0\.0600 in: /);
    expect(words(spaces).join()).not.toContain('past the face');
  });

  it('takes a gasket that is not round, or none', () => {
    // 10 in² * 0.05 in = 0.5 in³ in the place of 0.353429 in³: 1 + 22.972896 / 4.641372 = 5.94959.
    const wide = { thickness: inch(0.05), area: squareInch(10) };
    expect(compressionSetting({ ...spaces, gasket: wide }, around).ratio?.min).toBeCloseTo(
      5.94959,
      4,
    );
    // 1 + 22.972896 / (4 + 0.141372) = 6.54718.
    expect(compressionSetting({ ...spaces, gasket: 'none' }, around).ratio?.min).toBeCloseTo(
      6.54718,
      4,
    );
  });
});

describe('what is wanted', () => {
  it('is compared at the worse end', () => {
    const wide = { ...around, bore: { min: inch(3), max: inch(3.005) } };
    const wanted = (max: number): CompressionData => ({
      ...spaces,
      ratio: { min: ratio(5.5), max: ratio(max), source: 'sheet 1' },
    });
    expect(compressionSetting(wanted(6.2), wide).finding?.verdict).toBe('within');
    expect(compressionSetting(wanted(6.12), wide).finding?.verdict).toBe('above');
    expect(words(wanted(6.2), wide)[0]).toContain(': within 5.50 to 6.20 (specified by sheet 1)');
    // One end is within: the spaces do not say more.
    expect(words(wanted(6.12), wide)[0]).toContain(
      ': it may be above the limit of 6.12 (specified by sheet 1)',
    );
    expect(words(wanted(6), wide)[0]).toContain(': above the limit of 6.00 (specified by sheet 1)');
    const low = { ...spaces, ratio: { min: ratio(6.12) } };
    expect(words(low, wide)[0]).toContain(': it may be below the limit of 6.12 (specified)');
    expect(words({ ...spaces, ratio: { min: ratio(7) } }, wide)[0]).toContain(
      ': below the limit of 7.00',
    );
    expect(words({ ...spaces, ratio: { max: ratio(7) } }, wide)[0]).toContain(
      ': within at most 7.00',
    );
  });
});

describe('where the piston stops', () => {
  const { deckClearance: _, ...rest } = spaces;
  const parts: CompressionData = { ...rest, deckHeight: inch(9.495), pinHeight: inch(1.85) };

  it('is reckoned from the parts where it was not read', () => {
    // 9.495 - 3.25 / 2 - 6 - 1.85 = 0.020 in.
    const setting = compressionSetting(parts, around);
    expect(setting.standDown && valueIn(setting.standDown.calculated.max, inch)).toBeCloseTo(0.02);
    expect(setting.ratio?.min).toBeCloseTo(6.11099, 4);
    expect(setting.notGiven).toEqual([]);
    expect(words(parts)[1]).toBe(
      'by the sizes of the parts the piston stops 0.0200 in below the deck at top dead centre',
    );
  });

  it('may be above the deck, and is told so', () => {
    // 9.465 - 1.625 - 6 - 1.85 = -0.010 in.
    const [first, , third] = words({ ...parts, deckHeight: inch(9.465) });
    expect(first).toMatch(
      /^the piston stands proud of the deck by 0\.0100 in: check its clearance/,
    );
    expect(third).toBe(
      'by the sizes of the parts the piston stops 0.0100 in above the deck at top dead centre',
    );
    // From 9.470 to 9.480: -0.005 to 0.005 in.
    const about = { min: inch(9.47), max: inch(9.48) };
    expect(words({ ...parts, deckHeight: about })[0]).toMatch(
      /^the piston may stand proud of the deck by up to 0\.0050 in: /,
    );
    expect(words({ ...parts, deckHeight: about })[2]).toBe(
      'by the sizes of the parts the piston stops between 0.0050 in above the deck and 0.0050 in below it at top dead centre',
    );
  });

  it('is not reckoned without both heights, the stroke and the rod', () => {
    for (const left of ['deckHeight', 'pinHeight'] as const) {
      const { [left]: __, ...fewer } = parts;
      expect(compressionSetting(fewer, around).standDown).toBeUndefined();
    }
    for (const left of ['stroke', 'rodLength'] as const) {
      const { [left]: __, ...fewer } = around;
      expect(compressionSetting(parts, fewer).standDown).toBeUndefined();
    }
  });

  it('is compared where it was read besides, and the reading counts', () => {
    const read = (deckClearance: number) => ({ ...parts, deckClearance: inch(deckClearance) });
    expect(words(read(0.02))[1]).toContain(
      '; it was read 0.0200 in below the deck, as the sizes say',
    );
    expect(words(read(0.05))[1]).toContain(
      '; it was read 0.0500 in below the deck, too low for them: look for a bent rod',
    );
    expect(words(read(0))[1]).toContain(
      '; it was read 0.0000 in below the deck, too high for them: look for a planed block',
    );
    // By the reading of 0.050 in: 4.353429 + 0.353429 = 4.706858 in³: 1 + 22.972896 / 4.706858 = 5.88073.
    expect(compressionSetting(read(0.05), around).ratio?.min).toBeCloseTo(5.88073, 4);
  });
});

describe('what a gauge may show', () => {
  it('is not known without the rod or the inlet valve', () => {
    expect(compressionSetting(spaces, around).cranking).toBeUndefined();
    const { rodLength: _, ...noRod } = around;
    expect(
      compressionSetting(spaces, { ...noRod, inletCloses: closes(45) }).cranking,
    ).toBeUndefined();
    expect(compressionSetting({}, { ...around, inletCloses: closes(45) }).cranking).toBeUndefined();
  });

  it('is an estimate from where the inlet valve closes', () => {
    // 45° after bottom: travel left 1.625 * (1 + cos 45°) + 6 * (1 - cos asin(1.625 / 6 * sin 45°)) = 2.88510 in.
    // 1 + 5.11099 * 2.88510 / 3.25 = 5.53715; 14.6959 psi * (5.53715 ^ 1.2 - 1) = 99.9 and of ^ 1.3 121.3 psi.
    const { cranking } = compressionSetting(spaces, { ...around, inletCloses: closes(45) });
    expect(cranking && valueIn(cranking.gauge.min, psiGauge)).toBeCloseTo(99.89, 1);
    expect(cranking && valueIn(cranking.gauge.max, psiGauge)).toBeCloseTo(121.28, 1);
    expect(words(spaces, { ...around, inletCloses: closes(45) })[1]).toMatch(
      /^a sound cylinder may show 99\.9 to 121\.3 psi gauge .*: an estimate and no limit$/,
    );
  });

  it('is less in thin air', () => {
    const thin = { ...spaces, airPressure: kPa(80) };
    const gauge = (data: CompressionData) =>
      compressionSetting(data, { ...around, inletCloses: closes(45) }).cranking?.gauge.max ?? 0;
    // In proportion to the air: 80 / 101.325.
    expect(gauge(thin) / gauge(spaces)).toBeCloseTo(80 / 101.325, 9);
  });

  it('spans what the place may be off', () => {
    const engine = { ...around, inletCloses: closes(45), within: degree(2) };
    const { cranking } = compressionSetting(spaces, engine);
    // At 47° 2.85213 in, at 43° 2.91669 in.
    expect(cranking && valueIn(cranking.travelLeft.min, inch)).toBeCloseTo(2.85213, 5);
    expect(cranking && valueIn(cranking.travelLeft.max, inch)).toBeCloseTo(2.91669, 5);
  });

  it('shuts in as much before the bottom as the same way after it', () => {
    const left = (inletCloses: PlaceData, within = degree(0)) => {
      const { cranking } = compressionSetting(spaces, { ...around, inletCloses, within });
      return cranking && [cranking.travelLeft.min, cranking.travelLeft.max];
    };
    const early = (degrees: number): PlaceData => ({ angle: degree(degrees), before: 'bottom' });
    // At 10° from the bottom 3.231952 in, at 5° 3.245488 in, at the bottom all of 3.25 in.
    expect(left(early(5))?.map((end) => valueIn(end, inch))).toEqual([
      expect.closeTo(3.245488, 5),
      expect.closeTo(3.245488, 5),
    ]);
    expect(left(early(5), degree(5))?.map((end) => valueIn(end, inch))).toEqual([
      expect.closeTo(3.231952, 5),
      expect.closeTo(3.25, 9),
    ]);
  });
});

describe('what a compression test is judged by', () => {
  it('are rules of other engines where the file has none', () => {
    expect(compressionSetting({}, {}).rules).toEqual(publishedCompressionRules());
  });

  it('are the rules of the file, with whose they are', () => {
    const { rules } = compressionSetting(
      {
        rules: [
          { kind: 'spread', most: psi(20), source: 'sheet 1' },
          { kind: 'at least', least: psiGauge(60) },
        ],
      },
      {},
    );
    expect(rules).toEqual([
      { kind: 'spread', most: psi(20), basis: { kind: 'specified', by: 'sheet 1' } },
      { kind: 'at least', least: psiGauge(60), basis: { kind: 'specified' } },
    ]);
  });

  it('are told each in a line', () => {
    const basis = { kind: 'specified' } as const;
    const said = [
      { kind: 'spread', most: psi(20), basis },
      { kind: 'share of highest', least: ratio(0.75), basis },
      { kind: 'share of average', least: ratio(0.8), basis },
      { kind: 'near a figure', figure: psiGauge(90), within: psi(10), basis },
      { kind: 'at least', least: psiGauge(60) },
    ] as const;
    expect(said.map((rule) => describeRule(rule, { units: 'inch' }))).toEqual([
      'highest and lowest at most 20.0 psi apart (specified)',
      'lowest at least 75 % of the highest (specified)',
      'every cylinder at least 80 % of the average (specified)',
      'every cylinder within 10.0 psi of 90.0 psi gauge (specified)',
      'every cylinder at least 60.0 psi gauge (specified)',
    ]);
  });
});

describe('in metric', () => {
  it('a chamber is told in millilitres', () => {
    // 4.494801 in³ * 16.387064 = 73.657 mL.
    const [said] = describeSpaces(compressionSetting(spaces, around), { units: 'metric' });
    expect(said).toContain('73.7 mL left above the piston');
    const bore = { min: inch(2.9), max: inch(3.1) };
    const wide = compressionSetting(spaces, { ...around, bore });
    // π / 4 * 0.02 * (2.9² and 3.1²) = 0.1321 and 0.1510 in³: 4.4855 and 4.5044 in³, 73.50 and 73.81 mL.
    expect(describeSpaces(wide, { units: 'metric' })[0]).toContain('with 73.5 to 73.8 mL left');
  });
});
