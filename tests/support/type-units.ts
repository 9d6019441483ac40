import ts from 'typescript';
import { coherentUnit } from '../../src/quantities/dimensions.js';

/** The unit of a type that is generic over its dimension. */
export const GENERIC = 'coherent SI unit';

const PLAIN: ReadonlySet<string> = new Set(['ratio', 'volumeFraction', 'massFraction']);

/** Dimensions that are told apart by name but kept in the unit of another. */
const SHARED: Readonly<Record<string, string>> = {
  gaugePressure: 'pressure',
  temperatureDifference: 'temperature',
};

/** The unit that a documented quantity of a dimension ends in. */
export function unitOfDimension(dimension: string): string {
  if (PLAIN.has(dimension)) return '-';
  const unit: string | undefined = Object.entries(coherentUnit).find(
    ([name]) => name === (SHARED[dimension] ?? dimension),
  )?.[1];
  if (unit === undefined) throw new Error(`${dimension} is not a dimension.`);
  return unit;
}

/**
 * The units of a quantity, or of a span, limits, list or tuple of quantities;
 * undefined for every other type. Plain numbers count only where it is asked for.
 */
export function unitsOfType(
  type: ts.Type,
  checker: ts.TypeChecker,
  plainNumbers = false,
): ReadonlySet<string> | undefined {
  const again = (part: ts.Type) => unitsOfType(part, checker, plainNumbers);
  if (type.flags & ts.TypeFlags.Instantiable) {
    const constraint = checker.getBaseConstraintOfType(type);
    // `Q extends number` is a quantity of whatever dimension it is used for.
    if (constraint && constraint.flags & ts.TypeFlags.Number) return new Set([GENERIC]);
    return constraint && constraint !== type ? again(constraint) : undefined;
  }
  const brand = type
    .getProperties()
    .find((property) => property.escapedName.toString().startsWith('__@dimension'));
  if (brand && !type.isUnion()) return unitsOfBrand(checker.getTypeOfSymbol(brand));
  if (type.flags & ts.TypeFlags.Number) return plainNumbers ? new Set(['-']) : undefined;
  if (type.isUnion()) {
    return merged(type.types.filter((part) => !(part.flags & NOTHING)).map(again));
  }
  if (checker.isArrayType(type) || checker.isTupleType(type)) {
    return merged(checker.getTypeArguments(type as ts.TypeReference).map(again));
  }
  const properties = type.flags & ts.TypeFlags.Object ? type.getProperties() : [];
  if (!properties.every(({ name }) => name === 'min' || name === 'max')) return undefined;
  return merged(properties.map((property) => again(checker.getTypeOfSymbol(property))));
}

const NOTHING = ts.TypeFlags.Undefined | ts.TypeFlags.Null;

/** One unit, where every dimension that it may be has the same; else it is generic. */
function unitsOfBrand(type: ts.Type): ReadonlySet<string> {
  const dimensions = type.isUnion() ? type.types : [type];
  const units = new Set(
    dimensions.map((one) => (one.isStringLiteral() ? unitOfDimension(one.value) : GENERIC)),
  );
  return units.size === 1 ? units : new Set([GENERIC]);
}

/** All of them together, if there are any and all are quantities. */
function merged(
  parts: readonly (ReadonlySet<string> | undefined)[],
): ReadonlySet<string> | undefined {
  const all = parts.filter((part) => part !== undefined);
  if (all.length === 0 || all.length < parts.length) return undefined;
  return new Set(all.flatMap((part) => [...part]));
}

/** The units of every quantity anywhere inside a type of the library's own. */
export function unitsWithin(type: ts.Type, checker: ts.TypeChecker): ReadonlySet<string> {
  const found = new Set<string>();
  const seen = new Set<ts.Type>();
  const visit = (part: ts.Type): void => {
    if (seen.has(part)) return;
    seen.add(part);
    const units = unitsOfType(part, checker);
    if (units) {
      for (const unit of units) found.add(unit);
    } else if (part.isUnionOrIntersection()) {
      part.types.forEach(visit);
    } else if (checker.isArrayType(part) || checker.isTupleType(part)) {
      checker.getTypeArguments(part as ts.TypeReference).forEach(visit);
    } else if (part.flags & ts.TypeFlags.Object) {
      for (const property of part.getProperties()) visit(checker.getTypeOfSymbol(property));
    }
  };
  // A plain number may say that it has none.
  if (type.flags & ts.TypeFlags.Number) found.add('-');
  visit(type);
  return found;
}

/** What is wrong with the unit at the end of a text, if anything is. */
export function unitProblem(
  text: string,
  { units, within }: { units: ReadonlySet<string> | undefined; within: ReadonlySet<string> },
): string | undefined {
  const last = /\[([^[\]]+)\]\.?$/.exec(text)?.[1];
  if (!units) {
    // An object of several quantities may say their unit if it is the same for all.
    const fits = last === undefined || !KNOWN.has(last) || (within.size === 1 && within.has(last));
    return fits ? undefined : `ends in [${last}], but holds ${list(within) || 'no quantity'}`;
  }
  const generic = units.has(GENERIC) || units.size > 1;
  if (generic && (last === GENERIC || IN_WORDS.test(text))) return undefined;
  const wanted = generic ? GENERIC : list(units);
  if (!generic && last === wanted) return undefined;
  return `must end in [${wanted}]: "${text}"`;
}

const KNOWN: ReadonlySet<string> = new Set([...Object.values(coherentUnit), '-', GENERIC]);
/** How a text may say the unit of a quantity whose dimension is left open. */
const IN_WORDS = /\bin the (?:unit of the quantity|coherent SI unit|same unit)\b/;
const list = (units: ReadonlySet<string>): string => [...units].join(', ');
