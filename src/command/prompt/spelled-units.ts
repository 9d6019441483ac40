import { nameOfUnit, unitByName } from '../../mathjs/internal.js';
import { type Dimension, type Unit, type UnitSymbol, unitTable } from '../../quantities/index.js';
import { spellings } from '../../quantities/internal.js';

/** Spellings that mean something else to mathjs than behind a number here. */
export const BEHIND_NUMBERS: Readonly<Record<string, string>> = {
  in: 'inch',
  min: 'minute',
  sec: 'second',
  C: 'celsius',
  F: 'fahrenheit',
  'N-m': 'newtonMetre',
  // An old gauge or wrench says a kilogram and means the force of one.
  'kg/cm2': 'kgfPerSquareCm',
  'kg/cm^2': 'kgfPerSquareCm',
  'kg/cm²': 'kgfPerSquareCm',
  kgm: 'kgfMetre',
  'kg-m': 'kgfMetre',
  kg·m: 'kgfMetre',
  kgcm: 'kgf cm',
  'kg-cm': 'kgf cm',
  kg·cm: 'kgf cm',
};

/** What people write behind a number and mathjs cannot read, with the name it reads: `lbf·ft` is `lbfFoot`. */
function spelled(): ReadonlyMap<string, string> {
  const all = new Map(Object.entries(BEHIND_NUMBERS));
  for (const unit of Object.values(unitTable) as readonly Unit<Dimension>[]) {
    if (unit.dimension === 'ratio') continue;
    const own = [unit.symbol, ...(spellings[unit.symbol as UnitSymbol] ?? [])];
    for (const spelling of own) {
      if (!unitByName.has(spelling) && !all.has(spelling)) all.set(spelling, nameOfUnit(unit));
    }
  }
  // A ratio in these is no unit, and a dash is a minus.
  for (const none of ['', '-', 'R']) all.delete(none);
  return all;
}

const UNITS = spelled();
const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
const longestFirst = (a: string, b: string) => b.length - a.length;

/** A number, then a unit that mathjs cannot read. */
export const SPELLED = new RegExp(
  `(?<![\\w.])((?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(${[...UNITS.keys()]
    .sort(longestFirst)
    .map(escaped)
    .join('|')})(?![\\w²³·/^])`,
  'y',
);

/** A unit to convert to that mathjs cannot read. */
export const WANTED = new RegExp(
  `(?<![\\w.])to(\\s+)(${[...UNITS.keys()].sort(longestFirst).map(escaped).join('|')})(?![\\w²³·/^])`,
  'y',
);

/** A mixed number or a fraction with a unit behind it: `2-1/8 in`, `2 1/8 in`. */
export const MIXED = /(?<![\w.])(\d+)([ -])(\d+)\/(\d+)(?=\s*(?:[A-Za-z"″”µ]))/y;

/** The same with no unit behind it, in the fractions of a rule. */
export const BARE_MIXED = /(?<![\w.])(\d+)-(\d+)\/(2|4|8|16|32|64)(?![\w./])/y;

/** A mixed number with its unit in the middle, which mathjs multiplies: `2 in 1/8`. */
export const BROKEN_MIXED =
  /(?<![\w.])(\d+)\s*(in|inch|inches|["″”])\s*(\d+)\/(2|4|8|16|32|64)(?![\w./])/y;

/** A mixed number with a space in it and no unit behind it, which mathjs cannot read: `2 1/8`. */
export const SPACED_MIXED = /(?<![\w.])\d+ +\d+\/(2|4|8|16|32|64)(?![\w./])/y;

/** Whether a number is a fraction of a rule, or a mixed number with one: `1/16`, `2-1/8`. */
export const isRuleFraction = (written: string): boolean =>
  /^(?:\d+-)?\d+\/(2|4|8|16|32|64)$/.test(written);

/** The name that mathjs reads for a spelling. */
export const readableName = (spelling: string): string => UNITS.get(spelling) ?? spelling;
