import type { BorePlan } from '../cylinders/index.js';
import type { Finding } from '../judging/index.js';
import { worstOf } from '../judging/internal.js';
import type { CylinderReport } from './inspect-cylinder.js';

/** The worst finding that a bore fails, if it fails one. It is then machined and gets a piston and rings of its new size. */
export function worstOfBore({ findings }: CylinderReport): Finding<'length'> | undefined {
  return worstOf(findings);
}

/** The cylinders that are bored or sleeved, by name. They get pistons and rings of their new size. */
export function boredIn({
  cylinders,
  boring,
}: {
  readonly cylinders: readonly CylinderReport[];
  readonly boring?: BorePlan;
}): readonly string[] {
  const byPlan =
    boring === undefined || boring.outcome === 'none'
      ? []
      : boring.cylinders.filter(({ work }) => work !== 'use as it is').map(({ name }) => name);
  const byFinding = cylinders.filter((report) => worstOfBore(report)).map(({ name }) => name);
  return [...new Set([...byPlan, ...byFinding])];
}

/** Which of those may stay as they are all the same: it is in doubt, or they are sound at a size of their own. */
export function mayStayIn({
  cylinders,
  boring,
}: {
  readonly cylinders: readonly CylinderReport[];
  readonly boring?: BorePlan;
}): readonly string[] {
  const { inDoubt, nearly } = boring === undefined || boring.outcome === 'none' ? {} : boring;
  const byPlan = [
    ...(inDoubt?.cylinders ?? []).map(({ name }) => name),
    ...(nearly?.cylinders ?? []),
  ];
  return cylinders
    .filter(
      ({ name, inDoubt: isDoubted, soundAt }) =>
        byPlan.includes(name) || soundAt !== undefined || (boring === undefined && isDoubted),
    )
    .map(({ name }) => name);
}
