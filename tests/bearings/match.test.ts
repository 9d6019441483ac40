import {
  inch,
  type Length,
  matchShells,
  mm,
  recommendedOilClearance,
  type Shell,
  type ShellSearch,
  shellWallFor,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const shelf: readonly Shell[] = [0, 10, 20, 30].map((step) => ({
  name: step === 0 ? 'standard' : `${step} under`,
  undersize: thou(step),
  wall: shellWallFor({ standardWall: inch(0.062), undersize: thou(step) }),
}));
const search: ShellSearch = { journal: inch(2.125), housingBore: inch(2.251), shells: shelf };

const anySearch = fc
  .record({
    journal: fc.integer({ min: 52_000, max: 54_000 }),
    tolerance: fc.nat({ max: 20 }),
    walls: fc.array(fc.integer({ min: 1650, max: 2200 }), { minLength: 1, maxLength: 8 }),
  })
  .map(
    ({ journal, tolerance, walls }): ShellSearch => ({
      journal: { min: mm((journal - tolerance) / 1000), max: mm(journal / 1000) },
      housingBore: mm(57.175),
      shells: walls.map((wall, i) => ({
        name: `shell ${i}`,
        undersize: 0 as Length,
        wall: mm(wall / 1000),
      })),
    }),
  );

describe('matchShells', () => {
  it.each([0, 10, 20, 30])('finds the shell for a journal ground %d under', (step) => {
    const ranked = matchShells({ ...search, journal: (inch(2.125) - thou(step)) as Length });
    expect(ranked[0]?.shell.undersize).toBe(thou(step));
    expect(ranked.map(({ fits }) => fits)).toEqual([true, false, false, false]);
    expect(ranked[0]?.clearance.max).toBeCloseTo(thou(2), 12);
    expect(ranked[0]?.finding.basis.kind).toBe('common practice');
  });

  it('goes by size, not by the number on the back', () => {
    const stamped = shelf.map((shell) => ({ ...shell, undersize: thou(10) }));
    expect(matchShells({ ...search, shells: stamped })[0]?.shell.name).toBe('standard');
  });

  it('judges the worse end of spans, against the caller’s limits', () => {
    const [best] = matchShells({
      ...search,
      journal: { min: inch(2.1245), max: inch(2.125) },
      shells: [{ name: 'a', undersize: thou(0), wall: { min: inch(0.0618), max: inch(0.062) } }],
      limits: { min: thou(1), max: thou(2.8) },
    });
    expect(best?.clearance.min).toBeCloseTo(thou(2), 12);
    expect(best?.clearance.max).toBeCloseTo(thou(2.9), 12);
    expect([best?.fits, best?.finding.verdict]).toEqual([false, 'above']);
    expect(best?.finding.basis).toEqual({ kind: 'specified' });
  });

  it('takes the rule of thumb for the largest journal of a span', () => {
    const journal = { min: inch(2.06), max: inch(2.125) };
    const [best] = matchShells({ ...search, journal });
    expect(best?.finding.limits).toEqual(recommendedOilClearance(inch(2.125)).limits);
  });

  it('ranks every shell, and none better than the first', () => {
    fc.assert(
      fc.property(anySearch, (any) => {
        const ranked = matchShells(any);
        expect(ranked.map(({ shell }) => shell.name).sort()).toEqual(
          any.shells.map(({ name }) => name).sort(),
        );
        const margins = ranked.map(({ finding }) => finding.margin as number);
        expect(margins).toEqual([...margins].sort((a, b) => b - a));
        expect(ranked.every((m) => m.fits === (m.finding.verdict === 'within'))).toBe(true);
        if (ranked.some(({ fits }) => fits)) expect(ranked[0]?.fits).toBe(true);
      }),
    );
  });

  it('keeps equals in the order of the shelf', () => {
    fc.assert(
      fc.property(anySearch, (any) => {
        const doubled = any.shells.flatMap((shell) => [
          shell,
          { ...shell, name: `${shell.name} again` },
        ]);
        const names = matchShells({ ...any, shells: doubled }).map(({ shell }) => shell.name);
        for (const { name } of any.shells) {
          expect(names.indexOf(name)).toBeLessThan(names.indexOf(`${name} again`));
        }
      }),
    );
  });

  it('finds the same best clearance in any order of the shelf', () => {
    fc.assert(
      fc.property(anySearch, (any) => {
        const [one] = matchShells(any);
        const [other] = matchShells({ ...any, shells: [...any.shells].reverse() });
        expect(other?.finding.margin).toBe(one?.finding.margin);
      }),
    );
  });

  it('leaves its arguments alone', () => {
    const shells = Object.freeze(shelf.map((shell) => Object.freeze({ ...shell })));
    expect(matchShells(Object.freeze({ ...search, shells }))).toHaveLength(4);
  });

  it.each([
    ['journal', 2.1 as Length, 'journal'],
    ['housingBore', undefined, 'housingBore'],
    ['shells', [], 'shells'],
    ['shells', undefined, 'shells'],
    ['shells', [null], 'shells[0]'],
    ['shells', [{ ...shelf[0], name: '' }], 'shells[0].name'],
    ['shells', [{ ...shelf[0], undersize: thou(-10) }], 'shells[0].undersize'],
    ['shells', [{ ...shelf[0], wall: 0.062 as Length }], 'shells[0].wall'],
    ['shells', [shelf[0], { ...shelf[0], wall: { min: mm(2), max: mm(1) } }], 'shells[1].wall'],
    ['limits', {}, 'search.limits'],
    ['basis', { kind: 'x' }, 'search.basis.kind'],
  ])('refuses a %s of %j', (field, value, parameter) => {
    const call = () => matchShells({ ...search, [field]: value } as ShellSearch);
    expect(refusal(call).parameter).toBe(parameter);
  });

  it('refuses no object', () => {
    expect(refusal(() => matchShells(null as never)).parameter).toBe('search');
  });
});
