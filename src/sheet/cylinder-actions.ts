import type { Finding } from '../judging/index.js';
import { holds, worstOf } from '../judging/internal.js';
import type { Action } from './action-types.js';
import type { Inspection } from './inspect.js';
import type { CylinderReport, RingReport } from './inspect-cylinder.js';

/** The worst finding that a bore fails, if it fails one. It is then machined and gets a piston and rings of its new size. */
export function worstOfBore({ findings }: CylinderReport): Finding<'length'> | undefined {
  return worstOf(findings);
}

/** The cylinders that are bored or sleeved, by name. They get pistons and rings of their new size. */
export function boredIn({ cylinders, boring }: Inspection): readonly string[] {
  const byPlan =
    boring === undefined || boring.outcome === 'none'
      ? []
      : boring.cylinders.filter(({ work }) => work !== 'use as it is').map(({ name }) => name);
  const byFinding = cylinders.filter((report) => worstOfBore(report)).map(({ name }) => name);
  return [...new Set([...byPlan, ...byFinding])];
}

/** The ring findings that need action. A used ring outside a rule of thumb for new rings does not. */
const RING_WORK: ReadonlySet<RingReport['filing']['work']> = /* @__PURE__ */ new Set([
  'file',
  'use another ring',
  'bore is worn',
] as const);

/** Work on the cylinders: one bore plan for all of them, or one by one where no standard bore is known. None is decided on a misread one. */
export function boreActions(inspection: Inspection): readonly Action[] {
  const { cylinders, boring } = inspection;
  if (cylinders.some(({ readAgain }) => readAgain)) return [];
  if (boring === undefined || boring.outcome === 'none' || boring.outcome === 'use as it is') {
    return cylinders.flatMap(cylinderWork);
  }
  const works = new Map(boring.cylinders.map(({ name, work }) => [name, work]));
  const isBored = ({ name }: CylinderReport) => works.get(name) !== 'use as it is';
  const sound = cylinders
    .filter((report) => isBored(report) && report.findings.every(holds))
    .map(({ name }) => name);
  return [
    { kind: 'bore', plan: boring, sound },
    ...cylinders.filter((report) => !isBored(report)).flatMap(cylinderWork),
  ];
}

function cylinderWork(report: CylinderReport): Action[] {
  const { name: cylinder, piston, rings, inDoubt } = report;
  const worst = worstOfBore(report);
  if (worst) return [{ kind: 'rebore', cylinder, finding: worst, inDoubt }];
  const misfit = piston?.finding;
  return [
    ...(misfit && !holds(misfit)
      ? [{ kind: 'wrong piston' as const, cylinder, finding: misfit }]
      : []),
    ...rings
      .filter(({ filing }) => RING_WORK.has(filing.work))
      .map((ring) => ({ kind: 'ring' as const, cylinder, ring })),
  ];
}
