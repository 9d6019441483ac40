import { expect, it } from 'vitest';
import { largestOf, smallestOf } from '../../src/quantities/extremes.js';

it('finds the least and the most of a list, wherever they stand', () => {
  expect([smallestOf([2, -3, 1]), largestOf([2, -3, 1])]).toEqual([-3, 2]);
  expect([smallestOf([-3]), largestOf([-3])]).toEqual([-3, -3]);
});

it('leaves the bound open where there is none', () => {
  expect([smallestOf([]), largestOf([])]).toEqual([Infinity, -Infinity]);
});
