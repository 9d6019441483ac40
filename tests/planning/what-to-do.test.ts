import { inch } from 'crankwright';
import { buildSheet } from 'crankwright/build-sheet';
import { type Build, type PartToMeasure, type Plan, planReport } from 'crankwright/planning';
import { describe, expect, it } from 'vitest';
import { HOSTILE_NAMES } from '../pages/pages.js';
import { inches, machined, noEngine, plain, renamed, twoEngines } from './plans.js';

/** The lines under the first heading of a plan that tells what to do. */
function toDo(plan: Plan): readonly string[] {
  const lines = planReport(plan).split('\n');
  const from = lines.indexOf('WHAT TO DO') + 2;
  expect(from).toBeGreaterThan(2);
  return lines.slice(from, lines.indexOf('', from));
}

/** As many engines as this, each with its own name. */
const engines = (count: number, long = ''): readonly Build[] =>
  Array.from({ length: count }, (_, i) => ({
    ...plain,
    name: `block ${i + 1}${long}`,
    parts: plain.parts.map((part) => ({ ...part, name: `${part.section} ${i + 1}${long}` })),
  }));

const eur = (amount: number) => ({ amount, currency: 'EUR' });
const shops = (count: number) =>
  Array.from({ length: count }, (_, i) => ({
    shop: `shop ${i + 1}`,
    jobs: machined.jobs,
    cost: eur(10),
  }));

describe('a plan says what to do', () => {
  it('in the order of doing, a sentence a line', () => {
    expect(toDo(twoEngines)).toEqual([
      '2 complete engines can be built; shop work and purchases cost 205.50 EUR.',
      'Work still to do: block A (bore and hone); crankshaft B (straighten, grind rod journals).',
      'Before anything else, have crack-tested: crankshaft B.',
      'Buy for 74.50 EUR, and measure before anything is cut: pistons 20 over; 2 × rod shells 20 under.',
      'To the borer, for 70.00 EUR: block A (boring and honing).',
      'To the grinder, for 61.00 EUR: crankshaft B (straightening, grinding rod journals).',
      'Engine 1: block A with crankshaft B, rods A, pistons 20 over.',
      'Engine 2: block C with crankshaft C (rods standard), rods C, pistons C.',
      'One more engine needs: 1 piston set 0.0200 in over; 1 pair of rod shells 0.0300 in under.',
    ]);
  });

  it('before its details, and before what is proven', () => {
    const text = planReport(twoEngines);
    expect(text.indexOf('WHAT TO DO')).toBeLessThan(text.indexOf('HOW SURE IT IS'));
    expect(text.indexOf('HOW SURE IT IS')).toBeLessThan(text.indexOf('TEST FIRST'));
  });

  it('what work the count of engines stands on, as far as a line goes, or that it stands on none', () => {
    const counted = (...builds: readonly Build[]) => toDo({ ...twoEngines, builds })[1];
    const [bore, straighten, grind] = machined.jobs;
    if (!bore || !straighten || !grind) throw new Error('the fixture has too few jobs');
    expect(counted(plain)).toBe('That counts on no machining and no repair.');
    // A crack test changes nothing of a part.
    expect(counted({ ...plain, jobs: [{ ...bore, work: 'crack test' }] })).toBe(
      'That counts on no machining and no repair.',
    );
    expect(counted({ ...plain, jobs: [straighten, grind] })).toBe(
      'That counts on work still to be done: crankshaft B (straightening, grinding rod journals).',
    );
    expect(counted({ ...plain, jobs: [straighten] }, { ...plain, jobs: [bore] })).toBe(
      'That counts on work still to be done: crankshaft B (straightening); block A (boring and honing).',
    );
    const two = ['block B', 'crankshaft B'].map((part) => ({ ...grind, part }));
    expect(counted({ ...plain, jobs: [bore, { ...bore, part: 'block C' }, ...two] })).toBe(
      'Work still to do: block A, block C (bore and hone); block B, crankshaft B (grind rod journals).',
    );
    const same = ['block A', 'block B', 'block C'].map((part) => ({ ...bore, part }));
    expect(counted({ ...plain, jobs: same })).toBe(
      'That counts on work still to be done: block A, block B, block C (boring and honing).',
    );
    const many = engines(9).map((build, i) => ({
      ...build,
      jobs: [bore, grind].map((job) => ({
        ...job,
        part: `${job.part} from the long barn, number ${i}`,
      })),
    }));
    const said = toDo({ ...twoEngines, builds: many, orders: shops(1) });
    expect(said[1]).toBe(
      'That counts on work on 18 parts (bore and hone, grind rod journals): see MACHINING ORDERS.',
    );
  });

  it('in one line with the count, where each of the others takes one', () => {
    const crowded: Plan = {
      ...twoEngines,
      cannotBuild: noEngine.cannotBuild,
      builds: [machined],
      orders: [{ shop: 'the borer', jobs: machined.jobs, cost: eur(131) }],
      measureFirst: [
        {
          mayBring: { kind: 'one more engine', engines: 2 },
          parts: [
            {
              ...{ section: 'rods', name: 'rods D', tests: [], measure: [], again: [] },
              until: 'it is measured',
            },
          ],
        },
      ],
      measureAgain: [
        {
          ...{ section: 'blocks', name: 'block C' },
          because: [{ kind: 'measure sizes again', of: 'bores', places: ['cylinder 1'] }],
        },
      ],
      toMake: [
        {
          ...{ section: 'thrustWashers', name: 'turned washer', engine: 'block A' },
          ...{ size: inches(0.0962), cost: eur(20) },
        },
      ],
    };
    const [count, unbuilt, ...others] = toDo(crowded);
    expect(count).toBe(
      '1 complete engine can be built after work on 2 parts; shop work and purchases cost 205.50 EUR.',
    );
    expect(unbuilt).toContain('You asked for block D');
    expect(others).toHaveLength(8);
    const proof = { outcome: 'time limit', stage: 'least cost', found: 205.5, bound: 180 } as const;
    expect(toDo({ ...crowded, proof })[0]).toBe(
      '1 complete engine can be built after work on 2 parts. NOT PROVEN: see HOW SURE IT IS.',
    );
  });

  it('first a reading that costs nothing to take again, then tests that are paid for', () => {
    const withPart = (again: PartToMeasure['again']): Plan => ({
      ...twoEngines,
      builds: [machined],
      measureFirst: [
        {
          mayBring: { kind: 'one more engine', engines: 2 },
          parts: [
            {
              ...{ section: 'crankshafts', name: 'crankshaft D', tests: [], measure: [], again },
              until: 'the odd reading is taken again',
            },
          ],
        },
      ],
    });
    const places = (plan: Plan) => {
      const lines = toDo(plan);
      const at = (start: RegExp) => lines.findIndex((line) => start.test(line));
      return [at(/measure first/), at(/^Before anything else/)];
    };
    const misread = { kind: 'at no step', place: 'rod 1', below: inches(0.025).min } as const;
    const [reading, test] = places(withPart([misread]));
    expect(reading).toBeGreaterThan(-1);
    expect(reading).toBeLessThan(test ?? -1);
    const [later, first] = places(withPart([]));
    expect(later).toBeGreaterThan(first ?? Infinity);
    const sheet = buildSheet(withPart([misread]), { format: 'text' });
    expect(sheet.indexOf('Read again first')).toBeGreaterThan(-1);
    expect(sheet.indexOf('crankshaft D: rod 1: read it again')).toBeLessThan(
      sheet.indexOf('Test first'),
    );
    expect(buildSheet(withPart([]), { format: 'text' })).not.toContain('Read again first');
  });

  it('what goes to a shop, and what for', () => {
    const [bore] = machined.jobs;
    if (!bore) throw new Error('the fixture has no job');
    const sent = (...jobs: readonly Build['jobs'][number][]) =>
      toDo({ ...twoEngines, orders: [{ shop: 'the borer', jobs, cost: eur(70) }] }).find((line) =>
        line.startsWith('To the borer'),
      );
    const test = (part: string) => ({ ...bore, part, work: 'crack test' as const });
    expect(sent(test('head B'))).toBe('To the borer, for 70.00 EUR: a crack test of head B.');
    expect(sent(bore, test('block A'), test('head B'))).toBe(
      'To the borer, for 70.00 EUR: block A (boring and honing); crack tests of block A, head B.',
    );
    const many = Array.from({ length: 9 }, (_, i) => test(`spare crankshaft ${i}`));
    expect(sent(...many)).toBe(
      'To the borer, for 70.00 EUR: crack tests of 9 parts; see MACHINING ORDERS.',
    );
    expect(sent({ ...bore, readFirst: ['pistons A'] })).toBe(
      'To the borer, for 70.00 EUR, IN DOUBT: block A (bore and hone); see MACHINING ORDERS.',
    );
  });

  it('what measuring first may save, besides what else it may bring', () => {
    const open = (name: string): PartToMeasure => ({
      ...{ section: 'rods', name, tests: [], measure: [], again: [] },
      until: 'it is measured',
    });
    const first = (saving: string) =>
      toDo({
        ...twoEngines,
        builds: [machined],
        measureFirst: [
          { mayBring: { kind: 'what to buy', engines: 2, lacks: [] }, parts: [open('rods D')] },
          {
            mayBring: { kind: 'lower cost', cost: eur(105.5), less: eur(100) },
            parts: [open(saving)],
          },
        ],
      }).find((line) => line.includes('easure first'));
    expect(first('rods D')).toBe(
      'To know what to buy for one more engine, and perhaps to save 100.00 EUR, measure first: rods D.',
    );
    expect(first('rods E')).toBe(
      'Measure first, perhaps to save 100.00 EUR: rods E; see MEASURE FIRST for more.',
    );
  });

  it('what is to be measured once more', () => {
    const [bearing] = machined.bearings;
    if (!bearing) throw new Error('the fixture has no bearing');
    const near = {
      engine: 'block A',
      of: 'rods',
      place: 'rod 1',
      finding: bearing.finding,
      holds: 0.9 as Plan['near'][number]['holds'],
      atStake: eur(205.5),
      measure: ['the journal'],
    } as const;
    const again = {
      section: 'blocks',
      name: 'block C',
      because: [{ kind: 'measure sizes again', of: 'bores', places: ['cylinder 1'] }],
    } as const;
    expect(toDo({ ...twoEngines, near: [near], measureAgain: [again] })).toContain(
      'Measure once more before you spend money: block A, rod 1; block C.',
    );
    const many = Array.from({ length: 20 }, () => near);
    expect(toDo({ ...twoEngines, near: many })).toContain(
      'Measure 20 things once more before you spend money: see MEASURE ONCE MORE.',
    );
  });

  it('with counts where names do not fit, and where they are told', () => {
    const tests = Array.from({ length: 12 }, (_, i) => ({
      section: 'crankshafts' as const,
      part: `spare crankshaft ${i}`,
      test: 'crack test' as const,
      when: 'first' as const,
      because: [],
    }));
    const shopping = Array.from({ length: 12 }, (_, i) => ({
      section: 'ringSets' as const,
      name: `rings 20 over ${i}`,
      count: 2,
      cost: eur(10),
    }));
    const lacks = Array.from({ length: 9 }, () => ({
      section: 'pistonSets' as const,
      step: inch(0.02),
      count: 2,
    }));
    const said = toDo({
      ...twoEngines,
      builds: [{ ...machined, tests }],
      shopping,
      nextEngine: { alternatives: [], lacks },
    });
    expect(said).toContain('Before anything else, have 12 parts crack-tested: see TEST FIRST.');
    expect(said).toContain('Buy 24 parts for 120.00 EUR: see TO BUY.');
    expect(said).toContain('One more engine needs 18 parts more: see THE NEXT ENGINE.');
  });

  it('of many parts that the next engine lacks, which are the hardest to get', () => {
    const lack = (section: 'shells' | 'heads' | 'blocks' | 'pistonSets' | 'crankshafts') => ({
      section,
      count: 1,
    });
    const lacks = (['shells', 'pistonSets', 'heads', 'crankshafts', 'blocks'] as const).map(lack);
    const many = lacks.map((each) => ({ ...each, count: 2 }));
    expect(toDo({ ...twoEngines, nextEngine: { alternatives: [], lacks: many } })).toContain(
      'One more engine needs 10 parts more, above all 2 blocks; 2 crankshafts: see THE NEXT ENGINE.',
    );
  });

  it('in ten lines at the most, and sums up engines and shops where they are many', () => {
    const many = toDo({ ...twoEngines, builds: engines(30) });
    expect(many.length).toBeLessThanOrEqual(10);
    expect(many).toContain('Engines: see ENGINE 1 to ENGINE 30 for what goes together.');
    expect(many).toContain('To the borer, for 70.00 EUR: block A (boring and honing).');
    const some = toDo({ ...twoEngines, builds: engines(3), orders: shops(7) });
    expect(some.length).toBeLessThanOrEqual(10);
    expect(some).toContain('To 7 shops, for 70.00 EUR: see MACHINING ORDERS.');
    expect(some.filter((line) => line.startsWith('Engine '))).toHaveLength(3);
    const few = toDo({ ...twoEngines, builds: engines(4), orders: shops(4) });
    expect(few.length).toBeLessThanOrEqual(10);
  });

  it('that it is not proven, where it is not', () => {
    const proof = { outcome: 'time limit', stage: 'least cost', found: 205.5, bound: 180 } as const;
    expect(toDo({ ...twoEngines, proof })[0]).toBe(
      '2 complete engines can be built. NOT PROVEN to be the best: see HOW SURE IT IS.',
    );
    // What the next engine needs says nothing about this plan.
    const next = { outcome: 'time limit', stage: 'next engine', found: 2, bound: 2 } as const;
    expect(toDo({ ...twoEngines, proof: next })[0]).not.toContain('NOT PROVEN');
  });

  it('of nothing, that nothing can be built and what is wanting', () => {
    expect(toDo(noEngine)).toEqual([
      'No complete engine can be built.',
      'You asked for block D, but it cannot be built: it is scrap (cracked).',
      'One more engine needs: 2 rods; 1 head.',
    ]);
  });

  it.each(HOSTILE_NAMES)('a sentence a line with names as %j', (name) => {
    for (const plan of [twoEngines, { ...twoEngines, builds: engines(20, name) }]) {
      const lines = toDo(renamed(plan, name));
      expect(lines.length).toBeLessThanOrEqual(10);
      expect(lines.filter((line) => line.length > 96 || !/[.…]$/.test(line))).toEqual([]);
    }
  });
});
