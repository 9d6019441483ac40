import { namedFrom } from '../../judging/internal.js';
import type { LoadDiagram } from '../../motion/index.js';
import type { Force, Ratio } from '../../quantities/index.js';
import { guardLoads } from '../orbit/guard-big-end.js';
import type { AcceptanceCheck } from './acceptance-types.js';

interface Loads {
  readonly load: Force;
  readonly loads: LoadDiagram | undefined;
}

/** Loads times a factor, those of a cycle all alike. */
export function underMore({ load, loads }: Loads, factor: number): Loads {
  const more = <F extends number>(force: F) => (factor * force) as F;
  return {
    load: more(load),
    loads:
      loads &&
      namedFrom(
        () => ({ loads: 'loadDoubt' }),
        () =>
          guardLoads({
            ...loads,
            loads: loads.loads.map((each) => ({
              ...each,
              along: more(each.along),
              across: more(each.across),
            })),
          }),
      ),
  };
}

/** Checks under loads as given, of which none holds that does not hold under as much more as they are in doubt. */
export function inDoubt(
  given: readonly AcceptanceCheck[],
  doubt: Ratio | undefined,
  under: (factor: number) => readonly AcceptanceCheck[],
): readonly AcceptanceCheck[] {
  if (doubt === undefined || doubt === 0) return given;
  const more = under(1 + doubt);
  return given.map((check, i) => {
    const other = more[i] ?? check;
    if (check.outcome !== 'holds' || other.outcome === 'holds') return check;
    const { finding } = other;
    return {
      outcome: 'unknown',
      check: check.check,
      give: 'loads that are known better, as from a measured pressure of the gas',
      finding: check.finding,
      tooNear: { doubt, ...(finding && { finding }) },
    };
  });
}
