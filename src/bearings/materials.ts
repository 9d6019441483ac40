import type { Span } from '../judging/index.js';
import { guardWord } from '../judging/internal.js';
import {
  celsius,
  ppmPerKelvin,
  type Temperature,
  type ThermalExpansion,
} from '../quantities/index.js';

/** What bearings, journals and housings are made of. */
export type BearingMaterial = 'aluminium alloy' | 'steel' | 'grey iron' | 'bronze';

/** Mean linear expansion of a material, with the temperatures it is the mean over. */
export interface MeanExpansion {
  /** The coefficient, or the span of those that sources print [1/K]. */
  readonly coefficient: ThermalExpansion | Span<ThermalExpansion>;
  /** Where the mean begins [K]. */
  readonly from: Temperature;
  /** Where it ends [K]. */
  readonly to: Temperature;
  /** Who says so. */
  readonly source: string;
}

/** Least and most coefficient [ppm/K], the temperatures they are means over [°C], and their sources. */
const TABLE = {
  'aluminium alloy': [
    [21.5, 23.6],
    [20, 100],
    'Callister and Rethwisch, Fundamentals of Materials Science and Engineering, table B.6: cast alloy 356.0 21.5, wrought 6061 23.6; near 20 °C Swyt, J. Res. NIST 99 (1994) 31: 23.1',
  ],
  steel: [
    [11.2, 12.1],
    [0, 200],
    'NIST temperature tutorial, slide 12, AISI 1050: 11.2 for 0 to 100 °C, 11.5 for 20 to 100 °C, 12.1 for 0 to 200 °C',
  ],
  'grey iron': [
    [10.4, 11.4],
    [0, 100],
    'handbook tables: 10.4 (5.8e-6 per °F) for 0 to 100 °C; Callister and Rethwisch, table B.6: 11.4',
  ],
  bronze: [
    [17.3, 18],
    [20, 200],
    'alloy data sheets: C93200 18.0 for 20 to 100 °C, C51000 17.8 for 20 to 200 °C, C54400 17.3 for 20 to 300 °C',
  ],
} as const satisfies Record<
  BearingMaterial,
  readonly [
    coefficient: readonly [number, number],
    range: readonly [number, number],
    source: string,
  ]
>;

const MATERIALS = [
  'aluminium alloy',
  'steel',
  'grey iron',
  'bronze',
] as const satisfies readonly BearingMaterial[];

/**
 * Mean linear expansion of a bearing material, as a span: alloys of one name differ, and so do the
 * tables. Where the alloy is known, its own data sheet is closer.
 *
 * @param material - what the part is made of
 * @returns least and most coefficient, the temperatures they are means over, and who printed them
 * @throws {RebuildInputError} when the material is not in the table
 * @see Source: named in each result
 * @example
 * ```ts
 * const { coefficient } = meanExpansion('bronze');
 * typeof coefficient === 'object' && format(coefficient.max, ppmPerKelvin); // "18.0 ppm/K"
 * ```
 */
export function meanExpansion(material: BearingMaterial): MeanExpansion {
  const [[least, most], [from, to], source] = TABLE[guardWord('material', material, MATERIALS)];
  return {
    coefficient: { min: ppmPerKelvin(least), max: ppmPerKelvin(most) },
    from: celsius(from),
    to: celsius(to),
    source,
  };
}
