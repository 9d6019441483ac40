import { isClear } from '../history.js';
import type { RodsPart, Shed } from '../shed.js';
import type { TriageReason } from './triage-types.js';
import { troublesIn } from './troubles.js';

type WhichSeized = Extract<TriageReason, { readonly kind: 'which bearing seized' }>;

/**
 * The doubt over a rod from a donor whose bearing seized. It ends when a rod of that donor says that
 * the bearing was its own; a rod whose tests for heat and for cracks found nothing is used without.
 */
export function whichSeized(
  { from, tested = [], happened = [] }: RodsPart,
  shed: Shed,
): readonly WhichSeized[] {
  if (from === undefined || happened.includes('seized bearing')) return [];
  const its = troublesIn(shed).filter((each) => each.from === from);
  const seized = its.filter(({ what }) => what === 'seized bearing');
  const rods = [...(shed.rods ?? []), ...(shed.toBuy?.rods ?? [])];
  const isTold = seized.some(({ part }) => rods.some(({ name }) => name === part));
  if (seized.length === 0 || isTold) return [];
  const cleared = isClear(tested, 'softening') && isClear(tested, 'cracks');
  return [{ kind: 'which bearing seized', ...(cleared && { cleared }) }];
}
