import {
  type BearingSizes,
  describeClearance,
  explainClearance,
  recommendedOilClearance,
} from '../../bearings/index.js';
import type { DoneCall } from '../../mathjs/internal.js';
import type { Length, UnitSystem } from '../../quantities/index.js';
import { sayResult } from './show-quantity.js';

/** What a machinist would add to a bare number: the rest of its line, and lines below it. */
export function remarkOn(call: DoneCall, units: UnitSystem): string | undefined {
  if (call.name !== 'oilClearance' || typeof call.result !== 'number') return undefined;
  const [{ journal }] = call.args as readonly [BearingSizes];
  const clearance = call.result as Length;
  const question = { clearance, journal };
  try {
    const why = explainClearance(question);
    const { limits, basis } = recommendedOilClearance(journal);
    const { min = clearance, max = clearance } = limits;
    const [word, limit] = clearance > max ? ['above', max] : ['below', min];
    const isOut = clearance > max || clearance < min;
    const rule = basis.kind === 'common practice' ? basis.rule : '';
    const beside = isOut
      ? `: ${word} ${sayResult(limit, 'length', units)}, by common practice (${rule})`
      : '';
    return `${beside}\n${describeClearance(why, { units })}`;
  } catch {
    // A clearance so far off that nothing explains it: the number stands alone.
    return undefined;
  }
}
