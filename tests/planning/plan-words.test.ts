import { inch, type Length, ratio } from 'crankwright';
import {
  type CannotBuild,
  chancesReport,
  type EngineChances,
  type MeasureFirst,
  type PartToMake,
  type PartToMeasure,
  type Plan,
  planReport,
} from 'crankwright/planning';
import { describe, expect, it } from 'vitest';
import { inches, noEngine, twoEngines } from './plans.js';

const flowing = (text: string): string => text.replace(/\s+/g, ' ');
const said = (changes: Partial<Plan>, plan = twoEngines): string =>
  flowing(planReport({ ...plan, ...changes }));
const eur = (amount: number) => ({ amount, currency: 'EUR' });

describe('what to measure first, in words', () => {
  const crankshaft: PartToMeasure = {
    section: 'crankshafts',
    name: 'crankshaft X',
    tests: [],
    again: [],
    measure: [{ what: 'rod journals', places: ['rod 1', 'rod 2'], with: 'micrometer' }],
    until: 'it is measured',
  };
  const inCore: PartToMeasure = {
    section: 'otherParts',
    name: 'magneto of core A',
    core: 'core A',
    tests: [],
    again: [],
    measure: [],
    until: 'it is measured',
  };
  const bent: PartToMeasure = {
    section: 'crankshafts',
    name: 'crankshaft Y',
    tests: [],
    again: [],
    measure: [],
    until: 'it is straightened and measured',
  };
  const pistons: PartToMeasure = {
    section: 'pistonSets',
    name: 'pistons X',
    tests: [],
    again: [],
    measure: [{ what: 'oversize', places: [] }],
    until: 'it is measured',
  };
  const engine: MeasureFirst = {
    mayBring: { kind: 'one more engine', engines: 3 },
    parts: [crankshaft, inCore, bent, pistons],
  };

  it('tells what is proven, what there may be, and what each part takes', () => {
    const text = said({
      mayBe: { engines: 3, cost: eur(120), parts: [crankshaft] },
      measureFirst: [engine],
    });
    expect(text).toContain(
      'Proven: 2 complete engines. At most 3, if 1 part not yet measured proves good; shop work and purchases would then cost 120.00 EUR or more. Nothing of that is counted on in this plan.',
    );
    expect(text).toContain('crankshaft X: rod journals (rod 1, rod 2), with the micrometer');
    expect(text).toContain('magneto of core A: take core A apart; look it over');
    expect(text).toContain(
      'crankshaft Y: nothing is decided until it is straightened and measured',
    );
    expect(text).toContain('pistons X: find out the oversize');
    expect(text).toContain('drain its fuel and oil out of doors, away from any flame');
    // What else the next engine needs is for the other case.
    expect(text).toContain('If what you measure first turns out no good, one more engine needs');
  });

  it('tells of money and of margins, and of no core where there is none', () => {
    const text = said({
      measureFirst: [
        { mayBring: { kind: 'lower cost', cost: eur(150.5), less: eur(55) }, parts: [crankshaft] },
        { mayBring: { kind: 'wider margin', margin: inch(0.0012) }, parts: [pistons] },
        { mayBring: { kind: 'wider margin' }, parts: [bent] },
      ],
    });
    expect(text).toContain('no more engines can come of them');
    expect(text).toContain('As many engines for 55.00 EUR less, if these turn out good:');
    expect(text).toContain('The tightest clearance lies 0.0012 in inside its limits, if these');
    expect(text).toContain('The tightest clearance lies further inside its limits, if these');
    expect(text).not.toContain('out of doors');
    expect(text).not.toContain('turns out no good');
    expect(text).toContain('As many engines for 55.00 EUR less, measure first: crankshaft X.');
  });

  it('says if the search for it was not ended', () => {
    const proof = { outcome: 'time limit', stage: 'measure first', found: 2, bound: 2 } as const;
    expect(said({ proof })).toContain(
      'What to measure first is not known in full, because the time was up.',
    );
    expect(said({ proof: { ...proof, outcome: 'solver failure' } }, noEngine)).toContain(
      'What to measure first is not known in full, because the solver failed.',
    );
  });
});

describe('why a block is not built, in words', () => {
  it.each<[CannotBuild['because'], string]>([
    [{ kind: 'triage', disposition: 'scrap', faults: ['cracked'] }, 'it is scrap (cracked)'],
    [
      { kind: 'triage', disposition: 'undecided', until: 'it is measured' },
      'it is undecided until it is measured',
    ],
    [{ kind: 'triage', disposition: 'undecided' }, 'it is undecided.'],
    [{ kind: 'triage', disposition: 'not as it is' }, 'no repair that puts it right is on the'],
    [{ kind: 'triage', disposition: 'spare' }, 'nothing here goes with it'],
    [
      { kind: 'lacks', beside: ['block A'], lacks: [{ section: 'heads', count: 1 }] },
      'beside block A it lacks 1 head',
    ],
    [{ kind: 'enough engines', beside: [] }, 'no engine is asked for'],
    [
      { kind: 'enough engines', beside: ['block A'] },
      'no more engines are asked for than those of block A',
    ],
    [{ kind: 'too dear' }, 'its engine costs more than the limit for each engine'],
    [{ kind: 'no buying' }, 'it would have to be bought'],
    [{ kind: 'not known' }, 'what is in the way was not found'],
  ])('%j', (because, words) => {
    const cannotBuild = [{ name: 'block Z', because }];
    expect(said({ cannotBuild })).toContain(
      `You asked for block Z, but it cannot be built: ${words}`,
    );
  });

  it('is not claimed of a plan whose engines are not proven, but by triage', () => {
    const proof = { outcome: 'time limit', stage: 'most engines', found: 2, bound: 3 } as const;
    const tell = (because: CannotBuild['because']) =>
      said({ proof, cannotBuild: [{ name: 'block Z', because }] });
    expect(tell({ kind: 'too dear' })).toContain('Whether it can be built is not known.');
    expect(tell({ kind: 'triage', disposition: 'scrap' })).toContain('it is scrap');
  });
});

describe('parts to make, in words', () => {
  const shells: PartToMake = {
    section: 'shells',
    name: 'turned shells',
    material: 'bronze',
    engine: 'block A',
    fits: 'rods',
    place: 'rod 1',
    size: inches(0.06198),
    // 0.06160 to 0.06236: inwards that is 0.0616 to 0.0623.
    tolerance: inch(0.00038) as Length,
    cost: eur(40),
  };
  const { material: _, tolerance: __, place: ___, ...plain } = shells;

  it('never let a size be made past its limits', () => {
    const text = said({ toMake: [shells] });
    expect(text).toContain('turned shells (bronze), a pair of shells, for rod 1 of block A: wall');
    expect(text).toContain('; 0.0616 to 0.0623 in will do');
    expect(text).toContain('bronze is run with more of it than white metal');
  });

  it('say what a washer and a sleeve are made to, each with its caution', () => {
    const text = said({
      toMake: [
        { ...plain, section: 'thrustWashers', name: 'turned washer', size: inches(0.0962) },
        {
          ...plain,
          section: 'sleeves',
          name: 'cast sleeve',
          place: 'cylinder 1',
          size: inches(0.1, 0.15),
          finishedTo: inches(3, 3.0005),
        },
        { ...plain, section: 'sleeves', name: 'other sleeve', size: inches(0.1, 0.15) },
      ],
    });
    expect(text).toContain('turned washer, a thrust washer, for block A: thickness 0.0962 in');
    expect(text).toContain('finished bore 3.0000 to 3.0005 in, wall 0.1000 to 0.1500 in');
    expect(text).toContain('other sleeve, a sleeve, for block A: wall 0.1000 to 0.1500 in');
    expect(text).toContain('oil grooves face the crankshaft');
    expect(text).toContain('press fit of a sleeve');
    expect(text).not.toContain('bronze');
  });
});

describe('the chances, in words', () => {
  const none: EngineChances = {
    chances: [],
    how: 'draws',
    draws: 400,
    seed: 1,
    odds: [],
    notIn: [],
  };

  it.each([
    ['time limit', 'Not known: the time was up.'],
    ['solver failure', 'Not known: the solver failed.'],
  ] as const)('are not known after a %s', (ended, words) => {
    expect(chancesReport({ ...none, ended })).toContain(words);
  });

  it('tell how they were come by', () => {
    const odds = [{ section: 'heads', name: 'head A', odds: ratio(0.5), by: 'owner' }] as const;
    expect(flowing(chancesReport({ ...none, odds }))).toContain('Of 400 cases drawn at random');
    expect(chancesReport({ ...none, how: 'every case' })).toContain('No plan waits for a part');
  });
});
