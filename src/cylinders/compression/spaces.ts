import type { SizeOrSpan, Span } from '../../judging/index.js';
import {
  diameter,
  guardFields,
  guardSpan,
  pistonStroke,
  showIn,
  showLength,
} from '../../judging/internal.js';
import { deckClearance } from '../../motion/internal.js';
import {
  type Area,
  type Length,
  mL,
  RebuildInputError,
  type Volume,
} from '../../quantities/index.js';
import { chamberMouth, chamberVolume, crownVolume, gasketThickness } from './domains.js';
import { type CylinderSize, sweptBy } from './swept-volume.js';

/** The opening of a gasket over one cylinder, round or not: one of the two. */
export interface GasketOpening {
  /** Bore of a round opening; it is mostly larger than the cylinder's [m]. */
  readonly bore?: Length;
  /** Area of an opening that is not round, as a side-valve engine has it over bore and valves [m²]. */
  readonly area?: Area;
}

/** A gasket as it lies between head and block. */
export interface HeadGasket extends GasketOpening {
  /** Thickness once the head is tightened; an old one of the same make tells it [m]. */
  readonly thickness: Length;
}

/** All of a cylinder but its gasket. */
export interface CylinderSpaces extends CylinderSize {
  /** The chamber in the head, poured with valves and plug in place [m³]. */
  readonly chamber: SizeOrSpan<Volume>;
  /** How far the flat edge of the piston stops below the deck at top dead centre; negative stands above it [m]. */
  readonly deckClearance: SizeOrSpan<Length>;
  /** What the crown fills above that edge: a dome positive, a dish negative; by default it is flat [m³]. */
  readonly crown?: SizeOrSpan<Volume>;
  /** What of the chamber lies in the block, as the pocket over the valves of a side-valve engine; by default nothing [m³]. */
  readonly blockChamber?: SizeOrSpan<Volume>;
}

/** A cylinder, and all that is left above its piston at top dead centre. */
export interface CylinderToCompress extends CylinderSpaces {
  /** The gasket; `'none'` where head and block meet without one, or where it was poured with the chamber. */
  readonly gasket: HeadGasket | 'none';
}

const OPENING = ['bore', 'area'] as const;
const GASKET = ['thickness', 'bore', 'area'] as const;

/** What a cylinder sweeps, and what is left above its piston without the gasket. */
export interface Spaces {
  readonly swept: Volume;
  readonly rest: Span<Volume>;
  readonly deck: Span<Length>;
}

/** Refuses what cannot be of one cylinder, and adds its spaces up. */
export function spacesOf(cylinder: CylinderSpaces): Spaces {
  const bore = diameter('bore', cylinder.bore);
  const swept = sweptBy(bore, pistonStroke('stroke', cylinder.stroke));
  const chamber = volumes('chamber', cylinder.chamber);
  const deck = guardSpan('deckClearance', cylinder.deckClearance, deckClearance);
  const block =
    cylinder.blockChamber === undefined ? NOTHING : volumes('blockChamber', cylinder.blockChamber);
  const crown =
    cylinder.crown === undefined
      ? NOTHING
      : guardSpan('crown', cylinder.crown, crownVolume, 'volume');
  const min = chamber.min + block.min + sweptBy(bore, deck.min) - crown.max;
  const max = chamber.max + block.max + sweptBy(bore, deck.max) - crown.min;
  return { swept, deck, rest: { min, max } as Span<Volume> };
}

/** Adds the gasket, and refuses a piston that would have no room. */
export function clearanceWith({ swept, rest }: Spaces, gasket: number): Span<Volume> {
  const least = rest.min + gasket;
  if (least * MOST_RATIO < swept) {
    throw new RebuildInputError({
      parameter: 'chamber',
      value: least,
      shown: `what is left above the piston, ${showIn(least as Volume, mL)},`,
      expected: `at least a ${MOST_RATIO}th of the swept volume of ${showIn(swept, mL)} in all spaces together`,
      problem: 'is no room to burn in',
      hint: 'A dome is positive and a dish negative; a piston below the deck is positive. Is a space forgotten, or in another unit?',
    });
  }
  return { min: least, max: rest.max + gasket } as Span<Volume>;
}

/** No engine squeezes its charge into less than a sixtieth of its stroke. */
const MOST_RATIO = 60;
const NOTHING = { min: 0, max: 0 } as const;

const volumes = (parameter: string, value: SizeOrSpan<Volume>) =>
  guardSpan(parameter, value, chamberVolume, 'volume');

/** Area of a gasket's opening and its thickness, or nothing of both. */
export function guardGasket(gasket: HeadGasket | 'none'): { area: number; thickness: number } {
  if (gasket === 'none') return NO_GASKET;
  guardFields('gasket', gasket, GASKET);
  return {
    thickness: gasketThickness('gasket.thickness', gasket.thickness),
    area: openingOf(gasket),
  };
}

/** Area of an opening alone. */
export function guardOpening(gasket: GasketOpening): number {
  guardFields('gasket', gasket, OPENING);
  return openingOf(gasket);
}

function openingOf({ bore, area }: GasketOpening): number {
  if (area !== undefined && bore === undefined) return chamberMouth('gasket.area', area);
  const round = diameter('gasket.bore', bore as Length);
  if (area === undefined) return sweptBy(round, 1);
  throw new RebuildInputError({
    parameter: 'gasket.bore',
    value: round,
    shown: showLength(round),
    expected: 'a bore or an area, not both',
    hint: 'A round opening has a bore; give the area of any other.',
  });
}

const NO_GASKET = { area: 0, thickness: 0 } as const;
