import { expect, it, vi } from 'vitest';
import { planCalls } from '../fuzz/calls/plan.js';

vi.mock('../../src/planning/builds.js', () => ({
  buildOf: () => {
    throw new TypeError('planted');
  },
}));

it('lets a mistake of the library out as itself', async () => {
  const { run, sound } = planCalls.planBuilds;
  await expect(run(sound[0] ?? [])).rejects.toThrow(new TypeError('planted'));
});
