import type { Span } from '../../judging/index.js';
import { diameter, guardFields, guardTruth } from '../../judging/internal.js';
import type { Length, TemperatureDifference, ThermalExpansion } from '../../quantities/index.js';
import { temperaturesApart } from '../domains.js';
import { guardExpansion, type MeanExpansion } from '../expansion.js';
import type { Contributor } from './contributor.js';

/** How warm a part and the instrument on it may be. */
export interface WarmthOfReading {
  /** About the size that is read [m]. */
  readonly size: Length;
  /** How far the part and the instrument may be apart in temperature [K]. */
  readonly apart: TemperatureDifference;
  /** How far both may be from 20 °C [K]. */
  readonly from20C: TemperatureDifference;
  /** How the part grows, for example from `meanExpansion`. */
  readonly part: MeanExpansion;
  /** How the instrument grows, most often as steel. */
  readonly instrument: MeanExpansion;
  /** Whether sizes are corrected to 20 °C, as `sizeAt20C` does; by default they are not. */
  readonly corrected?: boolean;
}

const WARMTH = ['size', 'apart', 'from20C', 'part', 'instrument', 'corrected'] as const;

/**
 * What the warmth of a part and its instrument adds: that they may differ, and that away from 20 °C they
 * do not grow alike. If sizes are corrected, only the spread of both coefficients is left of the latter.
 */
export function warmthContributors(at: string, warmth: WarmthOfReading): readonly Contributor[] {
  guardFields(at, warmth, WARMTH);
  const size = diameter(`${at}.size`, warmth.size);
  const apart = temperaturesApart(`${at}.apart`, warmth.apart);
  const from20C = temperaturesApart(`${at}.from20C`, warmth.from20C);
  const part = guardExpansion(`${at}.part`, warmth.part).coefficient;
  const instrument = guardExpansion(`${at}.instrument`, warmth.instrument).coefficient;
  const { corrected = false } = warmth;
  guardTruth(`${at}.corrected`, corrected);
  const kind = 'rectangular';
  const unlike = Math.max(part.max - instrument.min, instrument.max - part.min);
  const shifts = corrected
    ? [
        { name: 'expansion of the part', halfWidth: spreadOf(part) },
        { name: 'expansion of the instrument', halfWidth: spreadOf(instrument) },
      ]
    : [{ name: 'expansion unlike that of the instrument', halfWidth: unlike }];
  return [
    {
      name: 'part and instrument not equally warm',
      kind,
      halfWidth: apart,
      sensitivity: size * Math.max(part.max, instrument.max),
      common: true,
    },
    ...shifts.map(
      (shift) => ({ ...shift, kind, sensitivity: size * from20C, common: true }) as const,
    ),
  ];
}

/** Half of a span. */
const spreadOf = ({ min, max }: Span<ThermalExpansion>): number => (max - min) / 2;
