import { coherentUnit, type Dimension } from './dimensions.js';
import { unitsOf } from './scales.js';
import { spellings, type spellingTable } from './spellings.js';
import type { Unit } from './unit.js';
import { type DimensionOf, type SymbolOf, type UnitSymbol, unitTable } from './unit-table.js';

type Spellings = typeof spellingTable;
type SpellingOf<S extends UnitSymbol> = S extends keyof Spellings
  ? Exclude<Spellings[S][number], ''>
  : never;

/** What a unit is called: its symbol, or a spelling of it, for example `'in'`, `'inch'` or `'um'`. */
export type UnitName = { [S in UnitSymbol]: S | SpellingOf<S> }[UnitSymbol];

/** Units that leave a spelling to another one where both have it: C is a temperature, ft-lbf a torque. */
type Second = 'Δ°C' | 'Δ°F' | 'ft·lbf energy';

/** Names that are a unit's own, not a spelling that stands for another one. */
type OwnName<S extends UnitSymbol> =
  | S
  | Exclude<
      SpellingOf<S>,
      UnitSymbol | (S extends Second ? SpellingOf<Exclude<UnitSymbol, Second>> : never)
    >;

/** The symbol of the unit that a name stands for. */
type SymbolNamed<N extends UnitName> = {
  [S in UnitSymbol]: N extends OwnName<S> ? S : never;
}[UnitSymbol];

/** The names of every unit of the same dimension. */
export type CompatibleName<N extends UnitName> = {
  [S in SymbolOf<DimensionOf<SymbolNamed<N>>>]: OwnName<S>;
}[SymbolOf<DimensionOf<SymbolNamed<N>>>];

const DIMENSIONS = /* @__PURE__ */ Object.keys(coherentUnit) as readonly Dimension[];

/** The unit that a name stands for: the one with that symbol, or the first that is so spelt. */
export function unitNamed(name: string): Unit<Dimension> | undefined {
  if (Object.hasOwn(unitTable, name)) return unitTable[name as UnitSymbol];
  if (name === '') return undefined;
  for (const dimension of DIMENSIONS) {
    const found = findUnit(name, dimension);
    if (found) return found;
  }
  return undefined;
}

const namesOf = (symbol: UnitSymbol): readonly string[] => [symbol, ...(spellings[symbol] ?? [])];

/** Every name of a unit, the symbols first. */
export function unitNames(): readonly string[] {
  const symbols = Object.keys(unitTable) as UnitSymbol[];
  return [...symbols, ...symbols.flatMap((symbol) => namesOf(symbol).slice(1))].filter(Boolean);
}

/**
 * A unit of a dimension by its name: as written first, then without regard to capitals if only one fits. Milli and
 * mega are never guessed at: mPa is not MPa.
 */
export function findUnit<D extends Dimension>(name: string, dimension: D): Unit<D> | undefined {
  const units = unitsOf(dimension).map((unit) => ({
    unit,
    names: namesOf(unit.symbol as UnitSymbol),
  }));
  const exact = units.find(({ names }) => names.includes(name));
  if (exact) return exact.unit as Unit<D>;
  const lower = name.toLowerCase();
  const loose = units.filter(({ names }) =>
    names.some((each) => each.toLowerCase() === lower && !differByPrefix(each, name)),
  );
  return loose.length === 1 ? (loose[0]?.unit as Unit<D>) : undefined;
}

/** An m against an M at the head of a symbol; at the head of a word it is only a capital. */
const differByPrefix = (name: string, spelling: string) =>
  /^m/i.test(name) && !/^[a-z]{4,}$/.test(name) && name[0] !== spelling[0];
