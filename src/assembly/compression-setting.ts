import {
  type CompressionRule,
  type CrankingPressure,
  compressionRatio,
  crankingPressure,
  publishedCompressionRules,
} from '../cylinders/index.js';
import type { BasedLimits, Basis, Finding, Span } from '../judging/index.js';
import { judgeSpan, spanOf } from '../judging/internal.js';
import { type PistonStandDown, pistonStandDown } from '../motion/index.js';
import { type Angle, degree, type Length, type Ratio, type Volume } from '../quantities/index.js';
import {
  type CompressionData,
  type CompressionRuleData,
  type PlaceData,
  statedBasis,
} from '../reading/index.js';
import type { CrankPlace } from '../timing/index.js';
import { pastTopOf } from '../timing/internal.js';

/** What is known of a cylinder besides its spaces. */
export interface AroundCompression {
  /** Bore, as the maker made it or as it will be [m]. */
  readonly bore?: Span<Length>;
  /** Stroke of the piston [m]. */
  readonly stroke?: Length;
  /** Rod from centre to centre [m]. */
  readonly rodLength?: Length;
  /** Where the inlet valve closes. */
  readonly inletCloses?: PlaceData;
  /** How far that place may be off, either way [rad]. */
  readonly within?: Angle;
}

/** How far a cylinder compresses, and what its test is judged by. */
export interface CompressionSetting {
  /** Compression ratio; absent if a space is not known [-]. */
  readonly ratio?: Span<Ratio>;
  /** What is left above the piston at top dead centre [m³]. */
  readonly clearanceVolume?: Span<Volume>;
  /** How far the piston stops below the deck, as it was read, else by the sizes; negative stands above it [m]. */
  readonly deckClearance?: Span<Length>;
  /** From the flat edge of the piston to the face of the head; negative stands into the head [m]. */
  readonly pistonToHead?: Span<Length>;
  /** What the ratio is to be, if the file says so. */
  readonly wanted?: BasedLimits<'ratio'>;
  /** The ratio against that, at its worse end. */
  readonly finding?: Finding<'ratio'>;
  /** How far the piston stops below the deck by the sizes of the parts. */
  readonly standDown?: PistonStandDown;
  /** What a gauge may show at cranking: an estimate. */
  readonly cranking?: CrankingPressure;
  /** What a test is judged by: the rules of the file, else rules that manuals print for other engines. */
  readonly rules: readonly CompressionRule[];
  /** What would have to be known for the ratio. */
  readonly notGiven: readonly ('bore' | 'stroke' | 'chamber' | 'deck clearance' | 'gasket')[];
}

/** How far the cylinders compress, as far as the file tells. */
export function compressionSetting(
  data: CompressionData,
  around: AroundCompression,
): CompressionSetting {
  const standDown = standDownOf(data, around);
  const deck =
    data.deckClearance === undefined ? standDown?.calculated : spanOf(data.deckClearance);
  const spaces = spacesOf(data, around, deck);
  const wanted = statedBasis(data.ratio);
  const finding =
    spaces &&
    wanted &&
    judgeSpan({ feature: 'compression ratio', dimension: 'ratio', value: spaces.ratio, ...wanted });
  const cranking = spaces && crankingOf(spaces.ratio, data, around);
  return {
    ...spaces,
    ...(wanted && { wanted }),
    ...(finding && { finding }),
    ...(deck && { deckClearance: deck }),
    ...(standDown && { standDown }),
    ...(cranking && { cranking }),
    rules: data.rules?.map(ruleOf) ?? publishedCompressionRules(),
    notGiven: [
      ...(around.bore ? [] : (['bore'] as const)),
      ...(around.stroke === undefined ? (['stroke'] as const) : []),
      ...(data.chamber === undefined ? (['chamber'] as const) : []),
      ...(!deck ? (['deck clearance'] as const) : []),
      ...(data.gasket === undefined ? (['gasket'] as const) : []),
    ],
  };
}

function standDownOf(
  { deckHeight, pinHeight, deckClearance }: CompressionData,
  { stroke, rodLength }: AroundCompression,
): PistonStandDown | undefined {
  if (deckHeight === undefined || pinHeight === undefined) return undefined;
  if (stroke === undefined || rodLength === undefined) return undefined;
  return pistonStandDown({
    deckHeight,
    pinHeight,
    stroke,
    rodLength,
    ...(deckClearance !== undefined && { measured: deckClearance }),
  });
}

/** The ratio between the smallest and the largest bore. */
function spacesOf(
  { chamber, blockChamber, crown, gasket }: CompressionData,
  { bore, stroke }: AroundCompression,
  deck: Span<Length> | undefined,
): Required<Pick<CompressionSetting, 'ratio' | 'clearanceVolume' | 'pistonToHead'>> | undefined {
  if (bore === undefined || stroke === undefined || deck === undefined) return undefined;
  if (chamber === undefined || gasket === undefined) return undefined;
  const at = (size: Length) =>
    compressionRatio({
      bore: size,
      stroke,
      chamber,
      deckClearance: deck,
      gasket,
      ...(crown !== undefined && { crown }),
      ...(blockChamber !== undefined && { blockChamber }),
    });
  const [small, large] = [at(bore.min), at(bore.max)];
  const both = <Q extends number>(one: Span<Q>, other: Span<Q>): Span<Q> => ({
    min: Math.min(one.min, other.min) as Q,
    max: Math.max(one.max, other.max) as Q,
  });
  return {
    ratio: both(small.ratio, large.ratio),
    clearanceVolume: both(small.clearanceVolume, large.clearanceVolume),
    pistonToHead: small.pistonToHeadFace,
  };
}

function crankingOf(
  ratio: Span<Ratio>,
  { airPressure }: CompressionData,
  { stroke, rodLength, inletCloses, within = 0 as Angle }: AroundCompression,
): CrankingPressure | undefined {
  if (stroke === undefined || rodLength === undefined || inletCloses === undefined)
    return undefined;
  const past = pastTopOf(inletCloses as CrankPlace) - HALF_TURN;
  // A valve that shuts before the bottom shuts in what one does that shuts as far after it.
  const [early, late] = [past - within, past + within];
  const [one, other] = [Math.abs(early), Math.abs(late)];
  const closes = {
    min: (early < 0 && late > 0 ? 0 : Math.min(one, other)) as Angle,
    max: Math.max(one, other) as Angle,
  };
  return crankingPressure({
    stroke,
    rodLength,
    compressionRatio: ratio,
    inletCloses: closes,
    ...(airPressure !== undefined && { airPressure }),
  });
}

const HALF_TURN = /* @__PURE__ */ degree(180);

function ruleOf({ source, ...rule }: CompressionRuleData): CompressionRule {
  const basis: Basis = { kind: 'specified', ...(source !== undefined && { by: source }) };
  return { ...rule, basis };
}
