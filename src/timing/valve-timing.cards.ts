import { card, defined, everyStep } from '../judging/internal.js';
import { type Angle, degree } from '../quantities/index.js';
import { turnFromCentre } from './domains.js';
import { valveTiming } from './valve-timing.js';

const at = (field: string, written: string, meaning: string, usual: readonly [number, number]) =>
  ({
    field: `${field}.angle`,
    written,
    meaning,
    domain: turnFromCentre,
    usual,
    made: everyStep(degree, 3, 57, 1).filter((angle) => angle >= usual[0] && angle <= usual[1]),
  }) as const;
const inlet = {
  a: at('inletOpens', 'inletOpens', 'inlet opens before top', [0.05, 0.4]),
  b: at('inletCloses', 'inletCloses', 'inlet closes after bottom', [0.3, 1]),
} as const;
const exhaust = {
  c: at('exhaustOpens', 'exhaustOpens', 'exhaust opens before bottom', [0.3, 1]),
  d: at('exhaustCloses', 'exhaustCloses', 'exhaust closes after top', [0.05, 0.4]),
} as const;
const inletAt = (a: Angle, b: Angle) => ({
  inletOpens: { angle: a, before: 'top' } as const,
  inletCloses: { angle: b, after: 'bottom' } as const,
});
const exhaustAt = (c: Angle, d: Angle) => ({
  exhaustOpens: { angle: c, before: 'bottom' } as const,
  exhaustCloses: { angle: d, after: 'top' } as const,
});
const CENTRELINES = [
  defined('m_i = (180 deg + b - a) / 2', 'middle of the inlet after top', 'inletCentreline'),
  defined('m_e = (180 deg + c - d) / 2', 'middle of the exhaust before top', 'exhaustCentreline'),
] as const;
const geometry = 'geometry; definitions as cam makers print them';

/** Formulas of valve timing. */
export const valveTimingCards = {
  inletDuration: card({
    of: valveTiming,
    name: 'duration of the inlet',
    gives: { symbol: 'delta_i', meaning: 'turn with the inlet open', dimension: 'angle' },
    letters: inlet,
    call: ({ a, b }) => [inletAt(a, b)],
    read: (timing) => timing.inlet?.duration,
    expression: 'a + 180 deg + b',
    source: geometry,
  }),
  exhaustDuration: card({
    of: valveTiming,
    name: 'duration of the exhaust',
    gives: { symbol: 'delta_e', meaning: 'turn with the exhaust open', dimension: 'angle' },
    letters: exhaust,
    call: ({ c, d }) => [exhaustAt(c, d)],
    read: (timing) => timing.exhaust?.duration,
    expression: 'c + 180 deg + d',
    source: geometry,
  }),
  valveOverlap: card({
    of: valveTiming,
    name: 'overlap of the valves',
    gives: { symbol: 'o', meaning: 'turn with both valves open', dimension: 'angle' },
    letters: { a: inlet.a, d: exhaust.d },
    call: ({ a, d }) => [
      {
        inletOpens: { angle: a, before: 'top' } as const,
        exhaustCloses: { angle: d, after: 'top' } as const,
      },
    ],
    read: ({ overlap }) => overlap,
    expression: 'a + d',
    source: geometry,
  }),
  inletCentreline: card({
    of: valveTiming,
    name: 'centreline of the inlet',
    gives: { symbol: 'm_i', meaning: 'middle of the inlet after top', dimension: 'angle' },
    letters: inlet,
    call: ({ a, b }) => [inletAt(a, b)],
    read: (timing) => timing.inlet?.centreline,
    expression: '(180 deg + b - a) / 2',
    source: geometry,
  }),
  exhaustCentreline: card({
    of: valveTiming,
    name: 'centreline of the exhaust',
    gives: { symbol: 'm_e', meaning: 'middle of the exhaust before top', dimension: 'angle' },
    letters: exhaust,
    call: ({ c, d }) => [exhaustAt(c, d)],
    read: (timing) => timing.exhaust?.centreline,
    expression: '(180 deg + c - d) / 2',
    source: geometry,
  }),
  lobeSeparation: card({
    of: valveTiming,
    name: 'separation of the lobes',
    gives: { symbol: 'sigma', meaning: 'turn of the cam between its lobes', dimension: 'angle' },
    letters: { ...inlet, ...exhaust },
    call: ({ a, b, c, d }) => [{ ...inletAt(a, b), ...exhaustAt(c, d) }],
    read: (timing) => timing.lobeSeparation,
    where: CENTRELINES,
    expression: '(m_i + m_e) / 2',
    example: { a: degree(10), b: degree(40), c: degree(45), d: degree(5) },
    source: geometry,
  }),
  camAdvance: card({
    of: valveTiming,
    name: 'advance of the cam',
    gives: {
      symbol: 'epsilon',
      meaning: 'advance of the cam from even overlap',
      dimension: 'angle',
    },
    letters: { ...inlet, ...exhaust },
    call: ({ a, b, c, d }) => [{ ...inletAt(a, b), ...exhaustAt(c, d) }],
    read: (timing) => timing.camAdvance,
    where: CENTRELINES,
    expression: '(m_e - m_i) / 2',
    example: { a: degree(10), b: degree(40), c: degree(45), d: degree(5) },
    source: geometry,
  }),
};
