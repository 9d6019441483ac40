import { raceBeside, timeCell } from './beside.js';
import { interferencePressure, limitsOfSize, MPa, mm, ratio } from './built.js';
import { race } from './race.js';
import type { Section } from './report.js';
import { spreadOf } from './spread.js';

type Parts = Parameters<typeof interferencePressure>[0];

// Every fit differs, so that nothing can be computed ahead of the loop.
const fits = Array.from(
  { length: 500 },
  (_, i): Parts => ({
    diameter: mm(40 + i * 1e-3),
    diametralInterference: mm(0.04 + i * 1e-6),
    shaft: { bore: mm(10), elasticity: MPa(207_000), poisson: ratio(0.29) },
    hub: { outside: mm(80 + i * 1e-2), elasticity: MPa(100_000 + i), poisson: ratio(0.21) },
  }),
);

function bareLame({ diameter: d, diametralInterference, shaft, hub }: Parts): number {
  const ofBore = ((shaft.bore ?? 0) / d) ** 2;
  const ofOutside = (d / hub.outside) ** 2;
  const ofShaft = ((1 + ofBore) / (1 - ofBore) - shaft.poisson) / shaft.elasticity;
  const ofHub = ((1 + ofOutside) / (1 - ofOutside) + hub.poisson) / hub.elasticity;
  return diametralInterference / (d * (ofHub + ofShaft));
}

/** What guards cost the pressure of an interference. */
export function racePressures(): Section {
  return raceBeside({
    title: `pressure of an interference, by Lamé: ${fits.length} fits`,
    ours: {
      name: 'crankwright  interferencePressure',
      pass() {
        let sum = 0;
        for (const parts of fits) sum += interferencePressure(parts);
        return sum;
      },
    },
    peers: [
      {
        name: 'the bare arithmetic',
        pass() {
          let sum = 0;
          for (const parts of fits) sum += bareLame(parts);
          return sum;
        },
      },
    ],
    calls: fits.length,
    // A look at every field of three objects takes most of it, beside a dozen operations.
    target: { name: 'interferencePressure', atMost: 15 },
  });
}

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
