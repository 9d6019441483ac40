import { second } from 'crankwright';
import { planBuilds, planReport } from 'crankwright/planning';
import { describe, expect, it } from 'vitest';
import { bruteForce } from './brute-force.js';
import { caseShed } from './cases.js';
import { reached } from './reached.js';

const eur = (amount: number) => ({ amount, currency: 'EUR' });

describe('sheds on which a search once failed', () => {
  it('finds three engines where the presolve of the solver says that there are none', async () => {
    const options = { reserved: ['shells 29'], mustBuild: ['blocks 2'] };
    const shed = caseShed('shed-must-build');
    const plan = await planBuilds(shed, options);
    expect(plan.proof).toEqual({ outcome: 'optimal' });
    expect(plan.cannotBuild).toEqual([]);
    // Another exhaustive search, by another hand, found the same: 3 engines, 113.62, 37 µm.
    expect(reached(plan)).toEqual({ engines: 3, cost: 113_620, margin: 37_000 });
    expect(reached(plan)).toEqual(bruteForce(shed, options));
  });

  it('bears a limit of a milliard beside prices of a cent', async () => {
    const options = { mostPerEngine: eur(999_999_999.999) };
    const shed = caseShed('shed-cap-per-engine');
    const plan = await planBuilds(shed, options);
    expect(plan.proof).toEqual({ outcome: 'optimal' });
    expect(reached(plan)).toEqual(bruteForce(shed, options));
    // What one more engine lacks was what failed. It lacks what there is but one of.
    const lacks = plan.nextEngine?.lacks.map(({ section }) => section);
    expect(lacks).toEqual(expect.arrayContaining(['blocks', 'crankshafts', 'ringSets', 'heads']));
  });

  describe('twenty blocks, where nothing costs anything', () => {
    const hundred = caseShed('shed-hundred-capped');
    const shed = { ...hundred, blocks: hundred.blocks?.slice(0, 20) ?? [] };

    it('takes a limit that no engine can reach for none', async () => {
      const free = await planBuilds(shed, { atMost: 20 });
      const limited = await planBuilds(shed, { atMost: 20, mostPerEngine: eur(1) });
      // Of everything else there are a hundred.
      expect(free.builds).toHaveLength(20);
      expect(limited).toEqual(free);
    });

    it('promises no more than there are blocks when the time is up, and says that it was up', async () => {
      const options = { mostPerEngine: eur(1), timeLimit: second(0.001) };
      const plan = await planBuilds(shed, options);
      if (plan.proof.outcome !== 'time limit') throw new Error('it was proven in no time');
      const { stage, found, bound } = plan.proof;
      expect([stage, found]).toEqual(['most engines', plan.builds.length]);
      expect(bound).toBeLessThanOrEqual(20);
      const report = planReport(plan).replace(/\s+/g, ' ');
      expect(report).toContain('No complete engine was found.');
      expect(report).toContain(
        'NOT PROVEN: found no complete engine before the time was up; at most 20 are possible.',
      );
      expect(report).not.toContain('can be built');
    });
  });
});
