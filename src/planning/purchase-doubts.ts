import type { Part, Section } from '../shed/index.js';
import { isToSettle } from './job-doubts.js';
import type { BuildJob } from './job-types.js';
import type { Purchase } from './order-types.js';
import type { Build } from './plan-types.js';

/** The jobs in doubt that a purchase hangs on, and how many of it each engine buys for them. */
export function purchaseDoubts(
  section: Section,
  part: Part & { readonly fits?: 'rods' | 'mains' },
  builds: readonly Build[],
): Pick<Purchase, 'inDoubt'> {
  const works = worksBehind(section, part);
  const inDoubt = builds.flatMap(({ parts, jobs }) => {
    const { count = 0 } = parts.find(({ name }) => name === part.name) ?? {};
    const job = jobs.find((each) => isToSettle(each) && works.includes(each.work));
    return count > 0 && job ? [{ part: job.part, work: job.work, count }] : [];
  });
  return inDoubt.length > 0 ? { inDoubt } : {};
}

/** The work that decides of what size a part is bought. */
function worksBehind(
  section: Section,
  part: { readonly fits?: 'rods' | 'mains' },
): readonly BuildJob['work'][] {
  switch (section) {
    case 'pistonSets':
    case 'ringSets':
      return ['bore', 'sleeve'];
    case 'shells':
      return part.fits === 'mains' ? ['grind main journals'] : ['grind rod journals'];
    default:
      return [];
  }
}

/** How many of the parts to buy hang on jobs in doubt. */
export const countInDoubt = (all: readonly Purchase[]): number =>
  all.flatMap(({ inDoubt = [] }) => inDoubt).reduce((sum, { count }) => sum + count, 0);

/** `once it is settled whether block B is bored`, for purchases that hang on jobs in doubt. */
export function onceSettled(all: readonly Purchase[]): string {
  const jobs = all.flatMap(({ inDoubt = [] }) => inDoubt.map(sayWhether));
  return `once it is settled whether ${[...new Set(jobs)].join(' and ')}`;
}

function sayWhether({ part, work }: NonNullable<Purchase['inDoubt']>[number]): string {
  switch (work) {
    case 'grind main journals':
      return `the mains of ${part} are ground`;
    case 'grind rod journals':
      return `the rod journals of ${part} are ground`;
    default:
      return `${part} is ${work === 'sleeve' ? 'sleeved' : 'bored'}`;
  }
}

/** `; IN DOUBT: buy 1 of them only once it is settled whether block B is bored`; nothing of one that is sure. */
export function besidePurchase(purchase: Purchase): string {
  const count = countInDoubt([purchase]);
  if (count === 0) return '';
  const which = count < purchase.count ? `${count} of them` : count === 1 ? 'it' : 'them';
  return `; IN DOUBT: buy ${which} only ${onceSettled([purchase])}`;
}
