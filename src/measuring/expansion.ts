import type { Span } from '../judging/index.js';
import { guardFields, guardText, guardWord, spanOf } from '../judging/internal.js';
import {
  celsius,
  ppmPerKelvin,
  RebuildInputError,
  type Temperature,
  type ThermalExpansion,
} from '../quantities/index.js';
import { linearExpansion, meanOver } from './domains.js';

/** What the parts of an engine and the instruments that measure them are made of. */
export type EngineMaterial =
  | 'aluminium alloy'
  | 'cast piston alloy'
  | 'forged piston alloy'
  | 'magnesium alloy'
  | 'steel'
  | 'martensitic valve steel'
  | 'austenitic valve steel'
  | 'grey iron'
  | 'bronze'
  | 'brass'
  | 'white metal';

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
  'cast piston alloy': [
    [19.5, 21.5],
    [20, 200],
    'data sheet of AlSi12CuMgNi: 19.5 to 20.5 for 20 to 100 °C, 20.5 to 21.5 for 20 to 200 °C',
  ],
  'forged piston alloy': [
    [19.4, 22.3],
    [20, 100],
    'from memory of alloy data sheets: 4032 19.4, 2618 22.3 for 20 to 100 °C',
  ],
  'magnesium alloy': [
    [26, 27],
    [20, 100],
    'tables of alloys: AZ31B 26.0 at 20 °C, AZ91D 27.0; the range is from memory',
  ],
  steel: [
    [11.2, 12.1],
    [0, 200],
    'NIST temperature tutorial, slide 12, AISI 1050: 11.2 for 0 to 100 °C, 11.5 for 20 to 100 °C, 12.1 for 0 to 200 °C',
  ],
  'martensitic valve steel': [
    [12, 13.4],
    [20, 600],
    'data sheets of X45CrSi9-3: 12.0 for 20 to 400 °C, 12.9 for 20 to 600 °C; of two others of its kind 12.5 and 13.4 for 20 to 600 °C',
  ],
  'austenitic valve steel': [
    [16.5, 18.4],
    [20, 760],
    'data sheets of 21-2N: 16.5 for 20 to 400 °C, 18.4 for 20 to 760 °C; of 21-4N: 17.5 for 20 to 500 °C, 18.4 for 20 to 760 °C',
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
  brass: [
    [19.9, 20.5],
    [20, 300],
    'alloy data sheets: C36000 20.5 (11.4e-6 per °F) for 20 to 300 °C; from memory C26000 19.9 for the same',
  ],
  'white metal': [
    [21, 25],
    [20, 100],
    'from memory: tin base 21.0 to 23.0, lead base 24.0 to 25.0 near room temperature',
  ],
} as const satisfies Record<
  EngineMaterial,
  readonly [
    coefficient: readonly [number, number],
    range: readonly [number, number],
    source: string,
  ]
>;

/** Every material of the table. */
export const ENGINE_MATERIALS = /* @__PURE__ */ Object.keys(TABLE) as EngineMaterial[];

/**
 * Mean linear expansion of a material, as a span: alloys of one name differ, and so do the
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
export function meanExpansion(material: EngineMaterial): MeanExpansion {
  const [[least, most], [from, to], source] =
    TABLE[guardWord('material', material, ENGINE_MATERIALS)];
  return {
    coefficient: { min: ppmPerKelvin(least), max: ppmPerKelvin(most) },
    from: celsius(from),
    to: celsius(to),
    source,
  };
}

const EXPANSION = ['coefficient', 'from', 'to', 'source'] as const;

/** Refuses what is no expansion, and gives its coefficient as a span. */
export function guardExpansion(at: string, expansion: MeanExpansion) {
  guardFields(at, expansion, EXPANSION);
  const { from, to, source } = expansion;
  guardText(`${at}.source`, source);
  meanOver(`${at}.from`, from);
  meanOver(`${at}.to`, to);
  if (from > to) throw reversed(at, expansion);
  return { coefficient: guardCoefficient(`${at}.coefficient`, expansion.coefficient), from, to };
}

function guardCoefficient(at: string, value: MeanExpansion['coefficient']): Span<ThermalExpansion> {
  if (typeof value !== 'object' || value === null) return spanOf(linearExpansion(at, value));
  guardFields(at, value, ['min', 'max']);
  linearExpansion(`${at}.min`, value.min);
  linearExpansion(`${at}.max`, value.max);
  if (value.min > value.max) throw reversed(at, value);
  return value;
}

function reversed(parameter: string, value: object): RebuildInputError {
  return new RebuildInputError({
    parameter,
    value,
    expected: 'a lower end that is not above the upper end',
    hint: 'Swap the two ends.',
  });
}
