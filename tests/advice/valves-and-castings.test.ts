import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { plainShed } from '../shed/sheds.js';
import { changed, type Json } from '../sheet/sheets.js';

type Changes = Readonly<Record<string, Json | undefined>>;
const shedWith = (changes: Changes, offers: readonly Json[] = []) => {
  const plain = plainShed();
  const machining = [...(plain['machining'] as Json[]), ...offers];
  return readShed(changed({ ...plain, machining }, changes));
};
const said = (name: string, changes: Changes, offers: readonly Json[] = []) => {
  const part = triage(shedWith(changes, offers)).parts.find((each) => each.name === name);
  return part ? describePart(part, { units: 'inch' }) : [];
};
const offer = (work: string, price: string) => ({ work, shop: 'the shop', price });

describe('pitted valves', () => {
  // TM 5-4240-501-14&P, p. 278: discard a valve when its margin is less than 1/64 in after all pits
  // have been removed. For its own engine, so only the maker's limit condemns a valve.
  const pitted = { 'valveSets[0].faults': ['pitted'] };
  const limit = { 'engine.valveMargin': { min: '1/64 in', source: 'the manual, p. 9' } };

  it('are refaced, not thrown away, if the margin that is left is enough', () => {
    const [first, ...others] = said('valves A', pitted);
    expect(first).toBe(
      'valves A, from donor A: use after refacing them, if the margin left is enough: measure it',
    );
    expect(others.join('\n')).toContain('the worst valve first');
    expect(others.join('\n')).toContain('published for another engine: TM 5-4240-501-14&P, p. 278');
    expect(others.join('\n')).toContain('no shop on the list offers refacing them');
  });

  it('are scrap where what refacing leaves is below the limit, and only then', () => {
    const thin = said('valves A', { ...pitted, ...limit, 'valveSets[0].margin': '0.012 in' });
    expect(thin[0]).toBe('valves A, from donor A: scrap: the margin is too thin');
    expect(thin.join('\n')).toContain('below the limit of 0.0156 in (specified by the manual');
    const thick = said('valves A', { ...pitted, ...limit, 'valveSets[0].margin': '0.020 in' });
    expect(thick[0]).toBe('valves A, from donor A: use after refacing them');
    // Without the maker's limit a margin is not judged: 1/64 in is another engine's.
    const alone = said('valves A', { ...pitted, 'valveSets[0].margin': '0.012 in' });
    expect(alone[0]).toBe('valves A, from donor A: use after refacing them');
    expect(said('valves A', { ...pitted, ...limit }).join('\n')).toContain(
      'below 0.0156 in they are scrap',
    );
  });

  it('cost their refacing in a plan, which says that their margin must be measured', async () => {
    const only = { ...pitted, valveSets: undefined };
    const set = { name: 'valves A', stem: '0.3125 in', faults: ['pitted'] };
    const shed = shedWith({ ...only, valveSets: [set] }, [offer('reface valves', '22.00 EUR')]);
    const plan = await planBuilds(shed);
    expect(plan.builds).toHaveLength(1);
    expect(plan.cost.amount).toBe(22);
    expect(flowing(planReport(plan))).toContain(
      'valves A: measure the margin that refacing leaves, on the worst valve first',
    );
  });
});

describe('pitted seats in a head', () => {
  it('are recut, because a skim does not mend them', () => {
    const [first, ...others] = said('head A', { 'heads[0].faults': ['pitted'] }, [
      offer('recut seats', '40 EUR'),
    ]);
    expect(first).toBe(
      'head A, from donor A: use after crack-testing it; then recutting its valve seats, if they are not too wide then: measure them',
    );
    expect(others.join('\n')).not.toContain('skim');
    expect(others.join('\n')).toContain('usable up to a width of 5/64 in');
  });
});

describe('a cracked casting', () => {
  const cracked = { 'blocks[0].faults': ['frost-cracked'] };

  it('is not as it is, but no scrap, where nobody mends it', async () => {
    const [first, second] = said('block A', cracked);
    expect(first).toBe('block A, from donor A: not as it is: frost-cracked; no repair on the list');
    expect(second).toContain('do not use it as it is; no shop on the list stitches or welds it');
    const plan = await planBuilds(shedWith(cracked));
    expect(plan.leftOver).toContainEqual({
      section: 'blocks',
      name: 'block A',
      count: 1,
      faults: ['frost-cracked'],
      untested: true,
      why: 'not as it is',
    });
    expect(flowing(planReport(plan))).toContain(
      'Kept aside, as no shop on the list does the work that puts it right: block A (block; frost-cracked; not crack-tested)',
    );
  });

  it('is mended by the cheaper way that a shop offers, and pressure-tested after it', async () => {
    const offers = [offer('weld', '200 EUR'), offer('stitch', '150 EUR')];
    expect(said('block A', cracked, offers)[0]).toBe(
      'block A, from donor A: use after crack-testing it; then stitching its crack, if it then holds pressure',
    );
    const plan = await planBuilds(shedWith(cracked, offers), { mustBuild: ['block A'], atMost: 1 });
    expect(plan.builds.map(({ name, cost }) => [name, cost.amount])).toEqual([['block A', 150]]);
    expect(flowing(planReport(plan))).toContain(
      'block A: pressure-test it after the repair, before anything else is done to it',
    );
  });

  it('goes for a head as well', () => {
    expect(said('head A', { 'heads[0].faults': ['cracked'] })[0]).toBe(
      'head A, from donor A: not as it is: cracked; no repair on the list',
    );
  });
});

describe('a housing that must be resized to no known size', () => {
  it('is kept aside: a limit that is missing makes no scrap', () => {
    const spun = { 'blocks[0].faults': ['spun'], 'engine.mainHousing': undefined };
    expect(said('block A', spun)[0]).toBe(
      'block A, from donor A: not as it is: housing pulley main must be resized, but to what size is not known; housing flywheel main must be resized, but to what size is not known',
    );
  });
});

describe('the tests of a plan', () => {
  const offers = [offer('crack test', '12 EUR')];

  it('come first, part by part, whether a shop on the list offers them or not', async () => {
    const plan = await planBuilds(shedWith({}), { atMost: 1 });
    const page = flowing(planReport(plan));
    expect(page).toMatch(
      /TEST FIRST -+ Have these parts crack-tested before anything else: .* so its cost is not counted\. 1\. \[ \] crankshaft A: no crack test of it is listed \[1\] HOW WELL IT WAS MEASURED -+ .* ENGINE 1/,
    );
    expect(page).toContain('Crack-test first: crankshaft A.');
    expect(plan.cost.amount).toBe(0);
  });

  it('cost what a shop asks for them', async () => {
    const plan = await planBuilds(shedWith({}, offers), { atMost: 1 });
    expect(plan.cost.amount).toBe(12);
    const page = flowing(planReport(plan));
    expect(page).toContain(
      'crankshaft A: no crack test of it is listed [1]; by the shop, 12.00 EUR',
    );
    expect(page).not.toContain('is not counted');
    expect(page).toContain('crankshaft A: crack-test it; 12.00 EUR');
  });

  it('of a plan without any are not asked for', async () => {
    const tested = { for: 'cracks', how: 'magnetic particles', found: 'none' };
    const plan = await planBuilds(shedWith({ 'crankshafts[0].tested': tested }), { atMost: 1 });
    expect(planReport(plan)).not.toContain('TEST FIRST');
  });
});

describe('scrap', () => {
  it('is kept until the engines run', async () => {
    const plan = await planBuilds(shedWith({ 'pistonSets[1].faults': ['cracked'] }));
    expect(flowing(planReport(plan))).toContain(
      'Scrap, to keep until the engines run: pistons 20 over (piston set; cracked)',
    );
  });
});
