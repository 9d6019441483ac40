/** Greek letters as the cards write them. */
export const GREEK: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['alpha', 'α'],
  ['beta', 'β'],
  ['delta', 'δ'],
  ['epsilon', 'ε'],
  ['eta', 'η'],
  ['theta', 'θ'],
  ['lambda', 'λ'],
  ['mu', 'μ'],
  ['nu', 'ν'],
  ['pi', 'π'],
  ['rho', 'ρ'],
  ['sigma', 'σ'],
  ['tau', 'τ'],
  ['phi', 'φ'],
  ['omega', 'ω'],
]);

const NAMES = /* @__PURE__ */ new RegExp(
  `(?<![\\p{L}\\d])(?:${/* @__PURE__ */ [...GREEK.keys()].join('|')})(?![\\p{L}\\d])`,
  'gu',
);

/** A formula with Greek letters in place of their names. */
export const inGreek = (formula: string): string =>
  formula.replaceAll(NAMES, (name) => GREEK.get(name) as string);
