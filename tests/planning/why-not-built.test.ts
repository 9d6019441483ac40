import { type PlanOptions, planBuilds, planReport } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { plainShed, spoiltShed } from '../shed/sheds.js';
import { exampleShed } from '../support/example-shed.js';

/** What a plan says of a block that must be built, as data and in words. */
async function refused(changes: Parameters<typeof spoiltShed>[0], options: PlanOptions) {
  const plan = await planBuilds(readShed(spoiltShed(changes)), options);
  return { because: plan.cannotBuild, said: flowing(planReport(plan)) };
}

describe('a block that must be built and may not be taken', () => {
  const refusedFor = async (fields: object) => {
    const { blocks = [], ...shed } = plainShed() as ReturnType<typeof plainShed> & {
      readonly blocks?: readonly object[];
    };
    const [first, ...others] = blocks;
    const kept = readShed({ ...shed, blocks: [{ ...first, ...fields }, ...others] });
    const asked = planBuilds(kept, { mustBuild: ['block B', 'block A'] });
    return asked.catch((error: { readonly parameter: string; readonly message: string }) => error);
  };

  it('is refused as reserved or built into an engine already, as the shed says', async () => {
    expect(await refusedFor({ reserved: 'for a friend' })).toMatchObject({
      parameter: 'options.mustBuild[1]',
      message: expect.stringContaining('is reserved in the shed (for a friend)'),
    });
    expect(await refusedFor({ builtInto: 'engine 1' })).toMatchObject({
      parameter: 'options.mustBuild[1]',
      message: expect.stringContaining('is built into engine 1 already'),
    });
  });
});

describe('a block that must be built and cannot be', () => {
  it('is told to be scrap, with its fault', async () => {
    const { because, said } = await refused(
      { 'blocks[0].faults': ['cracked'] },
      { mustBuild: ['block A'] },
    );
    expect(because).toMatchObject([{ name: 'block A', because: { kind: 'triage' } }]);
    expect(said).toMatch(
      /You asked for block A, but it cannot be built: (it is scrap|no repair that puts it right is on the list) \(cracked\)\./,
    );
  });

  it('is told to lack the parts it lacks, whatever the others have', async () => {
    const plan = await planBuilds(readShed({ ...plainShed(), crankshafts: [], toBuy: undefined }), {
      mustBuild: ['block A'],
    });
    expect(plan.cannotBuild).toMatchObject([
      {
        name: 'block A',
        because: { kind: 'lacks', beside: [], lacks: [{ section: 'crankshafts', count: 1 }] },
      },
    ]);
    expect(flowing(planReport(plan))).toContain(
      'You asked for block A, but it cannot be built: it lacks 1 crankshaft.',
    );
  });

  it('is told what it lacks beside the others that must be built', async () => {
    // Two heads and two crankshafts: not all three blocks.
    const plan = await planBuilds(exampleShed(), {
      mustBuild: ['block A', 'block B', 'block C'],
    });
    expect(plan.cannotBuild).toHaveLength(1);
    const [first] = plan.cannotBuild;
    expect(first?.because).toMatchObject({ kind: 'lacks' });
    expect(first?.because.kind === 'lacks' && first.because.beside).toHaveLength(2);
    const lacks = first?.because.kind === 'lacks' ? first.because.lacks : [];
    expect(lacks).toContainEqual({ section: 'heads', count: 1 });
    expect(lacks.some(({ section }) => section === 'blocks')).toBe(false);
    expect(flowing(planReport(plan))).toMatch(
      /You asked for block \w, but it cannot be built: beside block \w, block \w it lacks .*1 head/,
    );
  });

  it('is told that no more engines are asked for', async () => {
    const must = { mustBuild: ['block A', 'block B'] };
    const one = await planBuilds(exampleShed(), { ...must, atMost: 1 });
    expect(one.cannotBuild).toMatchObject([{ because: { kind: 'enough engines' } }]);
    expect(flowing(planReport(one))).toMatch(
      /no more engines are asked for than those of block \w\./,
    );
    const none = await planBuilds(exampleShed(), { mustBuild: ['block A'], atMost: 0 });
    expect(flowing(planReport(none))).toContain(
      'You asked for block A, but it cannot be built: no engine is asked for.',
    );
  });

  it('is told that its engine is too dear', async () => {
    // Block B costs 90 EUR to bore alone.
    const plan = await planBuilds(exampleShed(), {
      mustBuild: ['block B'],
      mostPerEngine: { amount: 50, currency: 'EUR' },
    });
    expect(plan.cannotBuild).toEqual([{ name: 'block B', because: { kind: 'too dear' } }]);
    expect(flowing(planReport(plan))).toContain(
      'its engine costs more than the limit for each engine.',
    );
  });
});
