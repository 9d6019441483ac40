import type { Wording } from '../judging/index.js';
import { describeInward, describeSpan, noteOf, sayFinding } from '../judging/internal.js';
import type { FitSetting, NewParts } from './fit-setting.js';
import { sayLimits } from './say-limits.js';

/** What to mind where parts press in each other. */
export const PRESSING =
  'A negative clearance is an interference: those parts are pressed or shrunk together. Parts under a press can burst and fly: stand aside, cover your eyes, support the part close to its bore, and use no hardened drift. Hot parts burn.';

/** Describes how two parts are to fit, and how they do, in sentences without full stops. */
export function describeFit(
  { name, wanted, newParts, clearance, finding, mayBePressed }: FitSetting,
  wording: Wording,
): readonly string[] {
  const { units } = wording;
  const asked = wanted
    ? `clearance ${sayLimits(wanted, 'length', units)} is wanted ${noteOf(wanted.basis, wording)}`
    : 'what is wanted is not stated';
  const read = clearance && describeSpan(clearance, 'length', units);
  return [
    finding
      ? `${name}: ${sayFinding(finding, wording)}`
      : `${name}: ${read ? `clearance ${read}` : 'not measured'}; ${asked}`,
    ...(newParts ? [`  new parts: ${describeNewParts(newParts, wording)}`] : []),
    ...(mayBePressed ? [`  ${PRESSING}`] : []),
  ];
}

/** Describes what new parts of a class may measure. */
export function describeNewParts({ hole, shaft, basis }: NewParts, wording: Wording): string {
  const { units } = wording;
  return `hole ${describeInward(hole, units)}, shaft ${describeInward(shaft, units)} ${noteOf(basis, wording)}`;
}
