import type { Span } from '../judging/index.js';
import type { DiameterReading } from '../measuring/index.js';
import { readSoFar, sayStillToRead } from '../measuring/internal.js';
import type { Length, UnitSystem } from '../quantities/index.js';
import { type Given, isObject } from '../reading/index.js';
import { bearingSoFar, boreSoFar } from './schema.js';

/**
 * What is still to be read of a raw rod, main or cylinder whose journal or bore was not read, or at too few places to
 * tell its shape, in words. Undefined of one that has more, or a mistake, which is told instead.
 */
export function notYetRead(
  list: 'rods' | 'mains' | 'cylinders',
  place: Given,
  units: UnitSystem,
): string | undefined {
  const read =
    list === 'cylinders'
      ? readIn(boreSoFar.safeParse(withRead(place, 'bore')), ({ bore }) => bore)
      : readIn(bearingSoFar.safeParse(withRead(place, 'journal')), ({ journal }) => journal);
  if (read === undefined) return undefined;
  const { readings = [], ringTravel } = read;
  if (readings.length === 0) return list === 'cylinders' ? 'its bore' : 'its journal';
  const isOne = (field: keyof DiameterReading) =>
    new Set(readings.map((each) => each[field])).size === 1;
  const lacks = [
    ...(isOne('station') ? ['a second station'] : []),
    ...(isOne('angle') ? ['a second angle'] : []),
  ];
  if (lacks.length > 0) return lacks.join(' and ');
  const still = readSoFar(readings, ringTravel).lacks;
  return typeof still === 'object' ? sayStillToRead(still, units) : undefined;
}

interface Read {
  readonly readings?: readonly DiameterReading[];
  readonly ringTravel?: Span<Length>;
}

/** What was read of a place without a mistake, be it nothing. */
const readIn = <T>(
  parsed: { readonly success: true; readonly data: T } | { readonly success: false },
  partOf: (place: T) => Read | undefined,
): Read | undefined => (parsed.success ? (partOf(parsed.data) ?? {}) : undefined);

/** The place without what holds nothing yet: the rows of its table, and its journal or bore if that is all of it. */
function withRead(place: Given, field: 'bore' | 'journal'): Given {
  const { [field]: part, ...rest } = place;
  if (!isObject(part) || !isObject(part['readings'])) return place;
  const readings = withoutEmptyRows(part['readings']);
  const { diameters } = readings;
  if (!Array.isArray(diameters) || diameters.length > 0) {
    return { ...rest, [field]: { ...part, readings } };
  }
  const { readings: _, ...others } = part;
  return Object.keys(others).length === 0 ? rest : { ...rest, [field]: others };
}

function withoutEmptyRows(table: Given): Given {
  const { stations, diameters } = table;
  if (!Array.isArray(stations) || !Array.isArray(diameters)) return table;
  if (stations.length !== diameters.length) return table;
  const rows: readonly unknown[] = diameters;
  const isFilled = (_: unknown, i: number) => {
    const row = rows[i];
    return !Array.isArray(row) || row.some((cell) => cell !== null && cell !== '');
  };
  return { ...table, stations: stations.filter(isFilled), diameters: rows.filter(isFilled) };
}
