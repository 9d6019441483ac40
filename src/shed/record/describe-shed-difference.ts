import type { Wording } from '../../judging/index.js';
import { describeSpan, guardLayout, guardWording } from '../../judging/internal.js';
import { shedDifferenceLayout } from '../layouts.js';
import type { Condition } from '../part.js';
import { named, wordFor } from '../section-words.js';
import type { CoreDifference, PartDifference, ShedDifference } from './diff-types.js';

/**
 * Describes what changed between two files of a shed, one part a line.
 *
 * @param difference - what `diffSheds` gave
 * @param wording - the units to print in
 * @returns one sentence for each part and each engine not taken apart that differs, and one for the other fields; none if nothing differs
 * @throws {RebuildInputError} when the difference is not what `diffSheds` gives, or the unit system is unknown
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
 * describeShedDifference(diffSheds(older, newer), { units: 'inch' });
 * // ["head A (head): flatness was measured."]
 * ```
 */
export function describeShedDifference(
  difference: ShedDifference,
  wording: Wording,
): readonly string[] {
  guardLayout('difference', difference, shedDifferenceLayout, 'diffSheds');
  guardWording(wording);
  const { parts, cores, fields } = difference;
  return [
    ...parts.map((part) => describePart(part, wording)),
    ...cores.map(describeCore),
    ...(fields.length === 0 ? [] : [`Changed in the file: ${fields.join(', ')}.`]),
  ];
}

function describePart(part: PartDifference, wording: Wording): string {
  const { section, name, toBuy } = part;
  const word = `${wordFor(section)}${toBuy ? ', to buy' : ''}`;
  if (part.kind !== 'changed') {
    const what = part.kind === 'come' ? 'came' : part.count === 1 ? 'is gone' : 'are gone';
    return `${named(name, part.count)} (${word}) ${what}.`;
  }
  const { renamedFrom, count, machined, done, faultsCome, faultsGone } = part;
  const cut = machined.map(
    ({ place, before, after }) =>
      `${place} was cut from ${describeSpan(before, 'length', wording.units)} to ${describeSpan(after, 'length', wording.units)}`,
  );
  const were = (all: readonly string[], what: string) =>
    all.length === 0 ? [] : [`${all.join(', ')} ${all.length === 1 ? 'was' : 'were'} ${what}`];
  const all = [
    ...(renamedFrom === undefined ? [] : [`it was called ${renamedFrom}`]),
    ...(count === undefined ? [] : [`there were ${count.before}, now ${count.after}`]),
    ...(done.length === 0 ? [] : [`done: ${done.join('; ')}`]),
    ...cut,
    ...were(part.measured, 'measured'),
    ...were(part.readAgain, 'read again'),
    ...(part.notKnown.length === 0 ? [] : [`${part.notKnown.join(', ')} must be measured again`]),
    ...(faultsCome.length === 0 ? [] : [`found ${faultsCome.join(', ')}`]),
    ...(faultsGone.length === 0 ? [] : [`no longer ${faultsGone.join(', ')}`]),
    ...(part.fields.length === 0 ? [] : [`changed in the file: ${part.fields.join(', ')}`]),
  ];
  // A part whose fields only moved differs in nothing that is told.
  return `${name} (${word}): ${all.length === 0 ? 'written in another order' : all.join('; ')}.`;
}

function describeCore(core: CoreDifference): string {
  const what = `${core.name} (engine not taken apart)`;
  switch (core.kind) {
    case 'come':
      return `${what} came.`;
    case 'gone':
      return `${what} is gone.`;
    case 'taken apart':
      return `${core.name} was taken apart: ${core.parts.join(', ')} came out of it.`;
    case 'changed': {
      const { parts, condition, done, fields } = core;
      const all = [
        ...(condition
          ? [`its condition was ${state(condition.before)}, now ${state(condition.after)}`]
          : []),
        ...(parts.length === 0
          ? []
          : [`${parts.join(', ')} ${parts.length === 1 ? 'was' : 'were'} taken off it`]),
        ...(done.length === 0 ? [] : [`done: ${done.join('; ')}`]),
        ...(fields.length === 0 ? [] : [`changed in the file: ${fields.join(', ')}`]),
      ];
      return `${what}: ${all.length === 0 ? 'written in another order' : all.join('; ')}.`;
    }
  }
}

/** The condition of an engine, in the word of the file: `"seized" (2026-05-01)`. */
function state(condition: Condition | undefined): string {
  if (condition === undefined) return 'not known';
  const { is, on } = condition;
  return on === undefined ? `"${is}"` : `"${is}" (${on})`;
}
