import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/quantities/nearest.js';
import { didYouMean, either, shortFor, unknownField } from '../../src/reading/nearest.js';

describe('a name that is cut short', () => {
  const names = ['crankshaft A', 'crankshaft B', 'crankcase B', 'block A'];

  it('is short for the one name whose words begin so', () => {
    expect(shortFor('cranks B', names)).toBe('did you mean "crankshaft B"?');
    expect(shortFor('CRANKS-b', names)).toBe('did you mean "crankshaft B"?');
  });

  it('is short for none that has more words, or where it may be two', () => {
    expect(shortFor('crank B', names)).toBeUndefined();
    expect(shortFor('block', names)).toBeUndefined();
    expect(shortFor('  ', names)).toBeUndefined();
    expect(shortFor('crank C', names)).toBeUndefined();
  });
});

describe('nearest', () => {
  const known = ['oversize', 'undersize', 'pairs', 'fits'];

  it.each([
    ['oversise', 'oversize'],
    ['Oversize', 'oversize'],
    ['undrsize', 'undersize'],
    ['pair', 'pairs'],
    ['fit', 'fits'],
  ])('of %s is %s', (word, near) => {
    expect(nearest(word, known)).toBe(near);
    expect(didYouMean(word, known)).toBe(`did you mean "${near}"?`);
  });

  it.each(['colour', '', '__proto__', 'x'.repeat(100), 'oversize'.repeat(10)])(
    'of %s is none',
    (word) => {
      expect(nearest(word, known)).toBeUndefined();
    },
  );

  it('is none where nothing is known, or the word is none', () => {
    expect(nearest('fits', [])).toBeUndefined();
    expect(didYouMean(7, known)).toBeUndefined();
  });

  it('finds a known word through one slip', () => {
    fc.assert(
      fc.property(fc.constantFrom(...known), fc.nat(), (word, seed) => {
        const at = seed % word.length;
        expect(nearest(word.slice(0, at) + word.slice(at + 1), known)).toBe(word);
      }),
    );
  });
});

it('a strange field is answered with what there is', () => {
  expect(unknownField('nam', ['name', 'shop'])).toBe(
    'is not a known field; did you mean "name"? known fields here: name, shop',
  );
  expect(unknownField('colour', ['name', 'shop'])).toBe(
    'is not a known field; known fields here: name, shop',
  );
});

it('words to choose from are joined as one says them', () => {
  expect(either(['bent'])).toBe('bent');
  expect(either(['bent', 'spun'])).toBe('bent or spun');
  expect(either(['bent', 'spun', 'cracked'])).toBe('bent, spun or cracked');
});
