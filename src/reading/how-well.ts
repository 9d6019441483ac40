import type { Wording } from '../judging/index.js';
import { section, wrap } from '../pages/index.js';
import { describeHowRead, type HowRead } from '../reading/index.js';

/** A section on how well sizes were read, if any were. */
export function howWell(howRead: HowRead, wording: Wording): readonly string[] {
  const lines = describeHowRead(howRead, wording);
  return lines.length === 0
    ? []
    : [
        section(
          'HOW WELL IT WAS MEASURED',
          lines.flatMap((line) => wrap(line, 2)),
        ),
      ];
}
