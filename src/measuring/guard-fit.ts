import type { Basis, Limits, SizeOrSpan, Span } from '../judging/index.js';
import {
  guardBasis,
  guardFields,
  guardLimits,
  guardList,
  guardSpan,
  guardText,
  guardWhole,
} from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import type { FitRequest } from './fit-types.js';
import { fittedSize, stackedSize } from './stack-domains.js';

/** A place or a part with the span of its size. */
export interface FitSizes {
  readonly name: string;
  readonly span: Span<Length>;
  readonly current?: string;
}

/** A request once it is sound. */
interface SoundFit {
  readonly places: readonly FitSizes[];
  readonly parts: readonly FitSizes[];
  readonly times: number;
  readonly limits: Limits<Length>;
  readonly basis: Basis;
}

const REQUEST = ['places', 'parts', 'times', 'limits', 'basis'] as const;
const PLACE = ['name', 'room', 'current'] as const;
const PART = ['name', 'size'] as const;
const MOST_PLACES = 32;
const MOST_PARTS = 64;

/** Refuses a request that no choice can answer. */
export function guardFit(request: FitRequest): SoundFit {
  guardFields('request', request, REQUEST);
  const { times = 1, basis = { kind: 'specified' } } = request;
  guardList('places', request.places, 1, 'place');
  guardMost('places', request.places, MOST_PLACES);
  guardList('parts', request.parts, request.places.length, 'parts, one for each place');
  guardMost('parts', request.parts, MOST_PARTS);
  const places = request.places.map((place, i) => {
    guardFields(`places[${i}]`, place, PLACE);
    const { name, current } = place;
    if (current !== undefined) guardText(`places[${i}].current`, current);
    return { ...sized(`places[${i}]`, name, 'room', place.room), ...(current && { current }) };
  });
  const parts = request.parts.map((part, i) => {
    guardFields(`parts[${i}]`, part, PART);
    return sized(`parts[${i}]`, part.name, 'size', part.size);
  });
  guardOwnNames('places', places);
  guardOwnNames('parts', parts);
  guardCurrent(places, parts);
  return {
    places,
    parts,
    times: guardWhole('times', times, [1, 2], 'A pair of shells takes its wall twice.'),
    limits: guardLimits('limits', request.limits, stackedSize, 'length'),
    basis: guardBasis('basis', basis),
  };
}

function sized(at: string, name: string, field: string, size: SizeOrSpan<Length>): FitSizes {
  return {
    name: guardText(`${at}.name`, name),
    span: guardSpan(`${at}.${field}`, size, fittedSize),
  };
}

function guardMost(parameter: string, list: readonly unknown[], most: number): void {
  if (list.length <= most) return;
  throw new RebuildInputError({
    parameter,
    value: list,
    shown: `a list of ${list.length}`,
    expected: `at most ${most} ${parameter}`,
    hint: 'Leave out those that are far too large or small.',
  });
}

function guardOwnNames(list: string, named: readonly FitSizes[]): void {
  const names = named.map(({ name }) => name);
  const twice = names.findIndex((name, i) => names.indexOf(name) < i);
  if (twice < 0) return;
  throw new RebuildInputError({
    parameter: `${list}[${twice}].name`,
    value: names[twice],
    expected: 'a name of its own',
    hint: 'Tell the parts apart as they are marked on the bench.',
  });
}

function guardCurrent(places: readonly FitSizes[], parts: readonly FitSizes[]): void {
  const held = places.map(({ current }) => current);
  for (const [i, current] of held.entries()) {
    if (current === undefined) continue;
    const isKnown = parts.some(({ name }) => name === current);
    if (isKnown && held.indexOf(current) === i) continue;
    throw new RebuildInputError({
      parameter: `places[${i}].current`,
      value: current,
      expected: isKnown ? 'a part that is in no other place' : 'the name of one of the parts',
      hint: isKnown
        ? 'One part cannot be in two places.'
        : 'List it among the parts, or leave it out.',
    });
  }
}
