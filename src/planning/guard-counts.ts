import { guardWhole } from '../judging/internal.js';
import { RebuildInputError } from '../quantities/index.js';
import type { Price } from '../reading/index.js';
import type { Counted, Part, Shed } from '../shed/index.js';
import { SECTIONS } from '../shed/internal.js';

/**
 * Refuses a shed with counts or prices that `readShed` would not return. They go straight into the
 * solver and into the length of lists.
 */
export function guardCounts(shed: Shed): void {
  const { cylinders, mains } = shed.engine;
  guardWhole('shed.engine.cylinders', cylinders, [1, 24], HINT);
  guardWhole('shed.engine.mains', mains, [0, 25], HINT);
  for (const section of SECTIONS) {
    guardParts(`shed.${section}`, shed[section] ?? []);
    guardParts(`shed.toBuy.${section}`, shed.toBuy?.[section] ?? []);
  }
  for (const section of ['shells', 'thrustWashers', 'sleeves'] as const) {
    shed.toMake?.[section]?.forEach(({ price }, i) => {
      guardAmount(`shed.toMake.${section}[${i}].price.amount`, price.amount);
    });
  }
  shed.engine.alsoNeeds?.forEach(({ count }, i) => {
    guardWhole(`shed.engine.alsoNeeds[${i}].count`, count, [1, 1000], HINT);
  });
  shed.machining?.forEach(({ price }, i) => {
    guardAmount(`shed.machining[${i}].price.amount`, price.amount);
  });
}

const HINT = 'Pass on what readShed gives.';

function guardParts(at: string, parts: readonly (Part & Numbered)[]): void {
  parts.forEach(({ pairs, count, price }, i) => {
    if (pairs !== undefined) guardWhole(`${at}[${i}].pairs`, pairs, [0, 10_000], HINT);
    if (count !== undefined) guardWhole(`${at}[${i}].count`, count, [0, 10_000], HINT);
    if (price !== undefined) guardAmount(`${at}[${i}].price.amount`, price.amount);
  });
}

interface Numbered extends Counted {
  readonly pairs?: number;
  readonly price?: Price;
}

function guardAmount(parameter: string, value: number): void {
  if (value >= 0 && value <= 1e9) return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'an amount of money, 0 or more',
    hint: HINT,
  });
}
