import {
  type GrindRequest,
  inch,
  type JournalToGrind,
  type Length,
  undersizeSteps,
} from 'crankwright';

/** A length given in tenths, 0.0001 in: whole numbers keep the arithmetic of a test exact. */
export const tenths = (n: number): Length => inch(n / 10_000);

/** A journal in tenths. */
export interface InTenths {
  readonly name: string;
  readonly smallest: number;
  readonly largest: number;
  readonly outOfRound?: number;
  readonly taper?: number;
  readonly runout?: number;
}

export const journal = (size: InTenths): JournalToGrind => ({
  name: size.name,
  smallest: tenths(size.smallest),
  largest: tenths(size.largest),
  outOfRound: tenths(size.outOfRound ?? 0),
  taper: tenths(size.taper ?? 0),
  ...(size.runout === undefined ? {} : { runout: tenths(size.runout) }),
});

/** A rod journal of 2.1245 to 2.1250 in, and the steps that an inch shop grinds to. */
export const rods = (...journals: readonly InTenths[]): GrindRequest => ({
  journals: journals.map(journal),
  standard: { min: tenths(21_245), max: tenths(21_250) },
  steps: undersizeSteps('inch'),
});

export const asNew: InTenths = { name: 'rod 1', smallest: 21_246, largest: 21_248 };
/** Worn on one side; what is left round in it is 2.1189 - 0.0013 - 0.0010 = 2.1166 in. */
export const worn: InTenths = {
  name: 'rod 2',
  smallest: 21_189,
  largest: 21_202,
  outOfRound: 13,
  taper: 4,
};
/** Cleans up nowhere down to 30 under. */
export const ruined: InTenths = {
  name: 'rod 3',
  smallest: 20_900,
  largest: 21_200,
  outOfRound: 90,
  taper: 90,
};
