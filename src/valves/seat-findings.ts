import { type BasedLimits, type Finding, judge, type OwnLimits } from '../judging/index.js';
import { type Domain, guardFields, ownLimitsOr, type WithTarget } from '../judging/internal.js';
import { inch, type Length } from '../quantities/index.js';
import { valveMargin, valveRecession, valveSeatWidth } from './domains.js';
import { MARGIN_LIMIT, NEW_MARGIN, NEW_SEAT_WIDTH, SEAT_WIDTH_LIMIT } from './sources.js';

/** What was read of a valve and its seat, each as far as it was. */
export interface SeatReadings {
  /** Width of the seat along its slope, at its widest or its narrowest [m]. */
  readonly seatWidth?: Length;
  /** Margin of the valve where it is thinnest, pits faced out [m]. */
  readonly margin?: Length;
  /** How far the head lies below the deck; negative if it stands out [m]. */
  readonly recession?: Length;
}

/** The limits of them that are known. */
export interface SeatLimits {
  /** Limits of the seat's width [m]. */
  readonly seatWidth?: OwnLimits<'length'>;
  /** Limits of the margin [m]. */
  readonly margin?: OwnLimits<'length'>;
  /** Limits of the recession [m]. */
  readonly recession?: OwnLimits<'length'>;
}

/** A finding on all that was read and has a limit. */
export interface SeatFindings {
  /** Width of the seat. */
  readonly seatWidth?: Finding<'length'>;
  /** Margin of the valve. */
  readonly margin?: Finding<'length'>;
  /** How deep the valve lies; absent without limits of the caller's own, since no common figure is known. */
  readonly recession?: Finding<'length'>;
}

const READ = ['seatWidth', 'margin', 'recession'] as const;
type Read = (typeof READ)[number];
const OWN = ['limits', 'basis', 'service', 'uncertainty', 'rule', 'target'] as const;

/**
 * Judges the seat's width, the valve's margin and how deep the valve lies, by the caller's limits first. Without them
 * width and margin are held against those of another engine (TM 5-4240-501-14&P, p. 278: a new seat of 3/64 to 1/16 in, usable to
 * 5/64 in; a margin of 1/32 in new, and of 1/64 in at least after facing), which condemn no part of this one: past them
 * the grade is undecided. Nothing is said of what was not read.
 *
 * A seat too wide runs cool but holds carbon, and one too narrow does not cool the valve; a valve with no margin heats to a knife
 * edge and burns. One that lies deep takes compression and breath, and its spring is weaker: see `afterFacing`.
 *
 * @param readings - what was read of the seat and the valve [m]
 * @param limits - limits of your own, by what they are of [m]
 * @returns a finding on all that was read and has a limit
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or limits have no bound
 * @see Source: TM 5-4240-501-14&P, p. 278
 * @example
 * ```ts
 * const { margin, seatWidth } = seatFindings({ margin: inch(0.012), seatWidth: inch(0.07) });
 * margin?.verdict; // "below"
 * margin?.grade; // "undecided"
 * seatWidth?.grade; // "serviceable"
 * seatFindings({ margin: inch(0.012) }, { margin: { limits: { min: inch(1 / 64) } } }).margin?.grade; // "out of limits"
 * ```
 */
export function seatFindings(readings: SeatReadings, limits: SeatLimits = {}): SeatFindings {
  guardFields('readings', readings, READ);
  guardFields('limits', limits, READ);
  const on = (of: Read, feature: string, domain: Domain<'length'>, other?: BasedLimits<'length'>) =>
    findingOn(of, readings[of], limits[of], feature, domain, other);
  const seatWidth = on('seatWidth', 'seat width', valveSeatWidth, newSeat());
  const margin = on('margin', 'margin', valveMargin, newMargin());
  const recession = on('recession', 'recession', valveRecession);
  return {
    ...(seatWidth && { seatWidth }),
    ...(margin && { margin }),
    ...(recession && { recession }),
  };
}

function findingOn(
  of: Read,
  read: Length | undefined,
  own: OwnLimits<'length'> | undefined,
  feature: string,
  domain: Domain<'length'>,
  another = NONE,
): Finding<'length'> | undefined {
  if (own !== undefined) guardFields(`limits.${of}`, own as WithTarget<OwnLimits<'length'>>, OWN);
  const allowed = ownLimitsOr(`limits.${of}`, own ?? {}, another, domain);
  if (read === undefined) return undefined;
  const value = domain(of, read);
  if (allowed.limits === NONE.limits) return undefined;
  return judge({ feature, dimension: 'length', value, ...allowed });
}

const NONE: BasedLimits<'length'> = { limits: {}, basis: { kind: 'specified' } };

// source: TM 5-4240-501-14&P, p. 278.
const newSeat = (): BasedLimits<'length'> => ({
  limits: { min: inch(3 / 64), max: inch(1 / 16) },
  limitsOf: 'new parts',
  basis: NEW_SEAT_WIDTH,
  service: { limits: { max: inch(5 / 64) }, basis: SEAT_WIDTH_LIMIT },
});
const newMargin = (): BasedLimits<'length'> => ({
  limits: { min: inch(1 / 32) },
  limitsOf: 'new parts',
  basis: NEW_MARGIN,
  service: { limits: { min: inch(1 / 64) }, basis: MARGIN_LIMIT },
});
