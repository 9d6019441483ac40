import type { Price } from '../reading/index.js';
import type { Job, MachiningOffer, Shed, Work } from '../shed/index.js';
import { isTest, SECTIONS } from '../shed/internal.js';
import type { Cost } from './cost.js';

/**
 * Money in thousandths, to make sums whole numbers: no currency has smaller parts.
 */
export const inThousandths = ({ amount }: Price): number => Math.round(amount * 1000);

/** Thousandths as money again. */
export function costOf(thousandths: number, currency: string | undefined): Cost {
  return { amount: thousandths / 1000, ...(currency !== undefined && { currency }) };
}

/** The currency of a shed's prices, if it has any. All prices share one. */
export function currencyOf({ machining = [], toBuy = {}, toMake = {} }: Shed): string | undefined {
  const offers = SECTIONS.flatMap((section): readonly { price: Price }[] => toBuy[section] ?? []);
  const { shells = [], thrustWashers = [], sleeves = [] } = toMake;
  const all = [...machining, ...offers, ...shells, ...thrustWashers, ...sleeves];
  return all[0]?.price.currency;
}

/** A job with the cheapest shop for it and the price [thousandths]. */
export interface PricedJob extends Job {
  readonly shop: string;
  readonly cost: number;
}

/**
 * Prices every job at the cheapest shop, the first in the list if several are equal; undefined if no
 * shop offers a job. A test that no shop on the list offers has no price; a plan asks for it all the same.
 */
export function priced(
  wanted: readonly Job[],
  offers: readonly MachiningOffer[],
): readonly PricedJob[] | undefined {
  const jobs = wanted.filter(({ work }) => !isTest(work) || cheapest(work, offers));
  const all = jobs.flatMap((job): PricedJob[] => {
    const offer = cheapest(job.work, offers);
    // A job on the whole part is one piece of work.
    const pieces = Math.max(1, job.places.length);
    return offer ? [{ ...job, shop: offer.shop, cost: pieces * inThousandths(offer.price) }] : [];
  });
  return all.length === jobs.length ? all : undefined;
}

/** The total cost of jobs [thousandths]. */
export const totalOf = (jobs: readonly { readonly cost: number }[]): number =>
  jobs.reduce((sum, { cost }) => sum + cost, 0);

function cheapest(work: Work, offers: readonly MachiningOffer[]): MachiningOffer | undefined {
  return offers
    .filter((offer) => offer.work === work)
    .reduce<MachiningOffer | undefined>(
      (best, offer) => (best && best.price.amount <= offer.price.amount ? best : offer),
      undefined,
    );
}
