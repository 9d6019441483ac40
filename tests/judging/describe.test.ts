import {
  type Basis,
  celsius,
  describe as describeFinding,
  type Finding,
  inch,
  judge,
  type Length,
  type Limits,
  mm,
  percentByVolume,
  ratio,
  thou,
  type UnitSystem,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { describeMargin } from '../../src/judging/describe.js';
import { describeLimits, describeSpan, sayDistance } from '../../src/judging/say.js';
import { refusal } from '../quantities/refusal.js';

const specified: Basis = { kind: 'specified' };
const finding = (
  value: Length,
  limits: Limits<Length>,
  basis: Basis = specified,
  uncertainty?: Length,
) =>
  judge({
    feature: 'end play',
    dimension: 'length',
    value,
    limits,
    basis,
    ...(uncertainty === undefined ? {} : { uncertainty }),
  });
const both = { min: thou(4), max: thou(10) };

// source: JCGM 100:2008 (GUM), 7.2.6, its wording from memory: an uncertainty to at most two digits, and the estimate rounded to go with it.
it.each([
  [thou(10), inch(0.00014), '0.01000 in ± 0.00014 in: undecided'],
  [thou(14), inch(0.00037), '0.01400 in ± 0.00037 in: '],
  [inch(0.009996), inch(0.00031), '0.01000 in ± 0.00031 in: undecided'],
  [inch(0.009994), inch(0.00025), '0.00999 in ± 0.00025 in: undecided'],
  // Rounded, it is 0.00010 in, of which one digit is enough.
  [thou(10), inch(0.0000996), '0.0100 in ± 0.0001 in: undecided'],
  [thou(10), inch(0.0002), '0.0100 in ± 0.0002 in: undecided'],
  [thou(10), inch(0.000014), '0.010000 in ± 0.000014 in: undecided'],
  // Never coarser than the limits beside it.
  [thou(9.5), inch(0.012), '0.0095 in ± 0.0120 in: undecided'],
  [thou(10), mm(0), '0.0100 in ± 0.0000 in: within, exactly'],
])(
  'prints %d m known to %d m to the second digit of the uncertainty: %s',
  (value, uncertainty, expected) => {
    const [said] = describeFinding(finding(value, both, specified, uncertainty), { units: 'inch' });
    expect(said).toContain(`end play ${expected}`);
  },
);

describe('describe says', () => {
  it.each([
    [
      'above, in inches',
      finding(thou(12), both),
      'inch',
      'end play 0.0120 in: 0.0020 in above the limit of 0.0100 in (specified)',
    ],
    [
      'above, in millimetres',
      finding(mm(0.3), { min: mm(0.1), max: mm(0.25) }),
      'metric',
      'end play 0.300 mm: 0.050 mm above the limit of 0.250 mm (specified)',
    ],
    [
      'below',
      finding(thou(1), both),
      'inch',
      'end play 0.0010 in: 0.0030 in below the limit of 0.0040 in (specified)',
    ],
    [
      'within both',
      finding(thou(7), both),
      'inch',
      'end play 0.0070 in: within 0.0040 to 0.0100 in (specified)',
    ],
    [
      'within one',
      finding(mm(0.2), { max: mm(0.25) }),
      'metric',
      'end play 0.200 mm: within the limit of 0.250 mm (specified)',
    ],
    [
      'within the other',
      finding(mm(0.2), { min: mm(0.05) }),
      'metric',
      'end play 0.200 mm: above the least of 0.050 mm (specified)',
    ],
    [
      'undecided',
      finding(thou(10), both, specified, thou(1)),
      'inch',
      'end play 0.0100 in ± 0.0010 in: undecided, as it may be inside or outside 0.0040 to 0.0100 in (specified)',
    ],
    [
      'who specified it',
      finding(thou(7), both, { kind: 'specified', by: 'the manual' }),
      'inch',
      'end play 0.0070 in: within 0.0040 to 0.0100 in (specified by the manual)',
    ],
    [
      'where it was published',
      finding(thou(7), both, { kind: 'published', source: 'TM 5-3895-346-14' }),
      'inch',
      'end play 0.0070 in: within 0.0040 to 0.0100 in (published: TM 5-3895-346-14)',
    ],
    [
      'which rule of thumb it is',
      finding(thou(7), both, { kind: 'common practice', rule: '4 to 10 thou' }),
      'inch',
      'end play 0.0070 in: within 0.0040 to 0.0100 in (common practice: 4 to 10 thou)',
    ],
    [
      'how it was computed',
      finding(thou(7), both, { kind: 'computed', how: 'from the thrust washers in stock' }),
      'inch',
      'end play 0.0070 in: within 0.0040 to 0.0100 in (computed: from the thrust washers in stock)',
    ],
  ] as const)('%s', (_, given, units, sentence) => {
    expect(describeFinding(given, { units })[0]).toBe(sentence);
  });

  it('other dimensions in their own units', () => {
    const hot = judge({
      feature: 'oil temperature',
      dimension: 'temperature',
      value: celsius(110),
      limits: { max: celsius(100) },
      basis: specified,
    });
    expect(describeFinding(hot, { units: 'inch' })[0]).toContain('230.0 °F: ');
    expect(describeFinding(hot, { units: 'metric' })[0]).toContain('above the limit of 100.0 °C');
    const fuel = judge({
      feature: 'fuel in oil',
      dimension: 'volumeFraction',
      value: percentByVolume(3.1),
      limits: { max: percentByVolume(2.5) },
      basis: specified,
    });
    expect(describeFinding(fuel, { units: 'metric' })[0]).toBe(
      'fuel in oil 3.1 vol%: 0.6 vol% above the limit of 2.5 vol% (specified)',
    );
  });

  it('a distance between temperatures as a distance', () => {
    const hot = judge({
      feature: 'oil temperature',
      dimension: 'temperature',
      value: celsius(110),
      limits: { max: celsius(100) },
      basis: specified,
    });
    expect(describeFinding(hot, { units: 'metric' })[0]).toBe(
      'oil temperature 110.0 °C: 10.0 °C above the limit of 100.0 °C (specified)',
    );
  });

  it('a distance too small for the decimals of the trade with more of them', () => {
    expect(describeFinding(finding(thou(10.01), both), { units: 'inch' })[0]).toContain(
      ': 0.00001 in above the limit of 0.0100 in',
    );
    expect(describeFinding(finding(thou(10.01), both), { units: 'metric' })[0]).toContain(
      ': 0.0003 mm above the limit of 0.254 mm',
    );
  });

  it.each([
    [
      'the most',
      finding(thou(10), both),
      'end play 0.0100 in: within, exactly at the limit of 0.0100 in (specified)',
    ],
    [
      'the least',
      finding(thou(4), both),
      'end play 0.0040 in: within, exactly at the limit of 0.0040 in (specified)',
    ],
    [
      'a most by itself',
      finding(thou(10), { max: thou(10) }),
      'end play 0.0100 in: within, exactly at the limit of 0.0100 in (specified)',
    ],
    [
      'the one size there is',
      finding(thou(4), { min: thou(4), max: thou(4) }),
      'end play 0.0040 in: within, exactly at the limit of 0.0040 in (specified)',
    ],
    // A reading at its limit, out by the noise of a double or by 1 nm, which is compared away.
    [
      'a limit that noise puts it outside of',
      finding((thou(10) + 7e-18) as Length, both),
      'end play 0.0100 in: within, exactly at the limit of 0.0100 in (specified)',
    ],
    [
      'a limit 0.9 nm away',
      finding((thou(4) - 0.9e-9) as Length, both),
      'end play 0.0040 in: within, exactly at the limit of 0.0040 in (specified)',
    ],
    [
      'no limit 1.1 nm away',
      finding((thou(4) + 1.1e-9) as Length, both),
      'end play 0.0040 in: within 0.0040 to 0.0100 in (specified)',
    ],
  ])('that a value is at %s', (_, given, sentence) => {
    expect(describeFinding(given, { units: 'inch' })[0]).toBe(sentence);
  });

  it('that a value of another dimension is at its limit', () => {
    const at = (value: number) =>
      judge({
        feature: 'fuel in oil',
        dimension: 'volumeFraction',
        value: percentByVolume(value),
        limits: { max: percentByVolume(2.5) },
        basis: specified,
      });
    const say = (value: number) => describeFinding(at(value), { units: 'metric' })[0];
    expect(say(2.5)).toBe(
      'fuel in oil 2.5 vol%: within, exactly at the limit of 2.5 vol% (specified)',
    );
    expect(say(2.5 * (1 + 5e-10))).toContain('exactly at the limit');
    expect(say(2.4999)).toContain(': within the limit of 2.5 vol%');
  });

  it('a margin as a distance inside, or as none', () => {
    const say = (margin: number) => describeMargin(margin as Length, 'inch');
    expect(say(thou(0.4))).toBe('stays 0.0004 in inside its limits');
    expect(say(mm(0.0001))).toBe('stays 0.000004 in inside its limits');
    expect([0, -0, -7e-18, 7e-18, 1e-9, -1e-9].map(say)).toEqual(
      Array(6).fill('is exactly at its limit'),
    );
    expect(say(1.1e-9)).toBe('stays 0.00000004 in inside its limits');
  });

  it('a distance that no decimals show as none, without a row of noughts', () => {
    expect(sayDistance(-7e-18, 'length', 'inch')).toBe('0.0000 in');
    expect(sayDistance(7e-18, 'length', 'metric')).toBe('0.000 mm');
    expect(sayDistance(0, 'volumeFraction', 'metric')).toBe('0.0 vol%');
  });

  it('who set the limit as the wording asks', () => {
    const wording = { units: 'inch', nameBasis: () => '[1]' } as const;
    expect(describeFinding(finding(thou(7), both), wording)[0]).toBe(
      'end play 0.0070 in: within 0.0040 to 0.0100 in [1]',
    );
  });
});

describe('a ratio', () => {
  const judged = (value: number, min: number) =>
    describeFinding(
      judge({
        feature: 'film over roughness',
        dimension: 'ratio',
        value: ratio(value),
        limits: { min: ratio(min) },
        basis: specified,
      }),
      { units: 'inch' },
    );

  it('is told as a multiple where its limits are multiples', () => {
    expect(judged(5.2, 3)).toEqual([
      'film over roughness 5.20: above the least of 3.00 (specified)',
    ]);
    expect(judged(0.5, 3)).toEqual([
      'film over roughness 0.50: 2.50 below the limit of 3.00 (specified)',
    ]);
  });

  it('is told as a share where they are shares', () => {
    expect(judged(0.4, 0.5)).toEqual([
      'film over roughness 40.00 %: 10.00 % below the limit of 50.00 % (specified)',
    ]);
  });
});

describe('a span', () => {
  it('names its unit once, and one size if both ends print alike', () => {
    const span = { min: inch(2.1045), max: inch(2.105) };
    expect(describeSpan(span, 'length', 'inch')).toBe('2.1045 to 2.1050 in');
    expect(describeSpan(span, 'length', 'metric')).toBe('53.454 to 53.467 mm');
    expect(describeSpan({ min: mm(1), max: mm(1.0001) }, 'length', 'metric')).toBe('1.000 mm');
    expect(describeLimits(span, 'length', 'inch')).toBe('2.1045 to 2.1050 in');
  });
});

describe('describe refuses', () => {
  const good = finding(thou(12), both);

  it.each(['imperial', undefined, '__proto__'])('the unit system %s', (units) => {
    expect(refusal(() => describeFinding(good, { units: units as UnitSystem })).value).toBe(units);
  });

  it('a way to name a basis that is none', () => {
    const wording = { units: 'inch', nameBasis: '[1]' } as unknown as { units: 'inch' };
    expect(refusal(() => describeFinding(good, wording)).parameter).toBe('wording.nameBasis');
  });

  it.each([undefined, null, 'inch', 5, []])('%s for a finding or a wording', (value) => {
    const wrong = value as unknown;
    const wording = { units: 'inch' } as const;
    expect(refusal(() => describeFinding(wrong as Finding<'length'>, wording)).parameter).toBe(
      'finding',
    );
    expect(refusal(() => describeFinding(good, wrong as typeof wording)).parameter).toBe('wording');
  });

  it.each(['limits', 'basis', 'dimension', 'value', 'verdict', 'margin'])(
    'a finding without its %s',
    (field) => {
      const { [field as keyof typeof good]: _, ...rest } = good;
      const call = () => describeFinding(rest as Finding<'length'>, { units: 'inch' });
      expect(refusal(call).message).not.toBe('');
    },
  );
});

describe('a service limit', () => {
  const against = (basis: Basis) =>
    describeFinding(
      judge({
        feature: 'taper',
        dimension: 'length',
        value: thou(5),
        limits: { max: thou(1) },
        limitsOf: 'new parts',
        basis: specified,
        service: { limits: { max: thou(2) }, basis },
      }),
      { units: 'inch' },
    ).join();

  it('says whose it is', () => {
    expect(against(specified)).toContain('past the service limit of 0.0020 in');
    expect(against({ kind: 'published', source: 'a manual', forAnotherEngine: true })).toContain(
      "past another engine's service limit of 0.0020 in",
    );
    expect(against({ kind: 'common practice', rule: 'a rule' })).toContain(
      'past the rule of thumb for worn parts, 0.0020 in',
    );
  });
});
