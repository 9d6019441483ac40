import type { Basis, Span } from '../judging/index.js';
import { guardWord } from '../judging/internal.js';
import type { Ratio } from '../quantities/index.js';

/** What is on the thread and under the nut. */
export type ThreadCondition =
  | 'dry'
  | 'oiled'
  | 'waxed'
  | 'anti-seize'
  | 'zinc plated'
  | 'cadmium plated'
  | 'phosphated and oiled';

/** How much torque a preload takes. */
export interface NutFactor {
  /** The state of thread and face that it is of. */
  readonly condition: ThreadCondition;
  /** The factor that tables print for it [-]. */
  readonly usual: Ratio;
  /** What it may be on the bolt at hand [-]. */
  readonly span: Span<Ratio>;
  /** Where the numbers come from. */
  readonly basis: Basis;
}

type Row = readonly [usual: number, least: number, most: number, basis: Basis];

// Table 8-15 prints 0.30 for a plain black finish, and the text 0.20 where nothing is known of the finish.
const ROWS: Readonly<Record<ThreadCondition, Row>> = {
  dry: [
    0.2,
    0.18,
    0.3,
    {
      kind: 'published',
      source:
        "Shigley's Mechanical Engineering Design, 9th ed., Table 8-15: 0.30 for plain black steel, 0.20 where the state is not known; a table of measured nut factors: 0.18 to 0.27",
    },
  ],
  oiled: [
    0.18,
    0.1,
    0.26,
    {
      kind: 'published',
      source:
        "Shigley's Mechanical Engineering Design, 9th ed., Table 8-15: 0.18 lubricated; a table of measured nut factors: 0.10 to 0.26 with machine oil",
    },
  ],
  waxed: [
    0.12,
    0.08,
    0.16,
    {
      kind: 'common practice',
      rule: 'about six tenths of the dry torque with wax on the thread and under the nut',
    },
  ],
  'anti-seize': [
    0.12,
    0.09,
    0.16,
    {
      kind: 'published',
      source:
        "Shigley's Mechanical Engineering Design, 9th ed., Table 8-15: 0.12; its span is common practice",
    },
  ],
  'zinc plated': [
    0.2,
    0.17,
    0.35,
    {
      kind: 'published',
      source:
        "Shigley's Mechanical Engineering Design, 9th ed., Table 8-15: 0.20; a table of measured nut factors: 0.17 to 0.35",
    },
  ],
  'cadmium plated': [
    0.16,
    0.15,
    0.19,
    {
      kind: 'published',
      source:
        "Shigley's Mechanical Engineering Design, 9th ed., Table 8-15: 0.16; a table of measured nut factors: 0.15 to 0.19",
    },
  ],
  'phosphated and oiled': [
    0.18,
    0.15,
    0.22,
    {
      kind: 'published',
      source:
        "a table of measured nut factors: 0.15 to 0.22; Shigley's Mechanical Engineering Design, 9th ed., Table 8-15: 0.18 lubricated",
    },
  ],
};

/** Every condition of a thread. */
export const THREAD_CONDITIONS = [
  'dry',
  'oiled',
  'waxed',
  'anti-seize',
  'zinc plated',
  'cadmium plated',
  'phosphated and oiled',
] as const satisfies readonly ThreadCondition[];

/**
 * The nut factor K of a thread: the torque over the preload and the diameter. It holds the friction of the thread and
 * under the nut, which take nine tenths of the torque between them, so that torque is a poor measure of preload.
 * It is a span, and its low end, the slippery one, is what overloads a bolt.
 *
 * A torque that is given for a dry thread overloads an oiled or waxed one: tighten in the state that the maker's figure
 * is given for. It is of clean threads that run freely; rust, dirt and paint are off the scale.
 *
 * @param condition - what is on the thread and under the nut
 * @returns the usual factor, its span, and where they come from
 * @throws {RebuildInputError} when the condition is unknown
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Table 8-15; a table of measured nut factors
 * @example
 * ```ts
 * const { usual, span } = nutFactor('oiled');
 * [span.min, usual, span.max]; // [0.1, 0.18, 0.26]
 * ```
 */
export function nutFactor(condition: ThreadCondition): NutFactor {
  guardWord('condition', condition, THREAD_CONDITIONS);
  const [usual, least, most, basis] = ROWS[condition];
  return {
    condition,
    usual: usual as Ratio,
    span: { min: least as Ratio, max: most as Ratio },
    basis,
  };
}
