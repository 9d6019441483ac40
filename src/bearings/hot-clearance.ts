import type { Span } from '../judging/index.js';
import { diameter, diametralClearance, guardFields, guardWord } from '../judging/internal.js';
import type { MeanExpansion } from '../measuring/index.js';
import { gapOf, guardExpansion, partTemperature } from '../measuring/internal.js';
import {
  celsius,
  type Length,
  type Temperature,
  type ThermalExpansion,
} from '../quantities/index.js';
import { shellWall } from './domains.js';

/** A part that warms up. */
export interface WarmPart {
  /** How it grows, for example from `meanExpansion`. */
  readonly expansion: MeanExpansion;
  /** How warm it runs [K]. */
  readonly temperature: Temperature;
}

/** What the journal runs in: a ring that is free to grow, or a bush that its housing holds. */
export type BearingBore =
  | {
      /** The bearing metal is the part itself, or grows with it: an alloy rod on a steel pin. */
      readonly kind: 'free ring';
      /** The ring. */
      readonly ring: WarmPart;
    }
  | {
      /** A bush or a pair of shells so thin beside its housing that its outside follows the housing. */
      readonly kind: 'held bush';
      /** Wall of the bush [m]. */
      readonly wall: Length;
      /** The bush. */
      readonly bush: WarmPart;
      /** The housing that holds it. */
      readonly housing: WarmPart;
    };

/** A bearing that was measured cold. */
export interface BearingToWarm {
  /** Diametral clearance where it was measured [m]. */
  readonly clearance: Length;
  /** Journal diameter there [m]. */
  readonly journal: Length;
  /** How warm the parts were when they were measured; by default 20 °C [K]. */
  readonly measuredAt?: Temperature;
  /** The journal. */
  readonly shaft: WarmPart;
  /** What it runs in. */
  readonly bore: BearingBore;
}

/** The clearance of a warm bearing. */
export interface HotClearance {
  /** Diametral clearance with the coefficients anywhere in their spans; negative is an interference [m]. */
  readonly clearance: Span<Length>;
  /** How much it grew; negative if it shrank [m]. */
  readonly growth: Span<Length>;
  /** The parts that run outside the temperatures that their coefficients are means over. */
  readonly outsideRange: readonly ('shaft' | 'ring' | 'bush' | 'housing')[];
}

const BEARING = ['clearance', 'journal', 'measuredAt', 'shaft', 'bore'] as const;
const RING = ['kind', 'ring'] as const;
const BUSH = ['kind', 'wall', 'bush', 'housing'] as const;
const EVERY_BORE = ['kind', 'ring', 'wall', 'bush', 'housing'] as const;
const PARTS = ['shaft', 'ring', 'bush', 'housing'] as const;
const PART = ['expansion', 'temperature'] as const;

/**
 * Oil clearance of a bearing that runs warm, from its clearance cold. A free ring grows as a whole,
 * its bore with it:
 *
 *     hot = (journal + clearance) * (1 + ringExpansion * (ringTemperature - measuredAt)) - journal * (1 + shaftExpansion * (shaftTemperature - measuredAt))
 *
 * A bush that is pressed into a housing, or gripped in it as shells are, cannot grow outwards past it. Its
 * outside follows the housing and its wall grows inwards, so that a bronze bush in iron closes on its journal:
 *
 *     held = (journal + clearance + 2 * wall) * (1 + housingExpansion * (housingTemperature - measuredAt)) - 2 * wall * (1 + bushExpansion * (bushTemperature - measuredAt)) - journal * (1 + shaftExpansion * (shaftTemperature - measuredAt))
 *
 * Each part is taken as equally warm throughout, the housing as far stiffer than the bush. Held back
 * in its growth, a wall also bulges inwards a little more, by less than half of what it
 * is held back by; for a bronze wall of 3 mm in iron at 100 °C that is about 1 µm of clearance. Load, oil
 * and bolts bend the parts besides. The least end of the span is the one to judge a fit by.
 *
 * @param bearing - clearance and journal as measured, and the parts with how warm they run
 * @returns clearance when warm and by how much it grew, with the parts outside the range of their coefficients [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is
 * reversed, the range of a mean is reversed, or the kind of bore is unknown
 * @see Source: linear expansion; the coefficients name their own
 * @example
 * ```ts
 * const warm = (material: EngineMaterial, degrees: number) => ({
 *   expansion: meanExpansion(material), temperature: celsius(degrees),
 * });
 * const rod = hotOilClearance({
 *   clearance: thou(1.5), journal: inch(1.125), shaft: warm('steel', 90),
 *   bore: { kind: 'free ring', ring: warm('aluminium alloy', 90) },
 * });
 * format(rod.clearance.min, thou); // "2.2 thou"
 * format(rod.clearance.max, thou); // "2.5 thou"
 * ```
 */
export function hotOilClearance(bearing: BearingToWarm): HotClearance {
  guardFields('bearing', bearing, BEARING);
  const { measuredAt: cold = celsius(20) } = bearing;
  const clearance = diametralClearance('clearance', bearing.clearance);
  const journal = diameter('journal', bearing.journal);
  const measuredAt = partTemperature('measuredAt', cold);
  const shaft = guardPart('shaft', bearing.shaft);
  const { opening, parts } = openingOf(bearing.bore, (journal + clearance) as Length, measuredAt);
  const pin = grown(journal, shaft, measuredAt);
  const hot = gapOf(opening, pin);
  return {
    clearance: hot,
    growth: { min: hot.min - clearance, max: hot.max - clearance } as Span<Length>,
    outsideRange: PARTS.filter((name) => {
      const part = { shaft, ...parts }[name];
      return part && (part.temperature < part.from || part.temperature > part.to);
    }),
  };
}

type Part = ReturnType<typeof guardPart>;

/** The bore when warm, and the parts that make it. */
function openingOf(
  bore: BearingBore,
  cold: Length,
  measuredAt: Temperature,
): {
  readonly opening: Span<Length>;
  readonly parts: { readonly [P in 'ring' | 'bush' | 'housing']?: Part };
} {
  guardFields('bore', bore, EVERY_BORE);
  guardWord('bore.kind', bore.kind, ['free ring', 'held bush']);
  if (bore.kind === 'free ring') {
    guardFields('bore', bore, RING);
    const ring = guardPart('bore.ring', bore.ring);
    return { opening: grown(cold, ring, measuredAt), parts: { ring } };
  }
  guardFields('bore', bore, BUSH);
  const wall = shellWall('bore.wall', bore.wall);
  const bush = guardPart('bore.bush', bore.bush);
  const housing = guardPart('bore.housing', bore.housing);
  const outside = grown((cold + 2 * wall) as Length, housing, measuredAt);
  const walls = grown((2 * wall) as Length, bush, measuredAt);
  return { opening: gapOf(outside, walls), parts: { bush, housing } };
}

/** A length that has warmed up, with the coefficient anywhere in its span. */
function grown(size: Length, { coefficient, temperature }: Part, from: Temperature): Span<Length> {
  const warmed = (a: ThermalExpansion) => size * (1 + a * (temperature - from));
  const [one, other] = [warmed(coefficient.min), warmed(coefficient.max)];
  return { min: Math.min(one, other), max: Math.max(one, other) } as Span<Length>;
}

function guardPart(at: string, part: WarmPart) {
  guardFields(at, part, PART);
  return {
    ...guardExpansion(`${at}.expansion`, part.expansion),
    temperature: partTemperature(`${at}.temperature`, part.temperature),
  };
}
