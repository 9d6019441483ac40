import {
  centipoise,
  explainClearance,
  filmThickness,
  inch,
  type Length,
  lbf,
  matchShells,
  mm,
  oilClearance,
  oilClearanceSpan,
  rpm,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RebuildInputError } from '../../src/quantities/error.js';
import { refusal } from '../quantities/refusal.js';

const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
const shells = [{ name: 'standard', undersize: thou(0), wall: sizes.shellWall }];
/** Every function that puts journal, housing and shell together. */
const together = (journal: Length, { housingBore, shellWall: wall } = sizes) => [
  () => oilClearance({ housingBore, shellWall: wall, journal }),
  () => oilClearanceSpan({ housingBore, shellWall: wall, journal }),
  () => matchShells({ housingBore, shells: shells.map((shell) => ({ ...shell, wall })), journal }),
];
/** Every function that takes a journal and its clearance. */
const withClearance = (journal: Length, clearance: Length) => [
  () => explainClearance({ journal, clearance }),
  () =>
    filmThickness({
      ...{ journal, clearance, length: journal, load: lbf(100) },
      ...{ viscosity: centipoise(15), speed: rpm(1800) },
    }),
];

describe('what was never one bearing', () => {
  it.each([
    ['a slipped digit', inch(1.225)],
    ['a digit that slipped by a tenth', inch(2.225)],
    ['the other digit beside it', inch(2.025)],
    ['a journal larger than its housing', inch(2.26)],
    ['millimetres for inches of a smaller one', mm(49.5)],
    ['a main journal in a rod', inch(2.4995)],
  ])('is refused for its journal: %s', (_, journal) => {
    for (const call of together(journal)) {
      const error = refusal(call);
      expect([error.parameter, error.value]).toEqual(['journal', journal]);
      expect(error.hint).toMatch(/digit.*units.*bearings/);
    }
  });

  it('is told in millimetres, with what the housing and the shells leave room for', () => {
    // 2.251 - 2 * 0.062 in is 54.0258 mm, give or take 2 mm.
    expect(refusal(() => oilClearance({ ...sizes, journal: inch(1.225) })).message).toContain(
      '31.115 mm is outside 52.0258 mm … 56.0258 mm',
    );
  });

  it.each([
    // 0.062 in is 1.5748 mm, 2.251 in 57.1754 mm and 2.125 in 53.975 mm.
    ['shell wall', { shellWall: inch(0.62) }, '1.5748 mm, not 15.748 mm,'],
    ['housing bore', { housingBore: inch(22.51) }, '57.1754 mm, not 571.754 mm,'],
    ['journal', { journal: inch(21.25) }, '53.975 mm, not 539.75 mm,'],
    ['journal', { journal: inch(0.2125) }, '53.975 mm, not 5.3975 mm,'],
  ])('says that a decimal point slipped in the %s where that explains it', (name, slip, moved) => {
    const { parameter, hint } = refusal(() => oilClearance({ ...sizes, ...slip }));
    expect(parameter).toBe('journal');
    expect(hint).toContain(`the decimal point of the ${name} first: ${moved}`);
    // A slipped digit is no slipped point.
    expect(refusal(() => oilClearance({ ...sizes, journal: inch(1.225) })).hint).not.toContain(
      'decimal point',
    );
  });

  it('says that both halves were given as one wall where that explains it', () => {
    // 2 * 0.062 in is 0.124 in, or 3.1496 mm; one half is 1.5748 mm.
    const both = { ...sizes, journal: inch(2.105), shellWall: inch(0.124) };
    const { parameter, message, hint } = refusal(() => oilClearance(both));
    expect(parameter).toBe('journal');
    expect(message).toContain('is not one that goes with the housing bore and the shell wall');
    expect(hint).toContain('of both halves: 1.5748 mm, not 3.1496 mm,');
    // In half of 0.062 in a journal of 2.225 in does not enter: 2.251 - 0.062 is 2.189 in.
    const slipped = refusal(() => oilClearance({ ...sizes, journal: inch(2.225) }));
    expect(slipped.hint).not.toContain('both halves');
  });

  it('is a journal that does not enter its housing, however thin the shells', () => {
    const foil = { housingBore: mm(50), shellWall: mm(0.3) };
    expect(oilClearance({ ...foil, journal: mm(49.9) })).toBeCloseTo(mm(-0.5), 12);
    for (const call of together(mm(50.1), { ...sizes, ...foil })) {
      expect(refusal(call).parameter).toBe('journal');
    }
  });

  it('is found at either end of a span, and in any shell of a shelf', () => {
    const journal = { min: inch(2.025), max: inch(2.125) };
    expect(refusal(() => oilClearanceSpan({ ...sizes, journal })).parameter).toBe('journal');
    const shellWall = { min: inch(0.062), max: inch(0.162) };
    expect(refusal(() => oilClearanceSpan({ ...sizes, shellWall })).parameter).toBe('journal');
    const other = { name: 'of a main', undersize: thou(0), wall: inch(0.125) };
    const { housingBore, journal: sound } = sizes;
    const search = { housingBore, journal: sound, shells: [...shells, other] };
    expect(refusal(() => matchShells(search)).parameter).toBe('journal');
  });

  it('has a clearance that no film and no explanation is given for', () => {
    for (const call of withClearance(inch(2.125), thou(80))) {
      expect(refusal(call).parameter).toBe('clearance');
    }
  });
});

describe('what may be a mistake on the bench is a result', () => {
  it.each([
    // common practice: undersizes of 0.060 in and the clearance of the fit, on a small journal too
    ['an inch journal ground 60 thou under in standard shells', inch(1), thou(62)],
    ['an inch journal in shells for one ground 60 thou under', inch(1), thou(-58)],
    ['the same, knocked out to 10 thou', inch(2.125), thou(70)],
    ['a large journal ground 3 mm under', mm(200), mm(3.2)],
    ['a model engine’s, a tenth of its journal loose', mm(6), mm(0.599)],
  ])('%s', (_, journal, clearance) => {
    const shellWall = mm(1);
    const housingBore = (journal + 2 * shellWall + clearance) as Length;
    expect(oilClearance({ housingBore, shellWall, journal })).toBeCloseTo(clearance, 12);
    const why = explainClearance({ journal, clearance, steps: [thou(60)] });
    expect(why.finding.value).toBe(clearance);
    if (Math.abs(clearance) > thou(50)) expect(why.outcome).not.toBe('as it should be');
  });
});

describe('the rule', () => {
  const size = (least: number, most: number) =>
    fc
      .double({ min: Math.log(least), max: Math.log(most), noNaN: true })
      .map((x) => mm(Math.exp(x)));

  it('lets nothing pass but a finite clearance that is explained, and refuses the rest for its journal', () => {
    const share = fc.double({ min: -0.15, max: 0.15, noNaN: true });
    let [passed, refused] = [0, 0];
    fc.assert(
      fc.property(size(4, 900), size(0.2, 20), share, (journal, wall, by) => {
        const housingBore = Math.min(1, journal * (1 + by) + 2 * wall) as Length;
        let clearance: Length;
        try {
          clearance = oilClearance({ housingBore, shellWall: wall, journal });
        } catch (error) {
          expect(error).toBeInstanceOf(RebuildInputError);
          expect((error as RebuildInputError).parameter).toBe('journal');
          refused++;
          return;
        }
        passed++;
        expect(Number.isFinite(clearance)).toBe(true);
        expect(clearance).toBe(housingBore - 2 * wall - journal);
        expect(explainClearance({ journal, clearance }).finding.value).toBe(clearance);
        expect(journal).toBeLessThan(housingBore);
      }),
      { numRuns: 500 },
    );
    // Neither side of the rule is empty.
    expect(passed).toBeGreaterThan(50);
    expect(refused).toBeGreaterThan(10);
  });

  it('scales with journals past 100 mm and below 20 mm, and is 2 mm between', () => {
    const most = (journal: Length) => {
      let [low, high] = [0, 1];
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2;
        try {
          explainClearance({ journal, clearance: middle as Length });
          low = middle;
        } catch {
          high = middle;
        }
      }
      return low;
    };
    for (const [journal, expected] of [
      [5, 0.5],
      [20, 2],
      [54, 2],
      [100, 2],
      [400, 8],
    ] as const) {
      expect(most(mm(journal))).toBeCloseTo(mm(expected), 9);
    }
  });
});
