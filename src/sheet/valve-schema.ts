import { diametralClearance } from '../judging/internal.js';
import {
  accepting,
  fields,
  list,
  name,
  quantity,
  sizeOrSpan,
  statedLimits,
  word,
} from '../reading/index.js';
import { guideClearance, springTest } from '../valves/index.js';
import {
  forceError,
  springForce,
  springHeight,
  stemDiameter,
  trainLength,
  valveLash,
  valveMargin,
  valveRecession,
  valveSeatWidth,
} from '../valves/internal.js';
import type { ValveSheet } from './valve-sheet.js';

const spring = fields({
  height: quantity('length', springHeight),
  force: quantity('force', springForce),
});

/** Limits for every valve. */
export const valveLimits = fields({
  guideClearance: statedLimits(diametralClearance).exactOptional(),
  seatWidth: statedLimits(valveSeatWidth).exactOptional(),
  margin: statedLimits(valveMargin).exactOptional(),
  recession: statedLimits(valveRecession).exactOptional(),
});

/** The valves that were read. */
export const valves = list(
  fields({
    name,
    kind: word('inlet', 'exhaust'),
    stem: sizeOrSpan(stemDiameter).exactOptional(),
    guide: sizeOrSpan(stemDiameter).exactOptional(),
    seatWidth: quantity('length', valveSeatWidth).exactOptional(),
    margin: quantity('length', valveMargin).exactOptional(),
    recession: quantity('length', valveRecession).exactOptional(),
    lash: quantity('length', valveLash).exactOptional(),
    length: quantity('length', trainLength).exactOptional(),
    leastLength: quantity('length', trainLength).exactOptional(),
    spring: fields({
      closed: spring,
      open: spring,
      forceWithin: quantity('force', forceError).exactOptional(),
    })
      .superRefine(accepting(springTest))
      .exactOptional(),
  })
    .refine(({ length, leastLength }) => leastLength === undefined || length !== undefined, {
      path: ['length'],
      error: 'is missing: leastLength says nothing without it',
    })
    .superRefine(
      accepting(({ guide, stem }: Pick<ValveSheet, 'guide' | 'stem'>) =>
        guide === undefined || stem === undefined ? undefined : guideClearance({ guide, stem }),
      ),
    ),
);
