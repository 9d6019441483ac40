import { z } from 'zod';
import { cylinderWall, toleratedBoreWear } from '../cylinders/internal.js';
import {
  diameter,
  machiningStock,
  pistonStroke,
  sizeStep,
  toleratedWear,
} from '../judging/internal.js';
import {
  assemblySchema,
  CYLINDERS,
  chosen,
  count,
  fields,
  journalKind,
  list,
  MAINS,
  type NeededPart,
  name,
  oversize,
  partial,
  quantity,
  span,
  statedLimits,
  stepsOf,
  word,
} from '../reading/index.js';
import { valveMargin } from '../valves/internal.js';

/** A part that an engine needs: its name alone, or with how many of it. */
const oneNeeded = name.transform((part): NeededPart => ({ part, count: 1 }));
const someNeeded: z.ZodType<NeededPart> = fields({ part: name, count: count('parts', 1, 1000) });
const needed = chosen<NeededPart>([oneNeeded, someNeeded], (value) =>
  typeof value === 'object' ? someNeeded : oneNeeded,
);

/** Data on the engine the parts are for. */
export const engineSchema = partial({
  name,
  cylinders: count('cylinders', ...CYLINDERS),
  rodsPerJournal: z.literal([1, 2], { error: 'must be 1 or 2, without quotes' }).exactOptional(),
  mains: count('mains', ...MAINS),
  rodJournals: journalKind,
  mainJournals: journalKind.exactOptional(),
  rodHousing: statedLimits(diameter).exactOptional(),
  mainHousing: statedLimits(diameter).exactOptional(),
  bores: partial({
    standard: span(diameter),
    steps: stepsOf(oversize(sizeStep)).exactOptional(),
    stroke: quantity('length', pistonStroke).exactOptional(),
    honingAllowance: quantity('length', machiningStock).exactOptional(),
    leastWall: quantity('length', cylinderWall).exactOptional(),
    sizeAllowance: quantity('length', toleratedWear).exactOptional(),
    wear: word('one side', 'all round').exactOptional(),
    shape: statedLimits(toleratedBoreWear).exactOptional(),
    pistonClearance: statedLimits().exactOptional(),
    ringGap: statedLimits().exactOptional(),
  }),
  endPlay: statedLimits().exactOptional(),
  headFlatness: statedLimits().exactOptional(),
  guideClearance: statedLimits().exactOptional(),
  valveMargin: statedLimits(valveMargin).exactOptional(),
  alsoNeeds: list(needed, 0)
    .refine(
      (all) => new Set(all.map(({ part }) => part)).size === all.length,
      'lists an entry twice',
    )
    .exactOptional(),
  lubrication: word('splash', 'pump').exactOptional(),
  ignition: word('magneto', 'coil').exactOptional(),
  cooling: word('air', 'hopper', 'water').exactOptional(),
  assembly: assemblySchema.exactOptional(),
});
