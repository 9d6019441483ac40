import { isObject } from '../reading/index.js';

/**
 * Whether readings of a journal or bore in a shed file, valid or not, lack a second station or a second angle: what is
 * still to read may then come from a CSV.
 */
export function isHalfRead(readings: unknown): readings is readonly unknown[] {
  if (!Array.isArray(readings)) return false;
  const all = readings.filter(isObject);
  const isOne = (field: string) => new Set(all.map((each) => String(each[field]).trim())).size < 2;
  return isOne('station') || isOne('angle');
}
