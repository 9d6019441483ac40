import { inch, judge } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { describeRing } from '../../src/sheet/describe-ring.js';

const finding = judge({
  feature: 'ring gap',
  dimension: 'length',
  value: inch(0.012),
  limits: { min: inch(0.01) },
  basis: { kind: 'specified' },
});

describe('what is said of a ring', () => {
  it.each([
    ['fit as it is', 'top ring: fit as it is; '],
    ['measure again', 'top ring: measure it again before you file or fit it; '],
    ['wider than a new fit', "so go by the maker's wear limit; "],
    ['use another ring', 'top ring: use another ring, '],
    ['bore is worn', "bore or sleeve the cylinder, or go by the maker's wear limit"],
  ])('that is to be: %s', (work, said) => {
    const ring = { name: 'top ring', filing: { work, finding } };
    expect(describeRing(ring as never, { units: 'inch' } as never)).toContain(said);
  });
});
