import {
  convertRoughness,
  crosshatchAngle,
  degree,
  inch,
  micrometre,
  mm,
  perMinute,
  type Ratio,
  rpm,
  type StackContributor,
  selectFit,
  stackUp,
  thou,
  times,
  washersForEndPlay,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const NANOMETRE = { absolute: 1e-12 };

describe('stack-up', () => {
  check({
    source: 'NAVEDTRA 14276, figure 3-39',
    name: 'a hole of 1.500 to 1.502 in leaves a shaft of 1.495 to 1.497 in 0.003 to 0.007 in',
    given: [
      { name: 'hole', size: { min: inch(1.5), max: inch(1.502) } },
      { name: 'shaft', size: { min: inch(1.495), max: inch(1.497) }, sensitivity: -1 },
    ] as readonly StackContributor[],
    expected: { min: inch(0.003), max: inch(0.007) },
    tolerance: NANOMETRE,
    got: (sizes) => stackUp(sizes, { kind: 'worst case' }).span,
  });

  const pistons: readonly StackContributor[] = [
    { name: 'bore', size: { min: mm(87.2), max: mm(87.25) } },
    { name: 'piston', size: { min: mm(87.165), max: mm(87.215) }, sensitivity: -1 },
  ];
  check({
    source: 'TM 10-3930-653-14&P, p. 61',
    name: 'its extremes leave a piston -0.015 to 0.085 mm, where 0.025 to 0.045 mm are asked for',
    given: pistons,
    expected: { min: mm(-0.015), max: mm(0.085) },
    tolerance: NANOMETRE,
    got: (sizes) => stackUp(sizes, { kind: 'worst case' }).span,
  });
  check({
    // Equally likely sizes differ by a triangle: (0.040 / 0.050)² / 2 of it lies past the limits on either side.
    source: 'TM 10-3930-653-14&P, p. 61, its sizes taken as uniform and convolved by hand',
    name: 'of pistons that are not selected 64 in 100 do not fit',
    given: pistons,
    expected: { share: 0.64 as Ratio, below: 0.32 as Ratio, above: 0.32 as Ratio },
    // Four standard errors of 200 000 draws.
    tolerance: { absolute: 0.0043 },
    got: (sizes) => {
      const limits = { min: mm(0.025), max: mm(0.045) };
      const method = { kind: 'Monte Carlo', seed: 61, draws: 200_000, limits } as const;
      const { share, below, above } = stackUp(sizes, method).outside ?? { share: 1 as Ratio };
      return { share, below: below as Ratio, above: above as Ratio };
    },
  });
  check({
    source: 'JCGM 100:2008, 4.3.7 and 4.3.9: variances of uniform and triangular bounds',
    name: 'bounds a half width a to either side have a variance of a²/3 uniform, a²/6 triangular',
    given: ['uniform', 'triangular'] as const,
    expected: [Math.sqrt(1 / 3), Math.sqrt(1 / 6)],
    got: (kinds) =>
      kinds.map((kind) => {
        const size = { name: 'a', size: mm(5), tolerance: mm(1), distribution: { kind } };
        return stackUp([size], { kind: 'root sum square' }).standardDeviation / mm(1);
      }),
  });
});

describe('selected fits', () => {
  check({
    source: 'TM 10-3930-653-14&P, p. 61, clearance of 0.025 to 0.045 mm; sizes worked by hand',
    name: 'pistons that are wrong where they are become right in each other’s bores',
    given: { limits: { min: mm(0.025), max: mm(0.045) }, times: 1 as const },
    expected: ['small', 'large'],
    got: (fit) =>
      selectFit({
        ...fit,
        places: [
          { name: '1', room: mm(87.205), current: 'large' },
          { name: '2', room: mm(87.24), current: 'small' },
        ],
        parts: [
          { name: 'large', size: mm(87.205) },
          { name: 'small', size: mm(87.17) },
        ],
      }).pairs.map(({ part }) => part),
  });
});

describe('thrust washers', () => {
  check({
    source: 'TM 5-3895-346-14, end play of 0.004 to 0.011 in; washers worked by hand',
    name: 'a play of 0.018 in, worn to the limit, wants washers thicker by 0.007 to 0.014 in',
    given: { min: thou(4), max: thou(11) },
    expected: { least: thou(97), most: thou(104) },
    tolerance: NANOMETRE,
    got: (limits) =>
      washersForEndPlay({
        measured: thou(18),
        fitted: [{ name: 'worn', thickness: thou(90) }],
        shelf: [{ name: 'new', thickness: thou(100) }],
        limits,
      }).wanted,
  });
});

describe('honing', () => {
  check({
    basis: 'from memory',
    name: 'the tangent of a scratch is the speed along over the speed around: equal, they make 90° included',
    given: { strokeLength: mm(50), spindleSpeed: rpm(60), bore: mm(100) },
    expected: degree(90),
    // 100 mm for a stroke, down and up, as often as makes π · 100 mm in a second.
    got: (hone) => crosshatchAngle({ ...hone, strokeRate: times(perMinute(60), Math.PI) }),
  });
});

describe('roughness', () => {
  check({
    basis: 'common practice',
    name: 'a root mean square is at least 1.11 times the mean deviation; Rz is 4 times Ra or more',
    given: micrometre(0.8),
    expected: [micrometre(0.888), micrometre(3.2)],
    tolerance: { relative: 0.001 },
    got: (value) =>
      (['Rq', 'Rz'] as const).map((to) => convertRoughness({ value, from: 'Ra', to }).span.min),
  });
});
