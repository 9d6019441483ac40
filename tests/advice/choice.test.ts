import { planBuilds, planReport } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import {
  block,
  crankshaft,
  pistons,
  rings,
  rod,
  shells,
  single,
  two,
} from '../planning/single-shed.js';

// Which of equal plans a machinist would take. Sizes are tenths of a thou.

const planOf = async (changes: object, options = {}) => {
  const plan = await planBuilds({ ...single, ...changes } as Shed, options);
  expect(plan.proof).toEqual({ outcome: 'optimal' });
  return plan;
};
const partsOf = (plan: Awaited<ReturnType<typeof planOf>>) =>
  plan.builds.map(({ parts }) => parts.map(({ name }) => name));
const from = <P extends object>(origin: string, part: P) => ({ ...part, from: origin });

/** Two of everything, all alike, the parts of the second engine first. */
const crossed = {
  ...two,
  blocks: [from('donor A', block('block A', 30003)), from('donor B', block('block B', 30003))],
  crankshafts: [
    from('donor B', crankshaft('crankshaft B', 16248)),
    from('donor A', crankshaft('crankshaft A', 16248)),
  ],
  rods: [from('donor B', rod('rod B', 17505)), from('donor A', rod('rod A', 17505))],
  pistonSets: [
    from('donor B', pistons('piston B', 29970)),
    from('donor A', pistons('piston A', 29970)),
  ],
};

describe('among equal plans', () => {
  it('leaves two identical pistons with their own blocks: nobody swaps them for nothing', async () => {
    const plan = await planOf(crossed);
    expect(partsOf(plan)).toEqual([
      ['block A', 'crankshaft A', 'rod A', 'piston A', 'rings', 'shells'],
      ['block B', 'crankshaft B', 'rod B', 'piston B', 'rings', 'shells'],
    ]);
    expect(plan.compared).toContain('origin');
  });

  it('does not break up an engine that ran for one that did not', async () => {
    // One engine of two donors: donor B ran, and stays whole if A is built of its own parts; but A has no crankshaft.
    const { crankshafts } = crossed;
    const ran = { condition: { is: 'ran' } } as const;
    const mixed = {
      ...crossed,
      blocks: [crossed.blocks[0], { ...crossed.blocks[1], ...ran }],
      crankshafts: [crankshafts[0], crankshaft('loose crankshaft', 16248)],
    };
    // Built on block A, one part is a stranger either way; with the crankshaft of B, an engine that ran loses it.
    const one = await planOf(
      { ...mixed, rods: [from('donor A', rod('rod A', 17505))] },
      { mustBuild: ['block A'], atMost: 1 },
    );
    expect(partsOf(one)[0]).toContain('loose crankshaft');
    expect(one.compared).toContain('engines that ran');
    // Free to choose, it builds the engine that ran of its own parts.
    const free = await planOf(mixed, { atMost: 1 });
    expect(partsOf(free)[0]?.slice(0, 4)).toEqual(['block B', 'crankshaft B', 'rod B', 'piston B']);
  });

  it('keeps a part with the one that it belongs to', async () => {
    const plan = await planOf({
      ...two,
      pistonSets: [
        { ...pistons('fitted to B', 29970), belongsTo: 'block B' },
        pistons('other', 29970),
      ],
    });
    expect(partsOf(plan).map((names) => names[3])).toEqual(['other', 'fitted to B']);
    expect(plan.compared).toContain('belongs together');
  });

  it('puts shells of one make on one crankshaft, and home-made ones last', async () => {
    const twin = {
      engine: { ...single.engine, cylinders: 2 },
      blocks: [block('block A', 30003, 30003)],
      crankshafts: [
        {
          name: 'crankshaft A',
          rodJournals: ['rod 1', 'rod 2'].map((name) => ({
            ...crankshaft('', 16248).rodJournals[0],
            name,
          })),
        },
      ],
      rods: [rod('rod A', 17505), rod('rod B', 17505)],
      pistonSets: [pistons('pistons', 29970, 29970)],
    };
    const one = { ...shells('one of the old make', 0, 618.5, 1), make: 'old' };
    const other = { ...shells('one of the new make', 0, 618.5, 1), make: 'new' };
    const pair = { ...shells('two of the third make', 0, 618.5, 2), make: 'third' };
    const plan = await planOf({ ...twin, shells: [one, other, pair] });
    expect(partsOf(plan)[0]).toContain('two of the third make');
    expect(plan.compared).toContain('one make of shell');
    const own = { ...shells('cast at home', 0, 618.5, 2), homeMade: true };
    const proper = await planOf({ ...twin, shells: [own, shells('proper', 0, 618.5, 2)] });
    expect(partsOf(proper)[0]).toContain('proper');
    expect(proper.compared).toContain('not home-made');
  });

  it('widens the next tightest clearance too, not the tightest alone', async () => {
    // Oil: 17505 - 2 * 619.5 - 16248 = 18, 8 above 10, with the only shells. Pistons leave 33, 12 below 45, or 28, 8 above 20.
    const plan = await planOf({
      shells: [shells('shells', 0, 619.5, 1)],
      pistonSets: [pistons('large', 29975), pistons('right', 29970)],
      ringSets: [rings(1)],
    });
    expect(partsOf(plan)[0]).toContain('right');
  });

  it('says in the report what it was compared by', async () => {
    const text = planReport(await planOf(crossed)).replace(/\s+/g, ' ');
    expect(text).toContain(
      'Proven: no plan is better, compared by engines, cost, tightest margin, next tightest margins, amount of work, parts that stay with their engine and order of the file, in this order.',
    );
  });
});
