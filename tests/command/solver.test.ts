import type { Highs } from 'highs';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { highsFailing } from '../planning/fake-highs.js';
import { plainShed } from '../shed/sheds.js';

/** What plans the plain shed from the command line, with another solver. */
async function planner(load: () => Highs) {
  vi.resetModules();
  vi.doMock('highs', () => ({ default: async () => load() }));
  const { captured } = await import('./captured.js');
  return () => captured(['plan'], { input: JSON.stringify(plainShed()) });
}

const planned = async (load: () => Highs) => (await planner(load))();

afterEach(() => {
  vi.doUnmock('highs');
  vi.resetModules();
});

describe('crankwright plan, with a solver that is of no use', () => {
  it('prints what there is and says so, where the solver fails', async () => {
    const { code, out, err } = await planned(() => highsFailing(() => true));
    expect([code, err]).toEqual([3, '']);
    expect(out.replace(/\s+/g, ' ')).toContain(
      'NOT PROVEN: found no complete engine before the solver failed; at most 2 are possible.',
    );
  });

  it('prints the plan where only the next engine could not be told', async () => {
    // The last questions are about the next engine. What it needs is unknown only if the first of them is not answered.
    let left = Infinity;
    let asked = 0;
    const plan = await planner(() =>
      highsFailing(() => {
        asked += 1;
        return left-- <= 0;
      }),
    );
    await plan();
    let answered = asked;
    let code = 0;
    let out = '';
    while (code === 0) {
      answered -= 1;
      left = answered;
      ({ code, out } = await plan());
    }
    expect(code).toBe(3);
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /2 complete engines can be built; .* Proven: .* What one more engine needs is not known, because the solver failed\./,
    );
  });

  it('says what to do where the solver cannot be loaded', async () => {
    const { code, out, err } = await planned(() => {
      throw new Error('highs.wasm is missing');
    });
    expect([code, out]).toEqual([5, '']);
    expect(err).toBe(
      'crankwright: The solver for plans could not be loaded: highs.wasm is missing. In Node, reinstall the package. In a browser, give planBuilds a solver. Then try again.\n',
    );
  });
});
