import { coherentUnit, type Dimension } from './dimensions.js';

/** The coherent SI unit of each dimension as mathjs writes it: `kg/m^3`, `N m`, `s^-1`; `''` for ratios and fractions. */
export const mathjsUnit: Readonly<Record<Dimension, string>> = /* @__PURE__ */ inMathjs();

function inMathjs(): Readonly<Record<Dimension, string>> {
  const written = Object.entries(coherentUnit).map(([dimension, symbol]) => [
    dimension,
    symbol === '-' || symbol === 'vol/vol' || symbol === 'mass/mass' ? '' : plain(symbol),
  ]);
  return Object.fromEntries(written) as Readonly<Record<Dimension, string>>;
}

/** A difference is of its own unit to mathjs, and so is a pressure above the air's. */
function plain(symbol: string): string {
  return symbol
    .replace(/^Δ| gauge$/, '')
    .replace(/^1\/(.*)$/, '$1^-1')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replaceAll('·', ' ');
}
