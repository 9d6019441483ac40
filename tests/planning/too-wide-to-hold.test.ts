import type { Length } from 'crankwright';
import { planBuilds, planReport } from 'crankwright/planning';
import { describe, expect, it } from 'vitest';
import { readings, rulerOf } from './random-measured.js';
import { single, span, withEngine } from './single-shed.js';

/** The single with a bore that is two tenths narrower at its foot, a piston that nobody measured, and these limits. */
const withLimits = (min: number, max: number) => ({
  ...single,
  ...withEngine({
    bores: { ...single.engine.bores, pistonClearance: span(min, max) },
  }),
  blocks: [
    {
      name: 'block A',
      bores: [{ name: 'bore', readings: readings(rulerOf('inch'), 30003, { taper: 2 }) }],
    },
  ],
  pistonSets: [{ name: 'piston A', oversize: single.pistonSets?.[0]?.oversize as Length }],
});

describe('a clearance that varies by more than its limits leave', () => {
  it('holds with no piston, whatever the one at hand measures', async () => {
    // The bore takes two tenths, so two tenths of limits are just enough, and one tenth is not.
    const enough = await planBuilds(withLimits(33, 35));
    expect(enough.mayBe?.engines).toBe(1);
    const tooFew = await planBuilds(withLimits(33, 34));
    expect(tooFew.mayBe).toBeUndefined();
    expect(tooFew.measureFirst).toEqual([]);
  });

  it('is said to stand in the way of any engine, and is no failure of the solver', async () => {
    // A new bore may be anywhere in half a thou, which no piston can follow within a tenth.
    const plan = await planBuilds(withLimits(33, 34));
    expect(plan.proof).toEqual({ outcome: 'optimal' });
    expect(plan.nextEngine).toEqual({ lacks: [], alternatives: [] });
    expect(planReport(plan).replace(/\s+/g, ' ')).toContain(
      'the limits of a clearance are closer together than the sizes are finished or measured to',
    );
  });
});
