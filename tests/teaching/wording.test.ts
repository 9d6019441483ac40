import { cards, evaluateCard } from 'crankwright/teaching';
import { expect, it } from 'vitest';

it('asks for the least lash that does, which a hotter valve makes more', () => {
  const { example, gives } = cards.coldLash;
  const hotter = { ...example, T_v: (example['T_v'] ?? Number.NaN) + 50 };
  expect(evaluateCard('coldLash', hotter)).toBeGreaterThan(evaluateCard('coldLash', example));
  // Less than this burns the valve, so it is no upper bound.
  expect(gives.meaning).toMatch(/^least lash to set cold/);
  expect(gives.meaning).not.toContain('at most');
});
