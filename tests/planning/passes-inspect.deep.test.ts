import { planBuilds } from 'crankwright/planning';
import { inspect } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { asSheet } from './as-sheet.js';
import { randomShed } from './random-sheds.js';

describe('every engine of a plan', () => {
  it('passes inspection on its own, with the shells it was given and no others', async () => {
    let inspected = 0;
    const sheds = 120;
    for (let seed = 0; seed < sheds; seed++) {
      const shed = randomShed(seed);
      const { builds } = await planBuilds(shed);
      for (const build of builds) {
        inspected++;
        const { rods, mains, cylinders } = inspect(asSheet(shed, build));
        for (const group of [rods, mains].flatMap((each) => each ?? [])) {
          const steps = build.bearings.filter(({ kind }) => kind === group.kind);
          expect(group.plan).toMatchObject({
            outcome: 'use as it is',
            undersize: steps[0]?.undersize,
          });
          expect(group.pairsToBuy).toBe(0);
          expect(group.bearings.map(({ shells }) => shells?.finding.verdict)).toEqual(
            steps.map(() => 'within'),
          );
        }
        for (const { piston } of cylinders) {
          expect(piston?.finding?.verdict ?? 'within').toBe('within');
        }
      }
    }
    expect(inspected).toBeGreaterThan(sheds / 2);
  });
});
