import { type Exact, isMathUnit } from '../../mathjs/internal.js';
import { coherentUnit } from '../../quantities/index.js';
import type { Done, Session } from './session.js';

/** A statement's value in SI: a number with its unit, or the result as the library gives it. */
export function toJson({ name, value }: Done, session: Session): object {
  const { exact } = session.loaded;
  const call = typeof value === 'object' && value !== null ? session.callOf(value) : undefined;
  const plain =
    call && !isMathUnit(value)
      ? { value: call.result }
      : (quantity(value, exact) ?? { value: inSI(value, exact) });
  return { ...(name !== undefined && { name }), ...plain };
}

function quantity(value: unknown, exact: Exact): object | undefined {
  if (!isMathUnit(value)) return undefined;
  const dimension = exact.dimensionOf(value);
  if (value.value === null || dimension === undefined) return { value: value.toString() };
  return {
    value: exact.valueOf(value, dimension),
    unit: coherentUnit[dimension],
    dimension,
  };
}

function inSI(value: unknown, exact: Exact): unknown {
  if (typeof value === 'function') return 'a function';
  if (isMathUnit(value)) return quantity(value, exact);
  if (Array.isArray(value)) return value.map((item) => inSI(item, exact));
  if (typeof value !== 'object' || value === null) return value;
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  return Object.fromEntries(entries.map(([key, item]) => [key, inSI(item, exact)]));
}
