import { centistokes, viscosityIndex } from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const D2270 = 'ASTM D2270-10(2016)';
const index = (u: number, y: number): number =>
  viscosityIndex({ at40C: centistokes(u), at100C: centistokes(y) });

describe('viscosity index', () => {
  check({
    source: `${D2270}, 5.1.4 and 6.1.4, worked examples`,
    name: '73.30 and 8.86 mm²/s give 92; 22.83 and 5.05 give 156',
    given: [
      [73.3, 8.86],
      [22.83, 5.05],
    ] as const,
    expected: [92, 156],
    got: (pairs) => pairs.map(([u, y]) => Math.round(index(u, y))),
  });
  check({
    source: `${D2270}, 5.1.4 and 6.1.4, before rounding`,
    name: 'the same to within the fit: 92.43 and 156.37',
    given: [
      [73.3, 8.86],
      [22.83, 5.05],
    ] as const,
    expected: [92.43, 156.37],
    tolerance: { absolute: 0.21 },
    got: (pairs) => pairs.map(([u, y]) => index(u, y)),
  });

  // Viscosity at 100 °C, L and H. The rows where the fit is worst are among them.
  const rows: readonly (readonly [y: number, l: number, h: number])[] = [
    [2, 7.994, 6.394],
    [2.4, 10.71, 8.496],
    [3, 15.49, 12.15],
    [3.7, 22.09, 17.19],
    [4, 25.32, 19.56],
    [4.3, 29.07, 22.05],
    [4.6, 33.52, 24.71],
    [5, 40.23, 28.49],
    [5.1, 41.99, 29.46],
    [6.3, 63.32, 41.13],
    [6.5, 67.12, 43.18],
    [6.8, 73.48, 46.44],
    [7, 78, 48.57],
    [7.2, 82.39, 50.69],
    [8.8, 118.5, 68.79],
    [8.9, 120.9, 69.94],
    [9.1, 125.7, 72.27],
    [10, 147.7, 82.87],
    [11, 173.9, 95.19],
    [13.1, 235, 122.9],
    [15, 296.5, 149.7],
    [19.7, 479.7, 224.5],
    [20, 493.2, 229.5],
    [27.2, 857.5, 364.6],
    [30, 1023, 421.7],
    [37.5, 1538, 591.3],
    [42, 1892, 701.9],
    [51.5, 2767, 962.9],
    [62, 3908, 1286],
    [70, 4905, 1558],
  ];
  check({
    source: `${D2270}, table 1: L is the viscosity of the oil of index 0`,
    name: 'the index is 0 at L, to within 0.19',
    given: rows,
    expected: rows.map(() => 0),
    tolerance: { absolute: 0.19 },
    got: (all) => all.map(([y, l]) => index(l, y)),
  });
  check({
    source: `${D2270}, table 1: H is the viscosity of the oil of index 100`,
    name: 'the index is 100 at H, to within 0.19',
    given: rows,
    expected: rows.map(() => 100),
    tolerance: { absolute: 0.19 },
    got: (all) => all.map(([y, , h]) => index(h, y)),
  });
  check({
    source: `${D2270}, table 1 and procedure B turned round: U = H / Y^log10(1 + 0.00715 (VI - 100))`,
    name: 'the index is 200 where it should be, to within 0.21',
    given: rows,
    expected: rows.map(() => 200),
    tolerance: { absolute: 0.21 },
    got: (all) => all.map(([y, , h]) => index(h / y ** Math.log10(1.715), y)),
  });
  check({
    source: `${D2270}, L and H above 70 mm²/s, worked by hand: 9604 and 2772 at 100`,
    name: 'above 70 mm²/s the index follows the equations',
    given: [9604, 6188, 2772],
    expected: [0, 50, 100],
    tolerance: { absolute: 1e-9 },
    got: (all) => all.map((u) => index(u, 100)),
  });
  check({
    source: 'libvisc, a C++ program of ASTM D2270, table in its README, decimals cut off',
    name: 'poor oils are below 0, silicone and polyglycol far above 100',
    given: [
      [30, 4.24],
      [30, 5.23],
      [120, 8],
      [120, 20.9],
      [120, 50],
      [70, 11.1],
      [30, 5.81],
      [68, 8.6],
    ] as const,
    expected: [-25, 104, -49, 200, 423, 150, 139, 96],
    got: (all) => all.map(([u, y]) => Math.trunc(index(u, y))),
  });
});
