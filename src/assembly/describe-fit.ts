import { describe, type Wording } from '../judging/index.js';
import { describeInward, describeSpan, noteOf } from '../judging/internal.js';
import type { FitSetting } from './fit-setting.js';
import { sayLimits } from './say-limits.js';

/** What to mind where parts press in each other. */
export const PRESSING =
  'A negative clearance is an interference: those parts are pressed or shrunk together. Parts under a press can burst and fly: stand aside, cover your eyes, support the part close to its bore, and use no hardened drift. Hot parts burn.';

/** Describes how two parts are to fit, and how they do, in sentences without full stops. */
export function describeFit(
  { name, wanted, hole, shaft, clearance, finding, isPressed }: FitSetting,
  wording: Wording,
): readonly string[] {
  const { units } = wording;
  const asked = wanted
    ? `clearance ${sayLimits(wanted, 'length', units)} is wanted ${noteOf(wanted.basis, wording)}`
    : 'what is wanted is not stated';
  const read = clearance && describeSpan(clearance, 'length', units);
  return [
    finding
      ? `${name}: ${describe(finding, wording)}`
      : `${name}: ${read ? `clearance ${read}` : 'not measured'}; ${asked}`,
    ...(hole && shaft
      ? [`  new parts: hole ${describeInward(hole, units)}, shaft ${describeInward(shaft, units)}`]
      : []),
    ...(isPressed ? [`  ${PRESSING}`] : []),
  ];
}
