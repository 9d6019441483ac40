import { filmRegime, micrometre, ratio } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const roughness = { journal: micrometre(0.3), shell: micrometre(0.4) };

describe('the regime of a film', () => {
  it('goes by the film over the combined roughness', () => {
    const regimes = [0, 0.4, 0.5, 1.4, 1.5, 20].map(
      (film) => filmRegime(micrometre(film), roughness).regime,
    );
    expect(regimes).toEqual(['boundary', 'boundary', 'mixed', 'mixed', 'full', 'full']);
    expect(filmRegime(micrometre(2), roughness).roughness).toBeCloseTo(micrometre(0.5), 15);
  });

  it('goes by thresholds of the caller’s own', () => {
    const thresholds = { mixed: ratio(2), full: ratio(5) };
    const own = filmRegime(micrometre(2), roughness, { thresholds });
    expect(own.regime).toBe('mixed');
    expect(own.finding.basis).toEqual({ kind: 'specified' });
    const basis = { kind: 'specified', by: 'the shell maker' } as const;
    expect(filmRegime(micrometre(2), roughness, { thresholds, basis }).finding.basis).toBe(basis);
    expect(filmRegime(micrometre(2), roughness).finding.basis.kind).toBe('published');
  });

  it('is the same for both surfaces changed about, and all sizes scaled', () => {
    const size = fc.double({ min: 0.05, max: 5, noNaN: true });
    fc.assert(
      fc.property(size, size, size, fc.double({ min: 0.1, max: 3, noNaN: true }), (h, a, b, k) => {
        const of = (film: number, journal: number, shell: number) =>
          filmRegime(micrometre(film), { journal: micrometre(journal), shell: micrometre(shell) })
            .finding.value;
        expect(of(h, b, a)).toBe(of(h, a, b));
        expect(of(k * h, k * a, k * b)).toBeCloseTo(of(h, a, b), 9);
      }),
    );
  });

  it('refuses a basis without thresholds, and reversed ones', () => {
    const basis = { kind: 'specified' } as const;
    expect(() => filmRegime(micrometre(2), roughness, { basis })).toThrow('the thresholds that');
    const thresholds = { mixed: ratio(4), full: ratio(3) };
    expect(() => filmRegime(micrometre(2), roughness, { thresholds })).toThrow('Swap the two');
  });
});
