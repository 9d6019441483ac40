import { card } from '../judging/internal.js';
import { inch, mm } from '../quantities/index.js';
import { threadDiameter, threadPitch } from './domains.js';
import { threadAreas } from './thread-areas.js';
import type { ThreadForm, ThreadSize } from './thread-forms.js';

const d = {
  field: 'diameter',
  meaning: 'diameter of the thread',
  domain: threadDiameter,
  usual: [0.006, 0.02],
} as const;
const P = {
  field: 'pitch',
  meaning: 'pitch of the thread',
  domain: threadPitch,
  usual: [0.0007, 0.0015],
} as const;
// Each diameter is made with every pitch beside it. source: ISO 261, and UNF of ASME B1.1, from memory.
const ISO = {
  d: [mm(8), mm(10), mm(12)],
  P: [mm(1), mm(1.25)],
};
const UNF = {
  d: [inch(7 / 16), inch(1 / 2)],
  P: [inch(1 / 20)],
};
/** A thread of either form; where the formula is of one form, of that alone. */
const ofAny = {
  d: { ...d, made: { metric: ISO.d, inch: UNF.d } },
  P: { ...P, made: { metric: ISO.P, inch: UNF.P } },
} as const;
const ofMetric = {
  d: { ...d, meaning: 'diameter of the metric thread', made: { metric: ISO.d } },
  P: { ...P, made: { metric: ISO.P } },
} as const;
const ofUnified = {
  d: { ...d, meaning: 'diameter of the unified thread', made: { inch: UNF.d } },
  P: { ...P, made: { inch: UNF.P } },
} as const;
const metric = 'ISO 68-1 and ISO 898-1';
const unified = 'ASME B1.1';
type Given = Readonly<Record<'d' | 'P', Parameters<typeof threadAreas>[0]['diameter']>>;
const threadOf =
  (form: ThreadForm) =>
  ({ d, P }: Given): readonly [ThreadSize] => [{ form, diameter: d, pitch: P }];
const isMetric = threadOf('ISO metric');
const isUnified = threadOf('unified');
const refuses = {
  'the pitch is too coarse for the diameter': { with: { d: 0.005, P: 0.002 }, names: 'pitch' },
};
const F = 'f = 0.649519052838329';
const R = 'r = 1.2268693220279547';
const R_UNIFIED = 'r = 1.299038105676658';
const example = { d: mm(12), P: mm(1.75) };

/** Formulas of what a thread leaves of a bolt. */
export const threadCards = {
  threadPitchDiameter: card({
    of: threadAreas,
    name: 'pitch diameter of a thread',
    gives: { symbol: 'd_2', meaning: 'pitch diameter', dimension: 'length' },
    letters: ofAny,
    call: isMetric,
    read: ({ pitchDiameter }) => pitchDiameter,
    where: [F],
    tabled: ['f'],
    expression: 'd - f * P',
    refuses,
    example,
    source: metric,
  }),
  threadMinorDiameter: card({
    of: threadAreas,
    name: 'minor diameter of a metric thread',
    gives: { symbol: 'd_3', meaning: 'diameter at the root', dimension: 'length' },
    letters: ofMetric,
    call: isMetric,
    read: ({ minorDiameter }) => minorDiameter,
    where: [R],
    tabled: ['r'],
    expression: 'd - r * P',
    example,
    source: metric,
  }),
  threadStressDiameter: card({
    of: threadAreas,
    name: 'stress diameter of a metric thread',
    gives: { symbol: 'd_s', meaning: 'stress diameter', dimension: 'length' },
    letters: ofMetric,
    call: isMetric,
    read: ({ stressDiameter }) => stressDiameter,
    where: [F, R],
    tabled: ['f', 'r'],
    expression: 'd - (f + r) / 2 * P',
    example,
    source: metric,
  }),
  threadStressArea: card({
    of: threadAreas,
    name: 'stress area of a metric thread',
    gives: { symbol: 'A_s', meaning: 'stress area', dimension: 'area' },
    letters: ofMetric,
    call: isMetric,
    read: ({ stressArea }) => stressArea,
    where: [F, R],
    tabled: ['f', 'r'],
    expression: 'pi / 4 * (d - (f + r) / 2 * P)^2',
    example,
    source: metric,
  }),
  threadMinorArea: card({
    of: threadAreas,
    name: 'area at the root of a metric thread',
    gives: { symbol: 'A_3', meaning: 'area at the root', dimension: 'area' },
    letters: ofMetric,
    call: isMetric,
    read: ({ minorArea }) => minorArea,
    where: [R],
    tabled: ['r'],
    expression: 'pi / 4 * (d - r * P)^2',
    example,
    source: metric,
  }),
  unifiedMinorDiameter: card({
    of: threadAreas,
    name: 'minor diameter of a unified thread',
    gives: { symbol: 'd_3', meaning: 'diameter at the root', dimension: 'length' },
    letters: ofUnified,
    call: isUnified,
    read: ({ minorDiameter }) => minorDiameter,
    where: [R_UNIFIED],
    tabled: ['r'],
    expression: 'd - r * P',
    source: unified,
  }),
  unifiedStressArea: card({
    of: threadAreas,
    name: 'stress area of a unified thread',
    gives: { symbol: 'A_s', meaning: 'stress area', dimension: 'area' },
    letters: ofUnified,
    call: isUnified,
    read: ({ stressArea }) => stressArea,
    where: [F, R_UNIFIED],
    tabled: ['f', 'r'],
    expression: 'pi / 4 * (d - (f + r) / 2 * P)^2',
    source: unified,
  }),
};
