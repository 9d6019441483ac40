import type { Section } from '../../src/shed/sections.js';
import type * as shed from '../../src/shed/shed.js';

/** What a part that was measured has, and another may lack. */
type Measured =
  | 'bores'
  | 'rodJournals'
  | 'rods'
  | 'pistons'
  | 'readings'
  | 'housingBore'
  | 'diameter'
  | 'oversize'
  | 'undersize'
  | 'fits'
  | 'wall'
  | 'pairs'
  | 'thickness';

/** A block may do without the walls of its cylinders, which have readings; shells may not. */
type MeasuredOf<T> = Extract<
  keyof T,
  'readings' extends keyof T ? Exclude<Measured, 'wall'> : Measured
>;

/** A part of which everything was measured that a plan asks for. */
type Full<T> = T extends string | number
  ? T
  : T extends readonly (infer Item)[]
    ? readonly Full<Item>[]
    : T extends object
      ? EachFull<Required<Pick<T, MeasuredOf<T>>>> & EachFull<Omit<T, MeasuredOf<T>>>
      : T;

type EachFull<T> = { readonly [K in keyof T]: Full<Exclude<T[K], undefined>> };

export type BlockPart = Full<shed.BlockPart>;
export type CrankshaftPart = Full<shed.CrankshaftPart>;
export type HousingPlace = Full<shed.HousingPlace>;
export type JournalPlace = Full<shed.JournalPlace>;
export type PistonSetPart = Full<shed.PistonSetPart>;
export type RingSetPart = Full<shed.RingSetPart>;
export type ThrustWasherPart = Full<shed.ThrustWasherPart>;
export type RodsPart = Full<shed.RodsPart>;
export type ShellPart = Full<shed.ShellPart>;
export type Parts = { readonly [S in Section]: readonly Full<shed.Parts[S][number]>[] };
export type FullOffers = { readonly [S in Section]?: readonly shed.Offered<Parts[S][number]>[] };

/** A shed of such parts. */
export type Shed = Omit<shed.Shed, Section | 'toBuy'> &
  Partial<Parts> & { readonly toBuy?: FullOffers };
