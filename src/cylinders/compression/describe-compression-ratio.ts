import type { Limits, Span, Wording } from '../../judging/index.js';
import { describeSpan, guardLayout, guardWording, NANOMETRE, say } from '../../judging/internal.js';
import { sayProud } from '../../motion/internal.js';
import {
  cubicInch,
  type Length,
  mL,
  type Ratio,
  type UnitSystem,
  type Volume,
} from '../../quantities/index.js';
import { formatNumber } from '../../quantities/internal.js';
import { compressionRatioLayout } from '../layouts.js';
import type { CompressionRatio } from './compression-ratio.js';

/**
 * Describes how far a cylinder compresses in sentences: first that the piston stands proud of the deck or past the face of
 * the head, if it does or may.
 *
 * @param compression - what `compressionRatio` gave
 * @param wording - the units to print in
 * @returns sentences without full stops
 * @throws {RebuildInputError} when a field is misspelt, the compression is not what `compressionRatio` gives, or the unit
 * system is unknown
 * @example
 * ```ts
 * const compression = compressionRatio({
 *   bore: inch(4), stroke: inch(3.48), chamber: cubicInch(5.2), deckClearance: inch(-0.01),
 *   gasket: { thickness: inch(0.04), bore: inch(4) },
 * });
 * describeCompressionRatio(compression, { units: 'inch' });
 * // [
 * //   "the piston stands proud of the deck by 0.0100 in: check its clearance to the head, with the gasket as it is pressed, before the engine is turned",
 * //   "compression ratio 8.84: the piston sweeps 43.731 in³, and 5.577 in³ is left above it, 0.503 in³ of that by the gasket",
 * //   "by the sizes given the flat edge of the piston stops 0.0300 in from the face of the head, cold and at rest",
 * // ]
 * ```
 */
export function describeCompressionRatio(
  compression: CompressionRatio,
  wording: Wording,
): readonly string[] {
  guardLayout('compression', compression, compressionRatioLayout, 'compressionRatio');
  guardWording(wording);
  const { ratio, sweptVolume, clearanceVolume, gasketVolume } = compression;
  const { deckClearance, pistonToHeadFace: toHead } = compression;
  const { units } = wording;
  const one = (volume: Volume) => sayVolumes({ min: volume, max: volume }, units);
  const past = sayPastHead(toHead, units);
  return [
    ...sayProud(deckClearance, units),
    ...past,
    `compression ratio ${sayRatios(ratio)}: the piston sweeps ${one(sweptVolume)}, and ${sayVolumes(clearanceVolume, units)} is left above it${gasketVolume > 0 ? `, ${one(gasketVolume)} of that by the gasket` : ''}`,
    ...(past.length === 0
      ? [
          `by the sizes given the flat edge of the piston stops ${describeSpan(toHead, 'length', units)} from the face of the head, cold and at rest`,
        ]
      : []),
  ];
}

/** What a piston past the face of the head asks for; nothing of one that stays clear of it. */
export function sayPastHead({ min, max }: Span<Length>, units: UnitSystem): readonly string[] {
  if (min > -NANOMETRE) return [];
  const may = max > -NANOMETRE ? 'may stand up to' : 'stands';
  const past = { min: Math.max(0, -max) as Length, max: -min as Length };
  const by =
    may === 'stands' ? describeSpan(past, 'length', units) : say(past.max, 'length', units);
  return [
    `the flat edge of the piston ${may} ${by} past the face of the head: it strikes unless the head is recessed there; turn the engine by hand over soft wire or clay first`,
  ];
}

/** `4.60 to 5.10`: ratios are told as the trade tells them. */
export function sayRatios({ min, max }: Limits<Ratio>): string {
  const [low, high] = [min?.toFixed(2), max?.toFixed(2)];
  if (low === undefined) return `at most ${high}`;
  if (high === undefined) return `at least ${low}`;
  return low === high ? high : `${low} to ${high}`;
}

/** A chamber in cubic inches or millilitres. */
export function sayVolumes({ min, max }: Span<Volume>, units: UnitSystem): string {
  const unit = units === 'inch' ? cubicInch : mL;
  const [low, high] = [formatNumber(min, unit), formatNumber(max, unit)];
  return low === high ? `${high} ${unit.symbol}` : `${low} to ${high} ${unit.symbol}`;
}
