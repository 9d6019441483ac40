import type { SizeOrSpan, Span } from '../../judging/index.js';
import { guardLayout, spanOf } from '../../judging/internal.js';
import type { DiameterReading } from '../../measuring/index.js';
import type { Length } from '../../quantities/index.js';
import { largestOf, smallestOf } from '../../quantities/internal.js';
import { isSameData } from '../../reading/index.js';
import { MEASURED, PLACES } from '../checks/places.js';
import type { Fault } from '../faults.js';
import { shedLayout } from '../layouts.js';
import { SECTIONS, type Section } from '../sections.js';
import type { Shed } from '../shed.js';
import { coreDifferences } from './diff-cores.js';
import type { MachinedPlace, PartDifference, ShedDifference } from './diff-types.js';
import { doneSince, fieldsThatDiffer } from './fields-that-differ.js';

/** Readings that differ by more are not of one surface: a fifth of the smallest step of the trade, and more than wear on the shelf or a micrometer explains [m]. */
const CUT = 0.00005;

/**
 * What changed between two files of one shed: the parts that came and went, what was measured, read again or cut to
 * another size, what the histories say was done, faults that came or went, counts, and names; and which engines not taken
 * apart came, went, were taken apart or are in another condition. A part is known by its
 * name; where a name is gone and a new one has all the same fields, the part was renamed. A size that differs by more than
 * 0.05 mm counts as cut to another size, a rule of thumb; a smaller difference as read again.
 *
 * @param older - what `readShed` gave for the older file
 * @param newer - the same for the newer one
 * @returns what differs; nothing where the two hold the same, however they are written
 * @throws {RebuildInputError} when a shed is not what `readShed` gives
 * @example
 * ```ts
 * const older = readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 *   heads: [{ name: 'head A' }],
 * });
 * const newer = { ...older, heads: [{ name: 'head A', flatness: inch(0.002) }] };
 * const [head] = diffSheds(older, newer).parts;
 * head?.kind === 'changed' && head.measured; // ["flatness"]
 * ```
 */
export function diffSheds(older: Shed, newer: Shed): ShedDifference {
  guardLayout('older', older, shedLayout, 'readShed');
  guardLayout('newer', newer, shedLayout, 'readShed');
  const of = (section: Section, toBuy: boolean) =>
    differencesIn(section, toBuy, partsOf(older, section, toBuy), partsOf(newer, section, toBuy));
  const parts = [false, true].flatMap((toBuy) => SECTIONS.flatMap((section) => of(section, toBuy)));
  return {
    parts,
    cores: coreDifferences(older, newer, parts),
    fields: fieldsThatDiffer(withoutParts(older), withoutParts(newer)),
  };
}

/** A part as data: whatever fields its section has. */
interface AnyPart {
  readonly name: string;
  readonly [field: string]: unknown;
}

function partsOf(shed: Shed, section: Section, toBuy: boolean): readonly AnyPart[] {
  const parts = (toBuy ? shed.toBuy?.[section] : shed[section]) ?? [];
  return parts as unknown as readonly AnyPart[];
}

function withoutParts({ asWritten, toBuy, cores, ...shed }: Shed): object {
  return Object.fromEntries(
    Object.entries(shed).filter(([key]) => !SECTIONS.some((section) => section === key)),
  );
}

function differencesIn(
  section: Section,
  toBuy: boolean,
  was: readonly AnyPart[],
  is: readonly AnyPart[],
): readonly PartDifference[] {
  const names = (parts: readonly AnyPart[]) => new Map(parts.map((part) => [part.name, part]));
  const [before, after] = [names(was), names(is)];
  const left = was.filter(({ name }) => !after.has(name));
  const renamed = new Map<AnyPart, AnyPart>();
  for (const part of is) {
    if (before.has(part.name)) continue;
    const at = left.findIndex((old) => isSameData({ ...old, name: '' }, { ...part, name: '' }));
    if (at >= 0) renamed.set(part, ...(left.splice(at, 1) as [AnyPart]));
  }
  const told = (kind: 'come' | 'gone', part: AnyPart): PartDifference => ({
    kind,
    section,
    name: part.name,
    count: countOf(section, part),
    toBuy,
  });
  return [
    ...left.map((part) => told('gone', part)),
    ...is.flatMap((part) => {
      const old = before.get(part.name) ?? renamed.get(part);
      if (old === undefined) return [told('come', part)];
      return isSameData(old, part) ? [] : [changed(section, toBuy, old, part)];
    }),
  ];
}

const countField = (section: Section) => (section === 'shells' ? 'pairs' : 'count');
const countOf = (section: Section, part: AnyPart) => Number(part[countField(section)] ?? 1);

function changed(section: Section, toBuy: boolean, old: AnyPart, part: AnyPart): PartDifference {
  const [was, is] = [sizesOf(section, old), sizesOf(section, part)];
  const again = [...is].filter(([place, size]) => {
    const before = was.get(place);
    return before !== undefined && !isSameData(before.data, size.data);
  });
  const cut = again.flatMap(([place, { span: after }]): readonly MachinedPlace[] => {
    const before = was.get(place)?.span;
    return before && isMachined(section, part, place) && isCut(before, after)
      ? [{ place, before, after }]
      : [];
  });
  const [faultsBefore, faultsNow] = [faultsIn(old, section), faultsIn(part, section)];
  const [count, now] = [countOf(section, old), countOf(section, part)];
  return {
    kind: 'changed',
    section,
    name: part.name,
    ...(old.name !== part.name && { renamedFrom: old.name }),
    toBuy,
    measured: [...is.keys()].filter((place) => !was.has(place)),
    notKnown: [...was.keys()].filter((place) => !is.has(place)),
    readAgain: again.map(([place]) => place).filter((at) => !cut.some(({ place }) => place === at)),
    machined: cut,
    done: doneSince(old, part),
    faultsCome: faultsNow.filter((fault) => !faultsBefore.includes(fault)),
    faultsGone: faultsBefore.filter((fault) => !faultsNow.includes(fault)),
    ...(count !== now && { count: { before: count, after: now } }),
    fields: fieldsThatDiffer(plain(section, old), plain(section, part)),
  };
}

interface Size {
  readonly data: unknown;
  readonly span: Span<Length>;
}

/** Everything that is measured of a part, by its name on the bench. */
function sizesOf(section: Section, part: AnyPart): ReadonlyMap<string, Size> {
  const sizes = new Map<string, Size>();
  const add = (name: string, data: unknown, holds: string) => {
    if (data === undefined || (Array.isArray(data) && data.length === 0)) return;
    const diameters = () => (data as readonly DiameterReading[]).map(({ diameter }) => diameter);
    const span =
      holds === 'readings'
        ? { min: smallestOf(diameters()), max: largestOf(diameters()) }
        : spanOf(data as SizeOrSpan<Length>);
    sizes.set(name, { data, span });
  };
  for (const { field, holds } of MEASURED[section]) add(field, part[field], holds);
  for (const { list, field, holds } of PLACES[section]) {
    for (const place of placesIn(part, list)) add(place.name, place[field], holds);
  }
  return sizes;
}

const placesIn = (part: AnyPart, list: string): readonly AnyPart[] =>
  (part[list] as readonly AnyPart[] | undefined) ?? [];

/** Whether it is a journal, bore or housing: what a shop cuts to a size. */
const isMachined = (section: Section, part: AnyPart, place: string): boolean =>
  PLACES[section]
    .filter(({ field }) => field === 'readings' || field === 'housingBore')
    .some(({ list }) => placesIn(part, list).some(({ name }) => name === place));

const isCut = (before: Span<Length>, after: Span<Length>): boolean =>
  Math.abs(after.min - before.min) > CUT && Math.abs(after.max - before.max) > CUT;

function faultsIn(part: AnyPart, section: Section): readonly Fault[] {
  const places = PLACES[section].flatMap(({ list }) => placesIn(part, list));
  const all = [part, ...places].flatMap(({ faults }) => (faults ?? []) as readonly Fault[]);
  return [...new Set(all)];
}

/** The part without what is told of it in other ways. */
function plain(section: Section, part: AnyPart): object {
  const told = ['name', 'faults', 'history', countField(section)];
  const measured = MEASURED[section].map(({ field }) => field);
  const lists = PLACES[section].map(({ list, field }) => {
    const places = placesIn(part, list).map(({ faults, ...place }) => ({ ...place, [field]: 0 }));
    return [list, part[list] === undefined ? undefined : places] as const;
  });
  const all = Object.entries({ ...part, ...Object.fromEntries(lists) });
  return Object.fromEntries(all.filter(([key]) => ![...told, ...measured].includes(key)));
}
