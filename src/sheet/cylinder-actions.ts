import { holds } from '../judging/internal.js';
import type { Action } from './action-types.js';
import { worstOfBore } from './bored.js';
import type { Inspection } from './inspect.js';
import type { CylinderReport, RingReport } from './inspect-cylinder.js';
import { leftOutOf, misreadBores, oddPistons, waitFor } from './waiting.js';

/** The ring findings that need action. A used ring outside a rule of thumb for new rings does not. */
const RING_WORK: ReadonlySet<RingReport['filing']['work']> = /* @__PURE__ */ new Set([
  'file',
  'use another ring',
  'bore is worn',
] as const);

/** Work on the cylinders: one bore plan for all of them, or one by one where no standard bore is known. None is decided on a misread one. */
export function boreActions(inspection: Inspection): readonly Action[] {
  const { cylinders, boring, boringByRule: byRule } = inspection;
  const misfits = cylinders.flatMap(misfit);
  const pistons = oddPistons(cylinders);
  const isWork =
    boring !== undefined && boring.outcome !== 'none' && boring.outcome !== 'use as it is';
  const misread = misreadBores(inspection);
  if (misread.length > 0) return isWork ? waitFor('cylinders', misread, true) : [];
  if (pistons.length > 0 && isWork) {
    return [...misfits, ...waitFor('cylinders', pistons, true)];
  }
  if (boring === undefined || boring.outcome === 'none' || boring.outcome === 'use as it is') {
    return [...misfits, ...cylinders.flatMap(cylinderWork)];
  }
  const works = new Map(boring.cylinders.map(({ name, work }) => [name, work]));
  const isBored = ({ name }: CylinderReport) => works.get(name) !== 'use as it is';
  const sound = cylinders.flatMap(({ name, soundAt }) =>
    soundAt === undefined ? [] : [{ name, oversize: soundAt }],
  );
  return [
    ...misfits,
    ...waitFor('cylinders', leftOutOf(inspection.notFilledIn, 'cylinders'), false),
    { kind: 'bore', plan: boring, sound, ...(byRule && { byRule }) },
    ...cylinders.filter((report) => !isBored(report)).flatMap(cylinderWork),
  ];
}

/** Bores that read round and straight, where no boring and no wear takes them. */
export const oddBoreActions = ({ cylinders }: Pick<Inspection, 'cylinders'>): readonly Action[] =>
  cylinders.flatMap(({ name: cylinder, oddSize: above, readAgain }) =>
    above === undefined || readAgain ? [] : [{ kind: 'odd bore' as const, cylinder, above }],
  );

/** A piston that reads as none of its bore does, bored or not: larger than it, or far smaller. */
function misfit({ name: cylinder, piston }: CylinderReport): readonly PistonMisfit[] {
  if (!piston?.readAgain) return [];
  const { clearance } = piston;
  return [{ kind: clearance.max < 0 ? 'piston interferes' : 'loose piston', cylinder, clearance }];
}

type PistonMisfit = Extract<Action, { readonly kind: 'piston interferes' | 'loose piston' }>;

function cylinderWork(report: CylinderReport): Action[] {
  const { name: cylinder, piston, rings, inDoubt } = report;
  const worst = worstOfBore(report);
  // Better readings come first where they alone may tell: they are asked for elsewhere.
  if (worst?.verdict === 'undecided') return [];
  if (worst) return [{ kind: 'rebore', cylinder, finding: worst, inDoubt }];
  const unfit = piston?.readAgain ? undefined : piston?.finding;
  return [
    ...(unfit && unfit.verdict !== 'undecided' && !holds(unfit)
      ? [{ kind: 'wrong piston' as const, cylinder, finding: unfit }]
      : []),
    ...rings
      .filter(({ filing }) => RING_WORK.has(filing.work))
      .map((ring) => ({ kind: 'ring' as const, cylinder, ring })),
  ];
}
