import {
  bearingPressure,
  celsius,
  inch,
  lbf,
  MPa,
  micrometre,
  mm,
  newton,
  psi,
  type ShellMetal,
  shellLimits,
  trumplerFilm,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

/** Mean pressure at which every shell is sure and the most that is printed [MPa], temperature [°C]. */
const HANDBOOK: readonly (readonly [ShellMetal, number, number | undefined, number])[] = [
  ['tin babbitt', 5.5, 10.3, 150],
  ['lead babbitt', 5.5, 8, 150],
  ['copper-lead', 10.3, 16.5, 175],
  // The table prints "at least 30" for these two.
  ['aluminium', 30, undefined, 125],
  ['tin bronze', 30, undefined, 260],
  ['lead bronze', 20, 30, 225],
];

describe('shellLimits', () => {
  for (const [metal, sure, most, hottest] of HANDBOOK) {
    check({
      source: "Mechanical Engineer's Data Handbook, section 2.9.3, p. 92",
      name: `load capacity and greatest temperature of ${metal}`,
      given: metal,
      expected: { sure, most, hottest },
      got: (name) => {
        const { meanPressure, temperature } = shellLimits(name);
        return {
          sure: valueIn(meanPressure.sure, MPa),
          most: meanPressure.most && valueIn(meanPressure.most, MPa),
          hottest: valueIn(temperature, celsius),
        };
      },
    });
  }
  check({
    source:
      'The Tribology Handbook, section A11, guidance on peak loading: tin white metal 12-14 (lining over 0.1 mm) and 14-17; copper-lead with overlay 21-23, 28-31 and 31 MN/m²',
    name: 'peak pressure of tin babbitt and copper-lead, from the thickest lining to the thinnest',
    given: ['tin babbitt', 'copper-lead'] as const,
    expected: [
      [12, 17],
      [21, 31],
    ],
    got: (metals) =>
      metals.map((metal) => {
        const { sure, most } = shellLimits(metal).peakPressure ?? {};
        return [sure, most].map((pressure) => (pressure ? valueIn(pressure, MPa) : 0));
      }),
  });
});

describe('bearingPressure', () => {
  check({
    source: 'Jindal, Machine Design, ex. 17-4: 3000 N on 60 by 60 mm',
    name: '0.8333 N/mm²',
    given: { load: newton(3000), journal: mm(60), length: mm(60) },
    expected: 3000 / 3600,
    got: (bearing) => valueIn(bearingPressure(bearing), MPa),
  });
  check({
    source: "Shigley's Mechanical Engineering Design, 9th ed., Example 12-1 (from memory)",
    name: '500 lbf on 1.5 by 1.5 in: 222 psi',
    given: { load: lbf(500), journal: inch(1.5), length: inch(1.5) },
    expected: 222,
    tolerance: { absolute: 0.5 },
    got: (bearing) => valueIn(bearingPressure(bearing), psi),
  });
});

describe('trumplerFilm', () => {
  // 0.0002 + 0.00004 × 2.5 in = 0.0003 in = 7.62 µm.
  check({
    basis: 'from memory',
    name: 'a journal of 2.5 in asks for 0.0003 in',
    given: inch(2.5),
    expected: 7.62,
    got: (journal) => valueIn(trumplerFilm(journal), micrometre),
  });
});
