import {
  diameter,
  diametralClearance,
  guardFields,
  guardLength,
  ROUNDING,
  showLength,
} from '../../judging/internal.js';
import { bearingLoad, crankSpeed } from '../../motion/internal.js';
import {
  type DynamicViscosity,
  type Force,
  type Length,
  type Ratio,
  RebuildInputError,
  type RotationalSpeed,
} from '../../quantities/index.js';
import { mostApart } from '../one-bearing.js';
import { filmLengthToDiameter, filmViscosity } from './domains.js';

/** A plain bearing that oil fills. */
export interface JournalBearing {
  /** Journal diameter [m]. */
  readonly journal: Length;
  /** Length of the bearing along the shaft, without chamfers and grooves [m]. */
  readonly length: Length;
  /** Diametral oil clearance [m]. */
  readonly clearance: Length;
}

/** A bearing that turns under a load. */
export interface LoadedBearing extends JournalBearing {
  /** Speed of the journal in the bearing; none is a journal that stands still [rad/s]. */
  readonly speed: RotationalSpeed;
  /** Steady load across the shaft [N]. */
  readonly load: Force;
}

/** A bearing that turns under a load in oil of one viscosity. */
export interface OiledBearing extends LoadedBearing {
  /** Viscosity of the oil in the film, at the film's temperature [Pa·s]. */
  readonly viscosity: DynamicViscosity;
}

const OILED = ['journal', 'length', 'clearance', 'speed', 'load', 'viscosity'] as const;

/** Refuses sizes that no bearing has; a clearance of nothing or less cannot turn. */
export function guardBearing(bearing: JournalBearing): JournalBearing {
  const { journal, length } = guardLengthOf(bearing);
  return {
    journal,
    length,
    clearance: guardRunningClearance('clearance', bearing.clearance, journal),
  };
}

/** Refuses a journal that cannot be, and a length that no bearing on it has. */
export function guardLengthOf(
  bearing: Pick<JournalBearing, 'journal' | 'length'>,
): Pick<JournalBearing, 'journal' | 'length'> {
  const journal = diameter('journal', bearing.journal);
  const bounds = [filmLengthToDiameter.least * journal * (1 - ROUNDING), 10 * journal] as const;
  return { journal, length: guardLength('length', bearing.length, bounds, 'mm(30)') };
}

/** Refuses a bearing, speed or load that cannot be. */
export function guardLoadedBearing(bearing: LoadedBearing): LoadedBearing {
  return {
    ...guardBearing(bearing),
    speed: crankSpeed('speed', bearing.speed),
    load: bearingLoad('load', bearing.load),
  };
}

/** Refuses a bearing with fields it does not have, or an oil of no such viscosity. */
export function guardOiledBearing(bearing: OiledBearing): OiledBearing {
  guardFields('bearing', bearing, OILED);
  return {
    ...guardLoadedBearing(bearing),
    viscosity: filmViscosity('viscosity', bearing.viscosity),
  };
}

/** A clearance that a journal can turn in: more than nothing, up to what was ever one bearing. */
export function guardRunningClearance(parameter: string, value: Length, journal: Length): Length {
  if (typeof value !== 'number' || !(value <= 0)) {
    const bounds = [Math.max(1e-7, journal * 1e-5), mostApart(journal)] as const;
    return guardLength(parameter, value, bounds, diametralClearance.example);
  }
  throw new RebuildInputError({
    parameter,
    value,
    shown: showLength(value),
    expected: 'more than nothing',
    problem: 'is an interference or a fit without play: this bearing cannot turn',
    hint: 'Check the readings; oilClearance gives the clearance that these sizes leave.',
  });
}

/** Length over diameter. */
export const slenderness = ({ journal, length }: JournalBearing): Ratio =>
  // The least is the least, however it was rounded.
  Math.max(filmLengthToDiameter.least, length / journal) as Ratio;
