import type { IRawProperty, Parameters } from 'fast-check';
import { vi } from 'vitest';

/** So many that a property which fails for one seed in ten is all but sure to fail. */
const SEEDS = 50;

// Every property without a seed of its own is tried with the same seeds, one after the other.
vi.mock('fast-check', async (original) => {
  const real = await original<typeof import('fast-check')>();
  const fc = real.default;
  const assert = (property: IRawProperty<unknown>, options: Parameters<unknown> = {}) => {
    if (options.seed !== undefined) return fc.assert(property, options);
    const seeds = Array.from({ length: SEEDS }, (_, seed) => ({ ...options, seed }));
    if (!property.isAsync()) return seeds.forEach((seeded) => void fc.assert(property, seeded));
    return seeds.reduce(async (before, seeded) => {
      await before;
      await fc.assert(property, seeded);
    }, Promise.resolve());
  };
  return { ...real, assert, default: { ...fc, assert } };
});
