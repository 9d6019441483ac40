import { planBuilds, planReport } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { plainShed, spoiltShed } from '../shed/sheds.js';

describe('a rod that fits no crankshaft', () => {
  it('is left over with the reason, not as a spare like any other', async () => {
    const rods = plainShed()['rods'] as readonly object[];
    // 1.8000 less two walls of 0.0620 is 0.05 in more than the largest journal: 1.6250.
    const odd = { name: 'rod E1', rods: [{ name: 'rod E1', housingBore: '1.8000 in' }] };
    const shed = spoiltShed({ rods: [...rods, odd] as never, 'engine.rodHousing': undefined });
    const plan = await planBuilds(readShed(shed));
    expect(plan.leftOver.find(({ name }) => name === 'rod E1')).toMatchObject({
      why: 'spare',
      fitsNothing: 'shells',
    });
    const text = flowing(planReport(plan));
    expect(text).toContain('rod E1 (rods; no shells here give it a clearance within limits;');
    expect(text.match(/no shells here give it/g)).toHaveLength(1);
  });
});
