import {
  describeGrindPlan,
  type GrindPlan,
  grindPlan,
  mm,
  thou,
  type UnitSystem,
  undersizeSteps,
  type Wording,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { nameUndersize } from '../../src/crankshaft/describe-grind-plan.js';
import { refusal } from '../quantities/refusal.js';
import { asNew, rods, ruined, tenths, worn } from './journals.js';

const inches = { units: 'inch' } as const;
const millimetres = { units: 'metric' } as const;

describe('describeGrindPlan says', () => {
  it('that a journal needs no grinding', () => {
    const plan = grindPlan(rods(asNew));
    expect(describeGrindPlan(plan, inches)).toEqual([
      'no grinding needed at standard, 2.1245 to 2.1250 in',
      'rod 1 needs no grinding at standard',
    ]);
    expect(describeGrindPlan(plan, millimetres)).toEqual([
      'no grinding needed at standard, 53.962 to 53.975 mm',
      'rod 1 needs no grinding at standard',
    ]);
  });

  it('how far it is worn, and who allows that', () => {
    const plan = grindPlan({ ...rods({ ...asNew, smallest: 21_242 }), sizeAllowance: tenths(4) });
    expect(describeGrindPlan(plan, inches)[1]).toBe(
      'rod 1 needs no grinding at standard: 0.0003 in below it, within the allowance (specified)',
    );
    expect(describeGrindPlan(plan, millimetres)[1]).toBe(
      'rod 1 needs no grinding at standard: 0.008 mm below it, within the allowance (specified)',
    );
  });

  it('how far it is above its size', () => {
    const plan = grindPlan({ ...rods({ ...asNew, largest: 21_253 }), sizeAllowance: tenths(4) });
    expect(describeGrindPlan(plan, inches)[1]).toBe(
      'rod 1 needs no grinding at standard: 0.0003 in above it, within the allowance (specified)',
    );
  });

  it('what to grind to, what stood in the way, and what is left', () => {
    const plan = grindPlan({ ...rods(asNew, worn), cleanUpAllowance: thou(1) });
    expect(describeGrindPlan(plan, inches)).toEqual([
      'grind to 0.0100 in under, 2.1145 to 2.1150 in',
      'not standard: rod 2 is 0.0056 in below it and does not clean up (clean at 2.1166 in, 0.0084 in short)',
      'rod 1 cleans up at 0.0100 in under (clean at 2.1236 in): 0.0098 to 0.0103 in comes off',
      expect.stringMatching(
        /^rod 2 is to be ground: out-of-round 0\.0013 in: 0\.0008 in above the limit of 0\.0005 in \(common practice: /,
      ),
      'rod 2 cleans up at 0.0100 in under (clean at 2.1166 in): 0.0052 to 0.0057 in comes off',
      'clean-up allowance 0.0010 in (specified)',
      expect.stringMatching(/^keep the fillets at the maker's radius, .* polish to 8 to 12 µin/),
    ]);
    expect(describeGrindPlan(plan, millimetres)).toEqual([
      'grind to 0.254 mm under, 53.708 to 53.721 mm',
      'not standard: rod 2 is 0.142 mm below it and does not clean up (clean at 53.762 mm, 0.213 mm short)',
      'rod 1 cleans up at 0.254 mm under (clean at 53.939 mm): 0.249 to 0.262 mm comes off',
      expect.stringMatching(/^rod 2 is to be ground: out-of-round 0\.033 mm: 0\.020 mm above the /),
      'rod 2 cleans up at 0.254 mm under (clean at 53.762 mm): 0.132 to 0.145 mm comes off',
      'clean-up allowance 0.025 mm (specified)',
      expect.stringMatching(/^keep the fillets at the maker's radius, .* \(0\.20 to 0\.30 µm\)/),
    ]);
  });

  it('all that stands in the way of one step in one sentence', () => {
    const plan = grindPlan({
      ...rods(worn),
      minimum: tenths(21_200),
      shellsAtHand: [thou(20), thou(30)],
    });
    expect(describeGrindPlan(plan, inches)).toEqual([
      'no step serves',
      'not standard: not enough shells at hand; rod 2 is 0.0056 in below it and does not clean up (clean at 2.1166 in, 0.0084 in short)',
      'not 0.0100 in under: not enough shells at hand; rod 2 would be 2.1145 in, below the minimum of 2.1200 in',
      'not 0.0200 in under: rod 2 would be 2.1045 in, below the minimum of 2.1200 in',
      'not 0.0300 in under: rod 2 would be 2.0945 in, below the minimum of 2.1200 in',
    ]);
    expect(describeGrindPlan(plan, millimetres)[2]).toBe(
      'not 0.254 mm under: not enough shells at hand; rod 2 would be 53.708 mm, below the minimum of 53.848 mm',
    );
  });

  it('in short, no step that was passed over and no journal that is good as it is', () => {
    const short = { ...inches, why: false };
    expect(describeGrindPlan(grindPlan(rods(asNew)), short)).toEqual([
      'no grinding needed at standard, 2.1245 to 2.1250 in',
    ]);
    const plan = grindPlan(rods(asNew, worn));
    const full = describeGrindPlan(plan, inches);
    const said = describeGrindPlan(plan, short);
    expect(said).toEqual(full.filter((sentence) => !sentence.startsWith('not ')));
    expect(said.length).toBeLessThan(full.length);
  });

  it('in short too, a journal outside its size, a step that only wants shells, and why no step serves', () => {
    const short = { ...inches, why: false };
    const outside = grindPlan({
      ...rods({ ...asNew, smallest: 21_242 }),
      sizeAllowance: tenths(4),
    });
    expect(describeGrindPlan(outside, short)[1]).toMatch(
      /0\.0003 in below it, within the allowance/,
    );
    const wanting = grindPlan({ ...rods(worn), shellsAtHand: [thou(20)] });
    const said = describeGrindPlan(wanting, short).filter((each) => each.startsWith('not '));
    expect(said).toEqual(['not 0.0100 in under: not enough shells at hand']);
    const none = grindPlan({ ...rods(worn), minimum: tenths(21_200) });
    expect(describeGrindPlan(none, short)).toEqual(describeGrindPlan(none, inches));
  });

  it('which journals cannot clean up at any step', () => {
    const plan = grindPlan(rods(ruined, { ...ruined, name: 'rod 4' }));
    expect(describeGrindPlan(plan, inches)[0]).toBe('no step serves: rod 3, rod 4 cannot clean up');
    expect(describeGrindPlan(plan, inches)).toHaveLength(5);
  });

  it('who set a limit as the wording asks', () => {
    const wording: Wording = { units: 'inch', nameBasis: ({ kind }) => `[${kind}]` };
    const said = describeGrindPlan(grindPlan(rods(worn)), wording);
    expect(said.at(-2)).toBe('clean-up allowance 0.0010 in [common practice]');
    expect(said[2]).toMatch(/the limit of 0\.0005 in \[common practice\]$/);
  });

  it('an undersize by its size, or standard', () => {
    expect(nameUndersize(thou(0), inches)).toBe('standard');
    expect(nameUndersize(thou(20), inches)).toBe('0.0200 in under');
    expect(nameUndersize(mm(0.5), millimetres)).toBe('0.500 mm under');
    expect(undersizeSteps('metric').map((step) => nameUndersize(step, millimetres))[3]).toBe(
      '0.750 mm under',
    );
  });
});

describe('describeGrindPlan refuses', () => {
  it.each([undefined, null, 5, [], {}, { because: [] }, { outcome: 'grind' }])(
    '%j for a plan',
    (plan) => {
      const call = () => describeGrindPlan(plan as unknown as GrindPlan, inches);
      expect(refusal(call).message).not.toBe('');
    },
  );

  it('another unit system', () => {
    const call = () => describeGrindPlan(grindPlan(rods(worn)), { units: 'si' as UnitSystem });
    expect(refusal(call).value).toBe('si');
    const none = () => describeGrindPlan(grindPlan(rods(worn)), undefined as unknown as Wording);
    expect(refusal(none).parameter).toBe('wording');
  });

  it('another unit system for a plan of no sizes', () => {
    const plan = grindPlan({ ...rods(asNew), shellsAtHand: [], steps: [thou(0)] });
    const call = () => describeGrindPlan(plan, { units: 'si' as UnitSystem });
    expect(refusal(call).value).toBe('si');
  });
});
