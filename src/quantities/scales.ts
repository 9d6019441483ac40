import type { Dimension } from './dimensions.js';
import { greatestCommonDivisor } from './fractions.js';
import type { Unit } from './unit.js';
import { unitTable } from './unit-table.js';

const allUnits: readonly Unit<Dimension>[] = /* @__PURE__ */ Object.values(unitTable);

/** The units of one dimension, in the order of the table. */
export function unitsOf(dimension: Dimension): readonly Unit<Dimension>[] {
  return allUnits.filter((unit) => unit.dimension === dimension);
}

/** A unit's place on the scale of its dimension. */
export interface Scale {
  readonly dimension: Dimension;
  /** How many anchors one of the unit is. */
  readonly factor: number;
  /** Anchors at zero of the unit; other than zero for temperature scales only. */
  readonly shift: number;
}

/**
 * Every unit counted in an anchor of its dimension, so small that every factor
 * is a whole number: a conversion is then one product and one division. The
 * whole numbers of psi, ksi, inHg and hp are longer than a double holds, and those
 * of rpm and degrees have π in them; these stand to the nearest double.
 */
function buildScales(): Readonly<Record<string, Scale>> {
  const anchors: Partial<Record<Dimension, number>> = {};
  for (const { dimension, denominator } of allUnits) {
    const all = anchors[dimension] ?? 1;
    anchors[dimension] = (all / greatestCommonDivisor(all, denominator)) * denominator;
  }
  const scales: Record<string, Scale> = Object.create(null);
  for (const { symbol, dimension, numerator, denominator, offset } of allUnits) {
    const scale = (anchors[dimension] as number) / denominator;
    scales[symbol] = { dimension, factor: numerator * scale, shift: offset * scale };
  }
  return scales;
}

/** Every unit's scale, under the unit's symbol. */
export const scales = /* @__PURE__ */ buildScales();
