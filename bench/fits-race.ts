import { timeCell } from './beside.js';
import { limitsOfSize } from './built.js';
import { race } from './race.js';
import type { Section } from './report.js';
import { spreadOf } from './spread.js';

const CLASSES = ['H7', 'g6', 'P7', 'js8', 'K6', 'h6', 'u6', 'F8'];
const designations = Array.from(
  { length: 1000 },
  (_, i) => `${(i % 497) + 2}.${i % 10}${CLASSES[i % CLASSES.length]}`,
);

/** How many limits of size are looked up in a second. */
export function timeLookUps(): Section {
  const ours = {
    name: 'crankwright  limitsOfSize',
    pass() {
      let sum = 0;
      for (const designation of designations) sum += limitsOfSize(designation).limits.max;
      return sum;
    },
  };
  const { median } = spreadOf(race([ours]).get(ours.name) ?? []);
  const one = median / designations.length;
  return {
    title: `limits of size by ISO 286: ${designations.length} designations`,
    rows: [
      ['', 'one look-up'],
      [ours.name, timeCell(one)],
    ],
    // A million in a second.
    targets: [{ name: 'limitsOfSize', measured: one * 1000, atMost: 1, unit: 'µs' }],
  };
}
