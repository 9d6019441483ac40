import { card } from '../judging/internal.js';
import { mm } from '../quantities/index.js';
import { threadDiameter, threadPitch } from './domains.js';
import { threadAreas } from './thread-areas.js';

const source = 'ISO 68-1 and ISO 898-1';
const letters = {
  d: {
    field: 'diameter',
    meaning: 'diameter of an ISO metric thread',
    domain: threadDiameter,
    usual: [0.006, 0.02],
    // source: ISO 261, from memory: each of these has both pitches below.
    made: [0.008, 0.01, 0.012],
  },
  P: {
    field: 'pitch',
    meaning: 'pitch',
    domain: threadPitch,
    usual: [0.0007, 0.0015],
    made: [0.001, 0.00125],
  },
} as const;
type Given = Readonly<Record<'d' | 'P', Parameters<typeof threadAreas>[0]['diameter']>>;
const call = ({ d, P }: Given) =>
  [{ form: 'ISO metric', diameter: d, pitch: P }] as Parameters<typeof threadAreas>;
const refuses = {
  'the pitch is too coarse for the diameter': { with: { d: 0.005, P: 0.002 }, names: 'pitch' },
};
const F = 'f = 0.649519052838329';
const R = 'r = 1.2268693220279547';

/** Formulas of what a thread leaves of a bolt. */
export const threadCards = {
  threadPitchDiameter: card({
    of: threadAreas,
    name: 'pitch diameter of a thread',
    gives: { symbol: 'd_2', meaning: 'pitch diameter', dimension: 'length' },
    letters,
    call,
    read: ({ pitchDiameter }) => pitchDiameter,
    where: [F],
    tabled: ['f'],
    expression: 'd - f * P',
    refuses,
    example: { d: mm(12), P: mm(1.75) },
    source,
  }),
  threadMinorDiameter: card({
    of: threadAreas,
    name: 'minor diameter of a thread',
    gives: { symbol: 'd_3', meaning: 'diameter at the root', dimension: 'length' },
    letters,
    call,
    read: ({ minorDiameter }) => minorDiameter,
    where: [R],
    tabled: ['r'],
    expression: 'd - r * P',
    example: { d: mm(12), P: mm(1.75) },
    source,
  }),
  threadStressDiameter: card({
    of: threadAreas,
    name: 'stress diameter of a thread',
    gives: { symbol: 'd_s', meaning: 'stress diameter', dimension: 'length' },
    letters,
    call,
    read: ({ stressDiameter }) => stressDiameter,
    where: [F, R],
    tabled: ['f', 'r'],
    expression: 'd - (f + r) / 2 * P',
    example: { d: mm(12), P: mm(1.75) },
    source,
  }),
  threadStressArea: card({
    of: threadAreas,
    name: 'stress area of a thread',
    gives: { symbol: 'A_s', meaning: 'stress area', dimension: 'area' },
    letters,
    call,
    read: ({ stressArea }) => stressArea,
    where: [F, R],
    tabled: ['f', 'r'],
    expression: 'pi / 4 * (d - (f + r) / 2 * P)^2',
    example: { d: mm(12), P: mm(1.75) },
    source,
  }),
  threadMinorArea: card({
    of: threadAreas,
    name: 'area at the root of a thread',
    gives: { symbol: 'A_3', meaning: 'area at the root', dimension: 'area' },
    letters,
    call,
    read: ({ minorArea }) => minorArea,
    where: [R],
    tabled: ['r'],
    expression: 'pi / 4 * (d - r * P)^2',
    example: { d: mm(12), P: mm(1.75) },
    source,
  }),
};
