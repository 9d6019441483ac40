import { isOutside } from '../judging/internal.js';
import type { Disposition, Fault, Part, Shed, Testable, TriagedPart } from '../shed/index.js';
import { everyFault, SECTIONS, undecidedUntil } from '../shed/internal.js';
import type { Cost } from './cost.js';
import type { BuildJob, ShopOrder } from './job-types.js';
import { isKeptBack } from './kinds.js';
import type { LeftOver } from './left-over-types.js';
import { costOf, inThousandths } from './money.js';
import { isUntested } from './open-points.js';
import type { Purchase } from './order-types.js';
import type { Build } from './plan-types.js';
import { purchaseDoubts } from './purchase-doubts.js';

/** The sum of costs [thousandths]. */
export const sumOfCosts = (all: readonly { readonly cost: Cost }[]): number =>
  all.reduce((sum, { cost }) => sum + Math.round(cost.amount * 1000), 0);

/** The orders for every shop, in the order of the engines. */
export function ordersOf(
  builds: readonly Build[],
  currency: string | undefined,
): readonly ShopOrder[] {
  const jobs = builds.flatMap((build) => build.jobs);
  const shops = [...new Set(jobs.map(({ shop }) => shop))];
  return shops.map((shop) => {
    const its: readonly BuildJob[] = jobs.filter((job) => job.shop === shop);
    return { shop, jobs: its, cost: costOf(sumOfCosts(its), currency) };
  });
}

/** The parts to buy, section by section. */
export function shoppingOf(
  { toBuy = {} }: Shed,
  builds: readonly Build[],
  currency: string | undefined,
): readonly Purchase[] {
  return SECTIONS.flatMap((section) =>
    (toBuy[section] ?? []).flatMap((part): Purchase[] => {
      const { name, price } = part;
      const count = usedOf(name, builds);
      const cost = costOf(count * inThousandths(price), currency);
      return count === 0
        ? []
        : [
            {
              section,
              ...kindOf(part),
              name,
              count,
              ...purchaseDoubts(section, part, builds),
              cost,
            },
          ];
    }),
  );
}

/** The parts of the shed that no engine takes, and why. */
export function leftOverOf(
  shed: Shed,
  parts: readonly TriagedPart[],
  reserved: readonly string[],
  builds: readonly Build[],
): readonly LeftOver[] {
  return parts.flatMap((part): LeftOver[] => {
    const { section, name, count, disposition } = part;
    const left = count - usedOf(name, builds);
    if (left <= 0) return [];
    const own: Part | undefined = shed[section]?.find((each) => each.name === name);
    const isKept = reserved.includes(name) || (own !== undefined && isKeptBack(own));
    const noShopFor = part.because.flatMap((each) => (each.kind === 'no shop' ? [each.work] : []));
    const found =
      noShopFor.length > 0 && whyOf(disposition) === 'spare' ? 'not as it is' : whyOf(disposition);
    const why = isKept ? 'reserved' : found;
    const until = why === 'undecided' ? undecidedUntil(part) : undefined;
    return [
      {
        section,
        ...kindOf(part),
        name,
        count: left,
        ...(own?.onlyWith && { onlyWith: own.onlyWith }),
        ...doubtsOf(shed, part),
        ...(mightTakeMadeShells(shed, part) && { madeShellsNotTried: true as const }),
        ...(noShopFor.length > 0 && { noShopFor }),
        // What it fits only with is told already.
        ...(own?.onlyWith ? {} : fitsNothingOf(part)),
        why,
        ...(until && { until }),
      },
    ];
  });
}

/** What no part of fits it, if that is so. */
function fitsNothingOf({ because }: TriagedPart): Pick<LeftOver, 'fitsNothing'> {
  const found = because.find((each) => each.kind === 'fits nothing');
  return found ? { fitsNothing: found.section } : {};
}

/** What an other part is. */
function kindOf(part: { readonly name: string; readonly kind?: string }) {
  return part.kind === undefined ? {} : { kind: part.kind };
}

/**
 * Whether shells that can be made might suit journals that no step serves: they are sound, round and straight, and as
 * large as the maker allows at least.
 */
function mightTakeMadeShells(
  { toMake, engine, crankshafts = [] }: Shed,
  { name, because, findings }: TriagedPart,
): boolean {
  const own = crankshafts.find((each) => each.name === name);
  const mayBeMade = (of: 'rods' | 'mains') => {
    const field = of === 'rods' ? 'rodJournals' : 'mainJournals';
    const { minimum = 0 } = engine[field] ?? {};
    const readings = (own?.[field] ?? []).flatMap((journal) => journal.readings ?? []);
    return (
      toMake?.shells?.some(({ fits }) => fits === of) &&
      readings.every(({ diameter }) => diameter >= minimum)
    );
  };
  const isLost = because.some(
    (why) =>
      (why.kind === 'at no step' && (mayBeMade('rods') || mayBeMade('mains'))) ||
      (why.kind === 'journals' && why.plan.outcome === 'none' && mayBeMade(why.journals)),
  );
  const isFaulty = faultsIn({ because }).length > 0 || (own && everyFault(own).length > 0);
  return isLost && !isFaulty && !findings.some(isOutside);
}

/** The faults of a part and its places, what may have cracked it, and whether it was never tested for cracks. */
function doubtsOf(
  shed: Shed,
  { section, name, because, tests }: TriagedPart,
): Pick<LeftOver, 'faults' | 'accidents' | 'untested'> {
  const part: (Part & Testable) | undefined = shed[section]?.find((each) => each.name === name);
  const faults = [...new Set([...faultsIn({ because }), ...(part ? everyFault(part) : [])])];
  const accidents = tests.flatMap((test) => test.because);
  return {
    ...(faults.length > 0 && { faults }),
    ...(accidents.length > 0 && { accidents }),
    ...(isUntested(section, part) && { untested: true as const }),
  };
}

/** What was seen wrong with a part, each fault once. */
export const faultsIn = ({ because }: Pick<TriagedPart, 'because'>): readonly Fault[] => [
  ...new Set(because.flatMap((each) => (each.kind === 'fault' ? [each.fault] : []))),
];

function whyOf(disposition: Disposition): LeftOver['why'] {
  switch (disposition) {
    case 'scrap':
    case 'undecided':
    case 'not as it is':
      return disposition;
    default:
      return 'spare';
  }
}

function usedOf(name: string, builds: readonly Build[]): number {
  return builds
    .flatMap(({ parts }) => parts)
    .reduce((sum, part) => (part.name === name ? sum + part.count : sum), 0);
}
