import { type FitRequest, mm, type StackContributor, selectFit, stackUp } from 'crankwright';
import { calls, refused } from './calls.js';

const contributors: readonly StackContributor[] = [
  {
    name: 'bore',
    size: { min: mm(87.2), max: mm(87.25) },
    nominal: mm(87.22),
    distribution: { kind: 'triangular' },
  },
  { name: 'ring', size: mm(1), tolerance: mm(0.01), distribution: { kind: 'normal', sigmas: 3 } },
  { name: 'piston', size: { min: mm(87.1), max: mm(87.15) }, sensitivity: -1 },
];
const [bore] = contributors;
const limits = { min: mm(1), max: mm(1.2) };
const worst = { kind: 'worst case' } as const;
const random = { kind: 'Monte Carlo', seed: 1, draws: 1_000, shares: [0.1, 0.9], limits } as const;

const request: FitRequest = {
  places: [
    { name: 'cylinder 1', room: mm(87.21), current: 'B' },
    { name: 'cylinder 2', room: { min: mm(87.23), max: mm(87.24) } },
  ],
  parts: [
    { name: 'A', size: mm(87.2) },
    { name: 'B', size: { min: mm(87.17), max: mm(87.18) } },
    { name: 'C', size: mm(87.19) },
  ],
  times: 1,
  limits: { min: mm(0.025), max: mm(0.045) },
  basis: { kind: 'specified', by: 'the manual' },
};
const { places, parts } = request;
const [place] = places;
const [part] = parts;
const many = (count: number, of: object) =>
  Array.from({ length: count }, (_, i) => ({ ...of, name: `${i}` }));

export const stackCalls = {
  stackUp: calls(stackUp, {
    sound: [
      [contributors, { ...worst, limits }],
      [contributors, { kind: 'root sum square', sigmas: 2, limits: { max: mm(1.2) } }],
      [contributors, random],
    ],
    provoked: {
      'there is no contributor': refused('contributors', [], worst),
      'a span is reversed': refused(
        'contributors[0].size',
        [{ ...bore, size: { min: mm(2), max: mm(1) } }],
        worst,
      ),
      'a tolerance is negative': refused(
        'contributors[0].tolerance',
        [{ name: 'a', size: mm(1), tolerance: mm(-1) }],
        worst,
      ),
      'a tolerance stands beside a span': refused(
        'contributors[0].tolerance',
        [{ ...bore, tolerance: mm(1) }],
        worst,
      ),
      'a nominal lies outside its span': refused(
        'contributors[0].nominal',
        [{ ...bore, nominal: mm(80) }],
        worst,
      ),
      'the distribution is unknown': refused(
        'contributors[0].distribution.kind',
        [{ ...bore, distribution: { kind: 'even' } }],
        worst,
      ),
      'the method is unknown': refused('method.kind', contributors, { kind: 'guess' }),
      'the limits have no bound': refused('method.limits', contributors, { ...worst, limits: {} }),
      'the limits are reversed': refused('method.limits', contributors, {
        ...worst,
        limits: { min: mm(2), max: mm(1) },
      }),
      'the shares are not in order': refused('method.shares[1]', contributors, {
        ...random,
        shares: [0.9, 0.1],
      }),
      'the seed is no whole number': refused('method.seed', contributors, { ...random, seed: 0.5 }),
    },
  }),
  selectFit: calls(selectFit, {
    sound: [
      [request],
      [{ places: places.slice(0, 1), parts, limits: { min: mm(0.02) }, times: 2 }],
    ],
    provoked: {
      'a value is not finite': refused('places[0].room', {
        ...request,
        places: [{ ...place, room: Number.NaN }],
      }),
      'out of range': refused('parts[0].size', {
        ...request,
        parts: [{ ...part, size: 87.2 }, ...parts.slice(1)],
      }),
      'a span is reversed': refused('places[0].room', {
        ...request,
        places: [{ ...place, room: { min: mm(88), max: mm(87) } }],
      }),
      'there is no place': refused('places', { ...request, places: [] }),
      'there are fewer parts than places': refused('parts', { ...request, parts: [part] }),
      'there are too many': refused('parts', { ...request, parts: many(65, { size: mm(87) }) }),
      'a name is not its own': refused('parts[1].name', { ...request, parts: [part, part] }),
      'a current part is not among the parts': refused('places[0].current', {
        ...request,
        places: [{ ...place, current: 'Z' }],
      }),
      'a part is in two places': refused('places[1].current', {
        ...request,
        places: places.map((one) => ({ ...one, current: 'A' })),
      }),
      'the part is neither taken once nor twice': refused('times', { ...request, times: 3 }),
      'the limits have no bound': refused('limits', { ...request, limits: {} }),
      'the limits are reversed': refused('limits', {
        ...request,
        limits: { min: mm(2), max: mm(1) },
      }),
      'the basis is none': refused('basis.kind', { ...request, basis: { kind: 'hearsay' } }),
    },
  }),
};
