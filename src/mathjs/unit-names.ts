import * as quantities from '../quantities/index.js';
import {
  coherentUnit,
  type Dimension,
  type Unit,
  type UnitSymbol,
  unitTable,
} from '../quantities/index.js';
import { spellings } from '../quantities/internal.js';

/** Names that mathjs keeps for coulomb and farad, and `sec`, its secant. */
const OTHERS: readonly string[] = ['C', 'F', 'sec'];

/** Ratios are plain numbers to mathjs, and `50%` is one. */
export const isPlain = (dimension: Dimension): boolean => dimension === 'ratio';

/** The name that each unit is exported under, by its symbol: what it is called in mathjs and in code. */
export const exportedAs: Readonly<Record<string, string>> = /* @__PURE__ */ exportNames();

function exportNames(): Readonly<Record<string, string>> {
  const units = Object.entries(quantities).filter(
    ([, value]) => typeof value === 'function' && 'numerator' in value,
  ) as unknown as readonly (readonly [string, Unit<Dimension>])[];
  return Object.fromEntries(units.map(([name, { symbol }]) => [symbol, name]));
}

/** The names of a unit that mathjs can read, the exported one first. */
export function namesOf(unit: Unit<Dimension>): readonly string[] {
  const symbol = unit.symbol as UnitSymbol;
  const all = [exportedAs[symbol] ?? '', symbol, ...(spellings[symbol] ?? [])];
  return [...new Set(all)].filter((name) => /^[A-Za-z]\w*$/.test(name) && !OTHERS.includes(name));
}

/** Our units by the names that mathjs can read. A name that two units have is the first one's: `K` is a temperature. */
export const unitByName: ReadonlyMap<string, Unit<Dimension>> = /* @__PURE__ */ unitsByName();

function unitsByName(): ReadonlyMap<string, Unit<Dimension>> {
  const all = new Map<string, Unit<Dimension>>();
  for (const unit of Object.values(unitTable) as readonly Unit<Dimension>[]) {
    if (isPlain(unit.dimension)) continue;
    for (const name of namesOf(unit)) if (!all.has(name)) all.set(name, unit);
  }
  return all;
}

/** The name that a unit goes by in an expression: `inch`, `lbfFoot`. */
export const nameOfUnit = (unit: Unit<Dimension>): string => exportedAs[unit.symbol] ?? unit.symbol;

/** The name of the unit that the numbers of a dimension are kept in. */
export const coherentName = (dimension: Dimension): string =>
  exportedAs[coherentUnit[dimension]] ?? '';
