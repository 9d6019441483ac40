import {
  describe as describeFinding,
  describeSettling,
  inch,
  instrumentBudget,
  judge,
  readingUncertainty,
} from 'crankwright';
import { describe, expect, it } from 'vitest';

const micrometer = instrumentBudget({
  kind: 'micrometer',
  division: inch(0.0001),
  zeroError: inch(0.0001),
  repeats: { standardDeviation: inch(0.00005), degreesOfFreedom: 9 },
});
const { size, difference } = readingUncertainty(micrometer);

describe('a micrometer that is divided to a tenth of a thou', () => {
  it('does not measure to a tenth, whatever its scale shows', () => {
    expect(size).toBeGreaterThan(inch(0.0001));
    expect(size).toBeLessThan(inch(0.0003));
  });

  it('tells a taper better than a size would, for its zero is in both readings', () => {
    // Two readings each as uncertain as a size would add to √2 of it.
    expect(difference).toBeLessThan(Math.SQRT2 * size);
  });

  it('neither passes nor condemns a journal a tenth from its limit', () => {
    for (const read of [2.1241, 2.1239]) {
      const finding = judge({
        feature: 'rod journal',
        dimension: 'length',
        value: inch(read),
        limits: { min: inch(2.124) },
        basis: { kind: 'specified', by: 'the manual' },
        uncertainty: size,
      });
      expect(finding.verdict).toBe('undecided');
      const text = describeFinding(finding, { units: 'inch' })[0];
      // √(0.0000289² + 0.0000577² + 0.00005²) = 0.0000817, with 64 degrees of freedom times 2.04.
      expect(text).toContain('± 0.00017 in: undecided');
      const settling = describeSettling(finding, { units: 'inch' }, micrometer)[0];
      expect(settling).toContain('an uncertainty of 0.0001 in or less');
      // Reading again does not move the zero: the micrometer wants a better standard, and more readings with it.
      expect(settling).toContain('reading again will not settle it');
      expect(settling).toContain('the zero error (± 0.0001 in) alone, however good, is not enough');
    }
  });

  it('does not let simple acceptance hide that a part is as likely bad as good', () => {
    const finding = judge({
      feature: 'rod journal',
      dimension: 'length',
      value: inch(2.124),
      limits: { min: inch(2.124) },
      basis: { kind: 'specified', by: 'the manual' },
      uncertainty: size,
      rule: 'simple acceptance',
    });
    expect(finding.verdict).toBe('within');
    expect(describeFinding(finding, { units: 'inch' })[0]).toContain(
      'by simple acceptance: its uncertainty reaches past the limit',
    );
  });
});
