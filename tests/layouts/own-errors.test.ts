import { afterEach, expect, it, vi } from 'vitest';

const BUILDS = '../../src/planning/builds.js';

afterEach(() => {
  vi.doUnmock(BUILDS);
  vi.resetModules();
});

it('lets a mistake of the library out as itself', async () => {
  vi.resetModules();
  vi.doMock(BUILDS, () => ({
    buildOf: () => {
      throw new TypeError('planted');
    },
  }));
  const { planCalls } = await import('../fuzz/calls/plan.js');
  const { run, sound } = planCalls.planBuilds;
  await expect(run(sound[0] ?? [])).rejects.toThrow(new TypeError('planted'));
});
