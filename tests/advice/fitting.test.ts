import {
  convertRoughness,
  micrometre,
  mm,
  selectFit,
  stackUp,
  thou,
  washersForEndPlay,
} from 'crankwright';
import { expect, it } from 'vitest';

it('swaps no pistons that fit as well where they are', () => {
  const { pairs } = selectFit({
    places: [
      { name: 'cylinder 1', room: mm(76.25), current: 'B' },
      { name: 'cylinder 2', room: mm(76.25), current: 'A' },
    ],
    parts: [
      { name: 'A', size: mm(76.2) },
      { name: 'B', size: mm(76.2) },
    ],
    limits: { min: mm(0.04), max: mm(0.06) },
  });
  expect(pairs.map(({ part, isMoved }) => [part, isMoved])).toEqual([
    ['B', false],
    ['A', false],
  ]);
});

it('leaves no thrust face bare, and calls its default limits a rule of thumb', () => {
  const { washers, finding } = washersForEndPlay({
    measured: thou(14),
    fitted: [
      { name: 'front', thickness: thou(90) },
      { name: 'rear', thickness: thou(90) },
    ],
    // One thick washer would make up the sum.
    shelf: [187, 93, 94].map((size) => ({ name: `${size}`, thickness: thou(size) })),
  });
  expect(washers.map(({ name }) => name)).toEqual(['93', '94']);
  expect(finding.basis.kind).toBe('common practice');
});

it('does not call a risk none because no draw showed it', () => {
  const sizes = [
    { name: 'bore', size: mm(76.25), tolerance: mm(0.01) },
    { name: 'piston', size: mm(76.2), tolerance: mm(0.01), sensitivity: -1 },
  ];
  const limits = { min: mm(0.0301) };
  const { outside } = stackUp(sizes, { kind: 'Monte Carlo', seed: 1, draws: 1_000, limits });
  expect(outside?.share).toBe(0);
  expect(outside?.standardError).toBeGreaterThan(0);
  const { finding } = stackUp(sizes, { kind: 'worst case', limits });
  expect(finding?.verdict).toBe('below');
});

it('lets no reading of Ra meet a limit of Rz that only its best case would', () => {
  const { span } = convertRoughness({ value: micrometre(0.5), from: 'Ra', to: 'Rz' });
  const limit = micrometre(4);
  expect(span.min).toBeLessThan(limit);
  expect(span.max).toBeGreaterThan(limit);
});
