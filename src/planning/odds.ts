import type { Ratio } from '../quantities/index.js';
import type { Part, Shed } from '../shed/index.js';
import { troublesIn, troublesOf } from '../shed/internal.js';
import type { OddsOfPart } from './chance-types.js';

/** How likely a part is good that its owner gives no odds for: common practice of this library, and no more than a guess. */
const USUAL = { ran: 0.8, turns: 0.6, seized: 0.3, 'not seen': 0.5 } as const;

/** The most of that, for a part of an engine that had an accident: no better than one of an engine that has seized. */
const AFTER_ACCIDENT = USUAL.seized;

/** How likely each part of a shed is good, and who says so. */
export function oddsIn(shed: Shed): (part: Part) => Pick<OddsOfPart, 'odds' | 'by'> {
  const troubles = troublesIn(shed);
  return (part) => {
    if (part.odds !== undefined) return { odds: part.odds, by: 'owner' };
    const usual = USUAL[part.condition?.is ?? 'not seen'];
    const hadAccident = troublesOf(part, troubles).length > 0;
    const odds = (hadAccident ? Math.min(usual, AFTER_ACCIDENT) : usual) as Ratio;
    return { odds, by: 'rule of thumb' };
  };
}

/** What odds are no worse than here, so that certainly bad is still a number. */
const WORST = 0.001;

/** The odds as a whole number that grows as they fall; of several parts, the least sum has the greatest product of odds. */
export const unlikeliness = (odds: Ratio): number =>
  Math.round(-100 * Math.log(Math.max(odds, WORST)));
