import type { Wording } from '../judging/index.js';
import { type PageSection, section, wrap } from '../pages/index.js';
import { describeHowRead } from './describe-how-read.js';
import type { HowRead } from './how-read.js';

/** A section on how well sizes were read, if any were. */
export function howWell(howRead: HowRead, wording: Wording): readonly PageSection[] {
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
