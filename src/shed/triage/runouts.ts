import { judgeRunout } from '../../crankshaft/internal.js';
import { holds } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import { type Accuracy, certaintyOf, type EngineKind, own } from '../../reading/index.js';
import type { CrankshaftPart } from '../shed.js';

/** The largest runout that was read, mains first. */
export function worstRunout({ mainJournals = [], rodJournals = [] }: CrankshaftPart) {
  const read = [...mainJournals, ...rodJournals].flatMap(({ name: place, runout }) =>
    runout === undefined ? [] : [{ place, runout }],
  );
  return read.reduce<{ readonly place: string; readonly runout: Length } | undefined>(
    (worst, each) => (worst && worst.runout >= each.runout ? worst : each),
    undefined,
  );
}

/** The journals that tell of a bent crankshaft, or may, by the owner's limits of the runout or the rule of thumb; the worst first. */
export function runoutsOutside(
  { mainJournals = [], rodJournals = [] }: CrankshaftPart,
  engine: EngineKind,
  accuracy: Accuracy,
) {
  const judged = (['mainJournals', 'rodJournals'] as const).flatMap((field) =>
    (field === 'mainJournals' ? mainJournals : rodJournals).flatMap(({ name: place, runout }) =>
      runout === undefined
        ? []
        : [
            {
              place,
              finding: judgeRunout(`engine.${field}.runout`, runout, {
                ...own(engine[field]?.runout),
                ...certaintyOf('runout', accuracy),
              }),
            },
          ],
    ),
  );
  return judged
    .filter(({ finding }) => !holds(finding))
    .sort((a, b) => a.finding.margin - b.finding.margin);
}
