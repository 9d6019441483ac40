import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, type Triage, triage, triageReport } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { shedProblems, spoiltShed } from '../shed/sheds.js';
import type { Json } from '../sheet/sheets.js';

// The plain shed has two donors. Crankshaft B and the rods B1 and B2 are from donor B.

const sorted = (changes: Readonly<Record<string, Json | undefined>>): Triage =>
  triage(readShed(spoiltShed(changes)));
const partOf = (name: string, changes: Readonly<Record<string, Json | undefined>>) => {
  const part = sorted(changes).parts.find((each) => each.name === name);
  if (part === undefined) throw new Error(`no ${name}`);
  return part;
};
const said = (name: string, changes: Readonly<Record<string, Json | undefined>>) =>
  describePart(partOf(name, changes), { units: 'inch' });

const sound = { for: 'cracks', how: 'magnetic particles', by: 'the grinder', found: 'none' };
const hard = { for: 'softening', how: 'hardness tester', found: 'none' };

describe('a rod that is bent, was overheated or lost its bearing', () => {
  // TM 9-2815-202-34, section 6-34 (3): scrap the rod if it is bent, had a bearing failure or was
  // overheated, and check it for cracks by the magnetic particle method. For another engine.
  it.each(['bent', 'spun', 'overheated'])('is scrap when it is %s, and says by whom', (fault) => {
    const [first, second] = said('rods A', { 'rods[0].faults': [fault] });
    expect(first).toBe(`rods A, from donor A: scrap: ${fault}`);
    expect(second).toContain(
      'scrap it (published for another engine: TM 9-2815-202-34, section 6-34',
    );
    expect(second).toContain('unless it is tested for');
  });

  it('is scrap when its own bearing seized', () => {
    expect(said('rods A', { 'rods[0].happened': ['seized bearing'] })[0]).toBe(
      'rods A, from donor A: scrap: seized bearing',
    );
  });

  it('is straightened or resized where its owner lists the test that cleared it, and says so', () => {
    const bent = { 'rods[0].faults': ['bent'], 'rods[0].tested': sound };
    const [first, second, ...others] = said('rods A', bent);
    expect(first).toBe('rods A, from donor A: use after straightening');
    expect(second).toContain('TM 9-2815-202-34');
    expect(second).toContain(
      'you list that it was tested for cracks (magnetic particles, by the grinder), none found',
    );
    expect(others.join('\n')).toContain('crack-test it again once it is straight');
    expect(others.join('\n')).toContain('a broken rod goes through the block');
    const spun = { 'rods[0].faults': ['spun'], 'rods[0].tested': sound };
    expect(said('rods A', spun)[0]).toMatch(/use after resizing housings rod A1, rod A2/);
  });

  it('is not cleared of heat by a crack test: the metal may be soft', () => {
    const hot = (tested: Json) =>
      partOf('rods A', { 'rods[0].faults': ['overheated'], 'rods[0].tested': tested }).disposition;
    expect(hot(sound)).toBe('scrap');
    expect(hot([sound, hard])).toBe('use as it is');
  });

  it('is scrap when the test found a crack, and the file may not say both', () => {
    const cracked = { ...sound, found: 'some' };
    expect(said('rods A', { 'rods[0].tested': cracked })).toEqual([
      'rods A, from donor A: scrap: cracked',
      'found by a test: cracked; scrap it',
    ]);
    const both = spoiltShed({ 'rods[0].faults': ['cracked'], 'rods[0].tested': sound });
    expect(shedProblems(both)).toMatchObject([{ path: 'rods[0].tested' }]);
  });
});

describe('after an accident', () => {
  const thrown = { 'pistonSets[0].happened': ['thrown rod'], 'pistonSets[0].from': 'donor B' };

  it('every crankshaft, rod and block of that donor is crack-tested, before anything else', () => {
    // TM 55-1930-209-14&P-21: the crankshaft must be inspected for cracks after a piston or
    // connecting rod failure. For another engine.
    const page = flowing(triageReport(sorted(thrown)));
    const list = page.slice(page.indexOf('TEST FIRST'), page.indexOf('BLOCKS'));
    expect(list).toMatch(/1\. \[ \] block B: donor B threw a rod \(pistons A\) 2\. /);
    expect(list).toMatch(/2\. \[ \] crankshaft B: donor B threw a rod \(pistons A\) \[\d\] 3\./);
    expect(list).toMatch(/3\. \[ \] rod B1: donor B threw a rod \(pistons A\) \[\d\] 4\./);
    expect(list).not.toContain('rods A');
    expect(page).toContain('rod B1, from donor B: use as it is, once it is crack-tested');
    expect(page.indexOf('TEST FIRST')).toBeLessThan(page.indexOf('block A, from donor A'));
    expect(page).toContain('published for another engine: TM 55-1930-209-14&P-21');
  });

  it('shells that spun count as one', () => {
    const spun = { 'crankshafts[1].rodJournals[0].faults': ['spun'] };
    expect(partOf('rod B1', spun).tests).toEqual([
      {
        test: 'crack test',
        when: 'first',
        because: [{ what: 'spun shells', part: 'crankshaft B', from: 'donor B' }],
      },
    ]);
    expect(partOf('rods A', spun).tests).toEqual([]);
  });

  it('what was tested since is not tested again', () => {
    expect(partOf('rod B1', { ...thrown, 'rods[1].tested': sound }).tests).toEqual([]);
    expect(partOf('crankshaft B', { ...thrown, 'crankshafts[1].tested': sound }).tests).toEqual([]);
  });
});

describe('a crankshaft', () => {
  it('that was never crack-tested is used only once it is', () => {
    expect(said('crankshaft A', {})[0]).toBe(
      'crankshaft A, from donor A: use as it is, once it is crack-tested',
    );
    expect(said('crankshaft A', { 'crankshafts[0].tested': sound })[0]).toBe(
      'crankshaft A, from donor A: use as it is',
    );
  });

  it('that is to be ground, like a block to be bored, is crack-tested before money is spent', () => {
    expect(said('crankshaft B', {})[0]).toMatch(/: machine, once it is crack-tested: grind rod/);
    expect(said('block B', {})[0]).toMatch(/: machine, once it is crack-tested: bore and hone/);
    expect(partOf('block A', {}).tests).toEqual([]);
  });

  it('has its mains before its rod journals, in reasons and in work', () => {
    const part = partOf('crankshaft A', { 'crankshafts[0].faults': ['scored'] });
    const kinds = part.because.flatMap((reason) =>
      reason.kind === 'journals' ? [reason.journals] : [],
    );
    expect(kinds).toEqual(['mains', 'rods']);
    expect(part.jobs.map(({ work }) => work)).toEqual([
      'grind main journals',
      'grind rod journals',
    ]);
  });

  it('that was overheated is scrap: its heat treatment is gone', () => {
    // TM 9-2815-255-24: an overheated or discoloured crankshaft is replaced. For another engine.
    const [first, second] = said('crankshaft A', { 'crankshafts[0].faults': ['overheated'] });
    expect(first).toContain('scrap: overheated');
    expect(second).toContain('published for another engine: TM 9-2815-255-24');
  });
});

describe('a bent crankshaft', () => {
  const bent = {
    'crankshafts[0].faults': ['bent'],
    'crankshafts[0].mainJournals[1].runout': '0.0080 in',
  };

  it('is undecided until it is straight and measured, and its runout is not forgotten', () => {
    const [first, ...others] = said('crankshaft A', bent);
    expect(first).toBe(
      'crankshaft A, from donor A: undecided until it is straightened and measured',
    );
    const text = others.join('\n');
    expect(text).toContain('does not show how it will clean up');
    expect(text).toContain('0.0080 in on flywheel main while it was bent');
    expect(text).toContain('main journals, if it comes back true: no grinding needed at standard');
    expect(text).toContain('crack-test it first');
    expect(text).toContain('crack-test it again once it is straight');
    expect(text).toContain(
      'measure the runout and the diameters of every journal again once it is straight, before its mains are called good',
    );
  });

  it('is not counted on by a plan, which says why', async () => {
    const plan = await planBuilds(readShed(spoiltShed(bent)));
    const used = plan.builds.flatMap(({ parts }) => parts.map(({ name }) => name));
    expect(used).not.toContain('crankshaft A');
    expect(plan.leftOver).toContainEqual({
      section: 'crankshafts',
      name: 'crankshaft A',
      count: 1,
      faults: ['bent'],
      untested: true,
      why: 'undecided',
      until: 'it is straightened and measured',
    });
    expect(flowing(planReport(plan))).toContain(
      'Undecided until straightened and measured: crankshaft A (crankshaft; bent; not crack-tested)',
    );
  });

  it('is judged by the runout that the shop promises', async () => {
    const promised = { ...bent, 'crankshafts[0].runoutOnceStraight': '0.0010 in' };
    expect(said('crankshaft A', promised)[0]).toBe(
      'crankshaft A, from donor A: use after crack-testing it; then straightening',
    );
    // Ground, it cleans up with that runout: 1.6221 - 0.0012 - 0.0010 - 0.0010 = 1.6189 at 10 under,
    // and with 0.0080 in it would not clean up at that step.
    const worn = (runout: string) =>
      partOf('crankshaft B', {
        'crankshafts[1].faults': ['bent'],
        'crankshafts[1].runoutOnceStraight': runout,
      }).jobs.map(({ work, step }) => [work, step && Math.round(step * 1e6)]);
    expect(worn('0.0010 in')).toEqual([
      ['straighten', undefined],
      ['grind rod journals', 254],
    ]);
    expect(worn('0.0080 in')).toEqual([
      ['straighten', undefined],
      ['grind rod journals', 508],
    ]);
  });

  it('is scrap where no step would serve even if it came back true', () => {
    const worn = { ...bent, 'engine.rodJournals.minimum': '1.6249 in' };
    expect(partOf('crankshaft A', worn).disposition).toBe('scrap');
  });

  it('is refused a promise where it is not bent', () => {
    const straight = spoiltShed({ 'crankshafts[0].runoutOnceStraight': '0.001 in' });
    expect(shedProblems(straight)).toMatchObject([{ path: 'crankshafts[0].runoutOnceStraight' }]);
  });
});
