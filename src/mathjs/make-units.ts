import { type Dimension, type Unit, unitTable } from '../quantities/index.js';
import { mathjsUnit } from '../quantities/internal.js';
import type { MathInstance } from './instance.js';
import { coherentName, isPlain, namesOf, unitByName } from './unit-names.js';

/** The coherent unit of a dimension as mathjs writes it; `''` where it must not mix with any other. */
const definitionOf = (dimension: Dimension): string =>
  dimension === 'gaugePressure' ? '' : mathjsUnit[dimension];

/**
 * Gives an instance every unit of ours that it lacks, and ours for those that it has rounded, such as its psi. The
 * instance must know metre, kilogram, second and the other units of the SI.
 */
export function makeUnits(math: MathInstance): void {
  // A unit in a dimension of its own changes the list of all units, so these come first.
  for (const dimension of Object.keys(mathjsUnit) as Dimension[]) {
    if (definitionOf(dimension) === '' && !isPlain(dimension)) make(math, dimension);
  }
  for (const unit of Object.values(unitTable) as readonly Unit<Dimension>[]) {
    if (!isPlain(unit.dimension)) add(math, unit);
  }
}

/** mathjs prints a product in the unit of its dimension that it met last. It shall not be one that was made here. */
export function leaveUsualUnits(math: MathInstance): void {
  for (const usual of ['m', 'm2', 'm3', 'kg', 's', 'K', 'N', 'Pa', 'J', 'W']) math.unit(1, usual);
}

function make(math: MathInstance, dimension: Dimension): void {
  const name = coherentName(dimension);
  if (!math.Unit.isValuelessUnit(name)) math.createUnit(name);
}

function add(math: MathInstance, unit: Unit<Dimension>): void {
  const { dimension, numerator, denominator, offset } = unit;
  const base = definitionOf(dimension) || coherentName(dimension);
  const definition = `${numerator / denominator} ${base}`;
  const own = namesOf(unit).filter((name) => unitByName.get(name) === unit);
  const missing = own.filter((name) => !math.Unit.isValuelessUnit(name));
  const [first, ...aliases] = missing;
  // No instance lacks the scales of temperature that have an offset.
  if (first !== undefined && offset === 0) math.createUnit(first, { definition, aliases });
  if (offset !== 0) return;
  for (const name of own) {
    if (!missing.includes(name) && isRounded(math, name, definition)) {
      math.createUnit(name, { definition }, { override: true });
    }
  }
}

/** Whether the instance has the unit, but not to the last digits. */
function isRounded(math: MathInstance, name: string, definition: string): boolean {
  const theirs = math.unit(1, name);
  const [factor = '', ...base] = definition.split(' ');
  if (!theirs.equalBase(math.unit(1, base.join(' ')))) return false;
  const ratio = Number(theirs.value) / Number(factor);
  return ratio !== 1 && Math.abs(ratio - 1) < 1e-6;
}
