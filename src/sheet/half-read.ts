import type { DiameterReading } from '../measuring/index.js';
import { type Given, isObject } from '../reading/index.js';
import { bearingSoFar, boreSoFar } from './schema.js';

/**
 * What is still to be read of a raw rod, main or cylinder that was read at one station or at one angle only, in words.
 * Undefined of one that has more, or nothing, or a mistake, which is told instead.
 */
export function notYetRead(list: 'rods' | 'mains' | 'cylinders', place: Given): string | undefined {
  const read =
    list === 'cylinders'
      ? boreSoFar.safeParse(withRead(place, 'bore')).data?.bore
      : bearingSoFar.safeParse(withRead(place, 'journal')).data?.journal;
  const readings = read?.readings ?? [];
  const isOne = (field: keyof DiameterReading) =>
    new Set(readings.map((each) => each[field])).size === 1;
  const lacks = [
    ...(isOne('station') ? ['a second station'] : []),
    ...(isOne('angle') ? ['a second angle'] : []),
  ];
  return lacks.length === 0 ? undefined : lacks.join(' and ');
}

/** The place without the fields and the rows of its table that hold nothing yet. */
function withRead(place: Given, field: 'bore' | 'journal'): Given {
  const filled = Object.fromEntries(Object.entries(place).filter(([, value]) => value !== null));
  const { [field]: part } = filled;
  if (!isObject(part) || !isObject(part['readings'])) return filled;
  return { ...filled, [field]: { ...part, readings: withoutEmptyRows(part['readings']) } };
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
