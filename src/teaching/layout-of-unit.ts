import type { Typesetter } from './layout-of-formula.js';

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Names, each with its power, and what stands between them. */
const PARTS = /([^\s·/⁻⁰¹²³⁴-⁹]+)([⁻⁰¹²³⁴-⁹]*)|[·/]|\s+/gu;

/** Sets a unit as it is printed for people, such as `N/mm²` or `lbf·in`. */
export const typesetUnit = (unit: string, by: Typesetter): string =>
  by.row(
    [...unit.matchAll(PARTS)].map(([part, name, power]) => {
      if (name === undefined) return part.trim() === '' ? by.space : by.sign(part);
      return power ? by.power(by.unit(name), by.number(lowered(power))) : by.unit(name);
    }),
  );

const lowered = (power: string) =>
  [...power].map((sign) => (sign === '⁻' ? '−' : `${RAISED.indexOf(sign)}`)).join('');
