import { threadOf } from 'crankwright';
import { buildSheet } from 'crankwright/build-sheet';
import { planReport } from 'crankwright/planning';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { plain, twoEngines } from '../planning/plans.js';

const pages = buildSheet(twoEngines, { format: 'text' }).split('\f').map(flowing);
const [cover = '', first = '', second = ''] = pages;

/** Where words stand on a page; they must be there. */
function at(page: string, words: string): number {
  expect(page).toContain(words);
  return page.indexOf(words);
}

describe('what is read of every crankshaft and rod', () => {
  it('is the runout and the bend and twist, whether or not it was straightened', () => {
    // Nothing of the second engine was straightened: a bend does not show to the eye.
    at(second, '[ ] crankshaft C, runout at the middle');
    at(second, '[ ] rods C, rod C1, bend and twist');
    at(first, '[ ] crankshaft B, straightened: runout at the middle');
    for (const rod of ['rod A1', 'rod A2']) at(first, `[ ] rods A, ${rod}, bend and twist`);
  });

  it('comes before it is built', () => {
    for (const page of [first, second]) {
      expect(at(page, 'bend and twist')).toBeLessThan(at(page, 'Assemble dry'));
    }
  });

  it('is marked where a rod was straightened', () => {
    const straight = { part: 'rods C', work: 'straighten', places: [], shop: 'the shop' } as const;
    const build = { ...plain, jobs: [{ ...straight, cost: { amount: 1 } }] };
    const page = buildSheet({ ...twoEngines, builds: [build] });
    at(page, '- [ ] rods C, rod C1, straightened: bend and twist');
  });
});

describe('what the bench must not forget', () => {
  it.each([
    ['Flywheel looked at for cracks', 'Clean and measure every part', 'Assemble dry'],
    ['Key and taper of flywheel and crankshaft', 'Clean and measure every part', 'Assemble dry'],
    ['Rod bolts new, or measured for stretch', 'Clean and measure every part', 'Assemble dry'],
    ['Fit of every pin in its bush', 'Clean and measure every part', 'Assemble dry'],
    ['weight of the rod', 'Clean and measure every part', 'Assemble dry'],
    ['weight of the piston', 'Clean and measure every part', 'Assemble dry'],
    ['Side clearance of every ring', 'Set the ring gaps', 'Set the end play'],
    ['Spark plugs refitted', 'Turned by hand through two full turns', 'First start'],
    ['Governor linkage moves freely', 'First start', 'Fuel turned on'],
    ['closes the throttle', 'First start', 'Fuel turned on'],
  ])('%s', (words, after, before) => {
    for (const page of [first, second]) {
      expect(at(page, words)).toBeGreaterThan(at(page, after));
      expect(at(page, words)).toBeLessThan(at(page, before));
    }
  });
});

describe('the order of the work', () => {
  it('tests for cracks before anything is bought', () => {
    expect(at(cover, 'crankshaft B, of engine 1')).toBeLessThan(at(cover, ' Buy '));
    expect(at(cover, 'Buy them only once the tests above are passed')).toBeGreaterThan(
      at(cover, ' Buy '),
    );
  });

  it('then measures what was bought, and only then sends anything out to be cut', () => {
    expect(at(first, 'Test before anything is bought')).toBeLessThan(
      at(first, 'Measure pistons and shells'),
    );
    expect(at(first, 'crack-test it first')).toBeLessThan(at(first, 'Measure pistons and shells'));
    expect(at(first, 'Measure pistons and shells')).toBeLessThan(at(first, 'Send out'));
    expect(second).not.toContain('Test before anything is bought');
  });

  it('lists what to buy before the orders for the shops in a plan', () => {
    const page = flowing(planReport(twoEngines));
    expect(at(page, 'TEST FIRST')).toBeLessThan(at(page, 'TO BUY'));
    expect(at(page, 'TO BUY')).toBeLessThan(at(page, 'MACHINING ORDERS'));
    at(page, 'Buy and measure pistons and shells before anything is cut to them.');
  });
});

describe("a torque that is not the maker's", () => {
  it('comes after what to mind of it, as whoever reads the figure sets the wrench', () => {
    const { series, ...thread } = threadOf('5/16-24 UNF');
    const rodCaps = { thread, grade: 'SAE 8', condition: 'oiled' } as const;
    const engine = { ...twoEngines.engine, assembly: { fasteners: { rodCaps } } };
    const [, page = ''] = buildSheet({ ...twoEngines, engine }, { format: 'text' }).split('\f');
    const said = flowing(page);
    expect(
      at(said, "Rod caps: CAUTION: the torque is reckoned for want of the maker's figure"),
    ).toBeLessThan(said.search(/Rod caps: \d+\.\d lbf·ft at the fastener/));
    expect(said.split('the torque is reckoned')).toHaveLength(2);
  });
});
