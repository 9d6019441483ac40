import type { UnitSystem } from 'crankwright';
import {
  type CardName,
  cards,
  check,
  evaluateCard,
  exercise,
  printWorksheet,
  worksheet,
} from 'crankwright/teaching';
import { describe, expect, it } from 'vitest';

it('asks for the least lash that does, which a hotter valve makes more', () => {
  const { example, gives } = cards.coldLash;
  const hotter = { ...example, T_v: (example['T_v'] ?? Number.NaN) + 50 };
  expect(evaluateCard('coldLash', hotter)).toBeGreaterThan(evaluateCard('coldLash', example));
  // Less than this burns the valve, so it is no upper bound.
  expect(gives.meaning).toMatch(/^least lash to set cold/);
  expect(gives.meaning).not.toContain('at most');
});

describe('below its formula a sheet', () => {
  const printed = (name: CardName, units: UnitSystem, format: 'text' | 'markdown') => {
    const sheet = worksheet({ about: cards[name].topic, seed: 1, units, count: 1 });
    const problems = [exercise(name, 1, { units })];
    return printWorksheet({ ...sheet, problems }, { format });
  };

  // source: 0 °C is 273.15 K and 32 °F; 1 MPa is 145.0377 psi: 3.8 MPa is 551.14 psi; 1 in is 25.4 mm.
  it.each<[CardName, UnitSystem, string | RegExp]>([
    ['rimArc', 'inch', 'The formula counts angles in radians.'],
    ['angleByArc', 'metric', 'The formula counts angles in radians.'],
    ['petroffTorque', 'inch', 'The formula counts speeds of turning in radians a second.'],
    [
      'pistonVelocity',
      'metric',
      'The formula counts angles in radians and speeds of turning in radians a second.',
    ],
    ['sizeAt20C', 'inch', '293.15 K = 68 °F'],
    ['sizeAt20C', 'metric', '293.15 K = 20 °C'],
    ['mostTensileStrength', 'inch', '3.8 MPa = 551.14 psi'],
    ['trumplerFilm', 'metric', '0.0002 in = 5.08 µm'],
  ])('of %s, %s, tells %s', (name, units, told) => {
    expect(printed(name, units, 'text')).toContain(`\n   ${told}\n   To find`);
    expect(printed(name, units, 'markdown')).toContain(`\n${told}\n\nTo find`);
  });

  it.each<[CardName, UnitSystem]>([
    ['valveOverlap', 'inch'],
    ['inletCentreline', 'inch'],
    ['mostTensileStrength', 'metric'],
    ['oilClearance', 'inch'],
  ])('of %s, %s, tells nothing of the kind', (name, units) => {
    expect(printed(name, units, 'text')).not.toMatch(/radian|\d (?:MPa|K) = /);
  });

  it('asks for a rise in words, and reads them', () => {
    const problem = exercise('temperatureRise', 1, { units: 'metric' });
    expect(printed('temperatureRise', 'metric', 'text')).toContain('________ °C of rise\n');
    expect(check(problem, `${problem.answer.value} °C of rise`)).toEqual({ outcome: 'right' });
    expect(check(problem, `${problem.answer.value} °C of rise.`)).toEqual({ outcome: 'right' });
  });
});
