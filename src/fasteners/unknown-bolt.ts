import type { Basis, SizeOrSpan, Span } from '../judging/index.js';
import { guardFields, guardSpan, guardWord } from '../judging/internal.js';
import { MPa, type Pressure, psi, type Ratio } from '../quantities/index.js';
import { brinellNumber } from './domains.js';

/** A hardness that was read on a bolt. */
export interface BoltHardness {
  /** Brinell, or Vickers, which reads 5 % higher on the steel of bolts. */
  readonly scale: 'HB' | 'HV';
  /** The reading, or the span of several [-]. */
  readonly number: SizeOrSpan<Ratio>;
}

/** How strong a bolt of unknown grade may be. */
export type UnknownBolt =
  | {
      /** From its hardness, or as weak as the weakest. */
      readonly outcome: 'from hardness' | 'weakest';
      /** What its proof stress may be [Pa]. */
      readonly proof: Span<Pressure>;
      /** What its tensile strength may be [Pa]. */
      readonly tensile: Span<Pressure>;
      /** The proof stress to reckon with: the low end [Pa]. */
      readonly proofStress: Pressure;
      /** How it was found. */
      readonly basis: Basis;
    }
  | {
      /** It is not to be used: no steel bolt of any class is as soft or as hard. */
      readonly outcome: 'too soft' | 'too hard';
      /** Its Brinell hardness [-]. */
      readonly brinell: Span<Ratio>;
      /** What bolts of ISO 898-1 have, from the softest class to the hardest [-]. */
      readonly ofBolts: Span<Ratio>;
      /** Where that is written. */
      readonly basis: Basis;
    };

// source: ISO 898-1:1999, Table 3: class 3.6 at least 90 HB, class 12.9 at most 414 HB.
const OF_BOLTS: Span<Ratio> = { min: 90 as Ratio, max: 414 as Ratio };
/** Least and most MPa of tensile strength for a point of Brinell: 3.45, or 500 psi, within 10 %. */
const A_POINT = { min: 3.1, max: 3.8 } as const;
/** Least and most proof stress over tensile strength in SAE J429 and ISO 898-1: class 3.6, 180 of 330, and grade 8. */
const PROOF_SHARE = { min: 0.545, max: 0.8 } as const;

const UNKNOWN = ['hardness'] as const;
const HARDNESS = ['scale', 'number'] as const;

/**
 * How strong a bolt without a mark may be. The answer is a span, and its low end is what to reckon with.
 *
 * With no hardness it is taken to be as weak as the weakest that engines were built with, wrought iron. From a hardness:
 *
 *     least tensile strength = 3.1 MPa * hardness
 *     most tensile strength = 3.8 MPa * hardness
 *     least proof stress = 0.545 * 3.1 MPa * hardness
 *     most proof stress = 0.8 * 3.8 MPa * hardness
 *
 * That is 500 psi for each point of Brinell, within 10 %, and the least and the greatest share of the tensile strength
 * that any grade has as its proof stress. File or grind a flat on the end or the head first, through scale and any hard
 * skin, and take three readings: the skin of a case-hardened bolt says nothing of its core. On wrought iron hardness
 * tells little.
 *
 * A hardness says nothing of cracks, rust or fatigue. An unknown bolt never goes into a connecting rod, a main cap, a
 * flywheel or a cylinder head: fit new ones of a known grade there. For a lifting eye it is not used at all.
 *
 * @param bolt - the hardness, if it was read
 * @returns spans of proof stress and tensile strength, and the proof stress to use; or that it is not to be used
 * @throws {RebuildInputError} when a field is misspelt, the scale is unknown, a value is not finite or out of range, or
 * a span is reversed
 * @see Source: common practice, 500 psi for a point of Brinell; SAE J429 and ISO 898-1:1999, proof stress over tensile
 * strength; ISO 898-1:1999, Table 3; strength of wrought iron, from a
 * table of materials
 * @example
 * ```ts
 * const bolt = unknownBolt({ hardness: { scale: 'HB', number: ratio(200) } });
 * bolt.outcome; // "from hardness"
 * if ('proofStress' in bolt) format(bolt.proofStress, MPa, 0); // "338 MPa"
 * ```
 */
export function unknownBolt(
  bolt: {
    /** Its hardness; without it, it is as weak as the weakest. */
    readonly hardness?: BoltHardness;
  } = {},
): UnknownBolt {
  guardFields('bolt', bolt, UNKNOWN);
  if (bolt.hardness === undefined) return weakest();
  guardFields('hardness', bolt.hardness, HARDNESS);
  const { scale } = bolt.hardness;
  guardWord('hardness.scale', scale, SCALES);
  const read = guardSpan('hardness.number', bolt.hardness.number, brinellNumber, 'ratio');
  const perPoint = scale === 'HV' ? 0.95 : 1;
  const brinell = { min: (perPoint * read.min) as Ratio, max: (perPoint * read.max) as Ratio };
  if (brinell.min < OF_BOLTS.min || brinell.max > OF_BOLTS.max) {
    return {
      outcome: brinell.max > OF_BOLTS.max ? 'too hard' : 'too soft',
      brinell,
      ofBolts: OF_BOLTS,
      basis: { kind: 'published', source: 'ISO 898-1:1999, Table 3, classes 3.6 to 12.9' },
    };
  }
  const tensile = { min: MPa(A_POINT.min * brinell.min), max: MPa(A_POINT.max * brinell.max) };
  const proofStress = (PROOF_SHARE.min * tensile.min) as Pressure;
  return {
    outcome: 'from hardness',
    tensile,
    proof: { min: proofStress, max: (PROOF_SHARE.max * tensile.max) as Pressure },
    proofStress,
    basis: {
      kind: 'common practice',
      rule: '500 psi of tensile strength for a point of Brinell, within 10 %, and the least share of it that any grade has as proof stress',
    },
  };
}

const SCALES = ['HB', 'HV'] as const;

/** From wrought iron to grade 2, which has no mark either. */
function weakest(): UnknownBolt {
  const proofStress = MPa(159);
  return {
    outcome: 'weakest',
    tensile: { min: MPa(234), max: psi(74_000) },
    proof: { min: proofStress, max: psi(55_000) },
    proofStress,
    basis: {
      kind: 'common practice',
      rule: 'an unmarked bolt is anything from wrought iron, which yields from 159 MPa, to grade 2',
    },
  };
}
