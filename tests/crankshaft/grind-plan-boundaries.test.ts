import { grindPlan, inch, type Length, thou, undersizeSteps } from 'crankwright';
import { describe, expect, it } from 'vitest';

const standard = { min: inch(1.6245), max: inch(1.625) };
const journal = (smallest: number, largest: number) => ({
  name: 'rod 1',
  smallest: inch(smallest),
  largest: inch(largest),
  outOfRound: thou(0),
  taper: thou(0),
});
const plan = (smallest: number, largest: number, minimum?: Length) =>
  grindPlan({
    journals: [journal(smallest, largest)],
    standard,
    steps: undersizeSteps('inch'),
    ...(minimum && { minimum }),
  });

describe('grindPlan at its boundaries', () => {
  it('passes over a step at which a worn journal is itself below the minimum', () => {
    // 20 under is 1.6045 in at the least; this journal is worn to 1.6042 in.
    expect(plan(1.6042, 1.6046)).toMatchObject({ outcome: 'use as it is' });
    const kept = plan(1.6042, 1.6046, inch(1.6044));
    expect(kept.outcome).toBe('none');
    expect(kept.because).toContainEqual(
      expect.objectContaining({
        kind: 'below the minimum',
        journal: 'rod 1',
        smallest: inch(1.6042),
      }),
    );
  });

  it('tries standard first, named or not, and once', () => {
    const request = { journals: [journal(1.6247, 1.6248)], standard };
    for (const steps of [[thou(10)], [thou(10), thou(0)], [thou(0), thou(0), thou(10)]]) {
      expect(grindPlan({ ...request, steps })).toMatchObject({
        outcome: 'use as it is',
        undersize: 0,
      });
    }
    const gone = grindPlan({
      ...request,
      journals: [journal(1.53, 1.53)],
      steps: [thou(0), thou(10)],
    });
    expect(gone.because.filter(({ kind }) => kind === 'does not clean up')).toHaveLength(2);
  });

  it('refuses a journal of another kind, and a minimum that no journal could pass', () => {
    // 3 mm is 0.1181 in: 1.6245 - 0.1181 = 1.5064 in.
    expect(() => plan(1.5065, 1.5065)).not.toThrow();
    expect(() => plan(1.5063, 1.5063)).toThrow(/at most 3 mm below the standard/);
    expect(() => plan(1.62, 1.62, inch(1.9))).toThrow(/of another journal/);
  });
});

describe('grindPlan where some journals are at the step already', () => {
  it('says what is left for the wheel as soon as one is ground', () => {
    // Standard less 10 under is 1.6145 to 1.6150 in.
    const ground = { ...journal(1.6146, 1.6149), name: 'rod 2' };
    const work = grindPlan({
      journals: [journal(1.6182, 1.6186), ground],
      standard,
      steps: undersizeSteps('inch'),
    });
    expect(work.outcome === 'grind' && work.journals.map((each) => each.work)).toEqual([
      'grind',
      'use as it is',
    ]);
    expect(work.because).toContainEqual(
      expect.objectContaining({ kind: 'allowance', cleanUpAllowance: thou(1) }),
    );
  });

  it('says nothing of the wheel where none is', () => {
    expect(plan(1.6246, 1.6248).because.map(({ kind }) => kind)).toEqual(['good as it is']);
  });
});
