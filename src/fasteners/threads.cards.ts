import { card, defined } from '../judging/internal.js';
import { inch, mm, type UnitSystem } from '../quantities/index.js';
import { threadDiameter, threadPitch } from './domains.js';
import { threadAreas } from './thread-areas.js';
import type { ThreadForm, ThreadSize } from './thread-forms.js';
import { type ThreadSeries, threadsIn } from './thread-series.js';

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
const sizesIn = (series: readonly ThreadSeries[]) =>
  series
    .flatMap(threadsIn)
    .filter(({ diameter }) => diameter >= d.usual[0] && diameter <= d.usual[1])
    .map(({ diameter, pitch }) => ({ d: diameter, P: pitch }));
const SIZES = {
  metric: sizesIn(['metric coarse', 'metric fine']),
  inch: sizesIn(['UNC', 'UNF']),
} as const;
const each = (sizes: readonly number[]) => [...new Set(sizes)].sort((least, most) => least - most);
/** The letters of threads that are made in these systems, and which diameter goes with which pitch. */
const madeIn = (systems: readonly UnitSystem[], meaning: string = d.meaning) => {
  const listed = <T>(list: (sizes: (typeof SIZES)[UnitSystem]) => T) =>
    Object.fromEntries(systems.map((system) => [system, list(SIZES[system])]));
  return {
    letters: {
      d: { ...d, meaning, made: listed((sizes) => each(sizes.map((size) => size.d))) },
      P: { ...P, made: listed((sizes) => each(sizes.map((size) => size.P))) },
    },
    madeTogether: listed((sizes) => sizes),
  };
};
/** Threads of either form; where the formula is of one form, of that alone. */
const ofAny = madeIn(['metric', 'inch']);
const ofMetric = madeIn(['metric'], 'diameter of the metric thread');
const ofUnified = madeIn(['inch'], 'diameter of the unified thread');
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
const F = defined('f = 3 * sqrt(3) / 8', 'outside less pitch diameter, over the pitch');
const R = defined('r = 17 * sqrt(3) / 24', 'outside less root diameter, over the pitch');
const R_UNIFIED = defined('r = 3 * sqrt(3) / 4', 'outside less root diameter, over the pitch');
const example = { d: mm(12), P: mm(1.75) };
/** 3/8-16 UNC. */
const exampleUnified = { d: inch(3 / 8), P: inch(1 / 16) };

/** Formulas of what a thread leaves of a bolt. */
export const threadCards = {
  threadPitchDiameter: card({
    of: threadAreas,
    name: 'pitch diameter of a thread',
    gives: { symbol: 'd_2', meaning: 'pitch diameter', dimension: 'length' },
    ...ofAny,
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
    ...ofMetric,
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
    ...ofMetric,
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
    ...ofMetric,
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
    ...ofMetric,
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
    ...ofUnified,
    call: isUnified,
    read: ({ minorDiameter }) => minorDiameter,
    where: [R_UNIFIED],
    tabled: ['r'],
    expression: 'd - r * P',
    example: exampleUnified,
    source: unified,
  }),
  unifiedStressArea: card({
    of: threadAreas,
    name: 'stress area of a unified thread',
    gives: { symbol: 'A_s', meaning: 'stress area', dimension: 'area' },
    ...ofUnified,
    call: isUnified,
    read: ({ stressArea }) => stressArea,
    where: [F, R_UNIFIED],
    tabled: ['f', 'r'],
    expression: 'pi / 4 * (d - (f + r) / 2 * P)^2',
    example: exampleUnified,
    source: unified,
  }),
};
