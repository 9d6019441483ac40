import type { CardName } from 'crankwright/teaching';
import { distFile } from './built.js';
import { race } from './race.js';
import type { Section } from './report.js';
import { spreadOf } from './spread.js';

const { cards, exercise }: typeof import('crankwright/teaching') = await import(
  new URL('teaching.js', distFile).href
);

/** How long an exercise takes to draw: one of every card in each of a few seeds, in both unit systems. */
export function timeExercises(): Section {
  const names = Object.keys(cards) as CardName[];
  const asked = names.flatMap((name) =>
    [1, 2, 3].flatMap((seed) =>
      (['inch', 'metric'] as const).map((units) => [name, seed, { units }] as const),
    ),
  );
  const ours = {
    name: 'crankwright  exercise',
    pass() {
      let sum = 0;
      for (const one of asked) sum += exercise(...one).tolerance;
      return sum;
    },
  };
  const one = spreadOf(race([ours]).get(ours.name) ?? []).median / asked.length;
  return {
    title: `exercises: ${names.length} formulas, 3 seeds, both unit systems`,
    rows: [
      ['', 'one exercise', 'in a second'],
      [ours.name, `${(one * 1000).toFixed(1)} µs`, (1000 / one).toFixed(0)],
    ],
    // A thousand in a second.
    targets: [{ name: 'exercise', measured: one, atMost: 1, unit: 'ms' }],
  };
}
