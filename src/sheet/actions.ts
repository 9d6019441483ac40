import { guardLayout, holds } from '../judging/internal.js';
import { HITS_THE_BLOCK } from '../reading/index.js';
import type { Action } from './action-types.js';
import { assemblyActions, dangerActions } from './assembly-actions.js';
import {
  bearingActions,
  fittedShellActions,
  oddSizeActions,
  readAgainActions,
} from './bearing-actions.js';
import { boreActions, oddBoreActions } from './cylinder-actions.js';
import type { Inspection } from './inspect.js';
import { filmFails } from './inspect-film.js';
import type { OilReport } from './inspect-oil.js';
import { isThinOil } from './inspect-sample.js';
import { inspectionLayout } from './layouts.js';
import { valveActions } from './valve-actions.js';

/**
 * Lists what to do after an inspection, most urgent first: whatever would wreck the engine if
 * it ran, then crankshaft, assembly and cylinders. An empty list says nothing about what was not
 * measured.
 *
 * @param inspection - what `inspect` gave
 * @returns things to do, in order
 * @throws {RebuildInputError} when the inspection is not what `inspect` gives
 * @example
 * ```ts
 * const sheet = readSheet({
 *   version: 1, engine: 'pump set', units: 'inch',
 *   crankshaft: { endPlay: { readings: [{ pushed: '0 thou', pulled: '14 thou' }] } },
 * });
 * actionsFrom(inspect(sheet)).map(({ kind }) => kind); // ["set the end play"]
 * ```
 */
export function actionsFrom(inspection: Inspection): readonly Action[] {
  guardLayout('inspection', inspection, inspectionLayout, 'inspect');
  const { rods, mains, endPlay, oil, happened } = inspection;
  const groups = [mains, rods].filter((group) => group !== undefined);
  const crankshaft = bearingActions(groups, inspection.notFilledIn);
  const cylinders = boreActions(inspection);
  const measuring = inspection.unsettled.map((each) => ({
    kind: 'measure again' as const,
    ...each,
  }));
  const endPlayed = endPlayActions(endPlay);
  const machined = [
    ...(crankshaft.some(({ kind }) => kind === 'grind') ? ['crankshaft' as const] : []),
    ...(cylinders.some(({ kind }) => kind === 'bore' || kind === 'rebore')
      ? ['block' as const]
      : []),
  ];
  // What happened has the crankshaft tested, and the block where something struck it.
  const isBlockTested = happened.some((what) => HITS_THE_BLOCK.includes(what));
  const isTested = { crankshaft: happened.length > 0, block: isBlockTested };
  const untested = machined.filter((part) => !isTested[part]);
  return [
    ...(happened.length > 0 ? [{ kind: 'crack test' as const, happened, machined }] : []),
    ...(oil ? oilActions(oil) : []),
    ...dangerActions(inspection.assembly),
    ...readAgainActions([...groups.flatMap(({ bearings }) => bearings), ...inspection.cylinders]),
    ...groups.flatMap(oddSizeActions),
    ...oddBoreActions(inspection),
    ...endPlayed.filter(({ kind }) => kind === 'lost thrust face'),
    ...groups.flatMap(fittedShellActions),
    ...measuring.filter(({ onceGround }) => !onceGround),
    ...(untested.length > 0
      ? [{ kind: 'crack test' as const, happened: [], machined: untested }]
      : []),
    ...crankshaft,
    ...measuring.filter(({ onceGround }) => onceGround),
    // It is set as the engine goes together.
    ...endPlayed.filter(({ kind }) => kind !== 'lost thrust face'),
    ...cylinders,
    ...valveActions(inspection.valves),
    ...assemblyActions(inspection.compression ?? {}, inspection.assembly?.fits),
  ];
}

/** What the oil calls for: what must not run comes first. */
function oilActions({ sample, film, leak }: OilReport): Action[] {
  const { dilution, byLaw } = sample ?? {};
  const fuel = dilution && byLaw && { dilution, byLaw };
  const thin =
    sample && isThinOil(sample)
      ? { kind: 'thin oil' as const, thinning: sample.thinning }
      : undefined;
  const leaks = leak !== undefined && leak.flow.max > 0;
  const stop: Action[] = [
    ...(fuel?.dilution.stage === 'critical' ? [{ kind: 'do not run' as const, ...fuel }] : []),
    ...(thin?.thinning.stage === 'critical' ? [thin] : []),
    ...(film && filmFails(film) ? [{ kind: 'thin film' as const, film }] : []),
    ...(leaks && dilution === undefined ? [{ kind: 'unknown oil' as const, flow: leak.flow }] : []),
  ];
  return [
    ...stop,
    ...(fuel?.dilution.stage === 'act' ? [{ kind: 'change the oil' as const, ...fuel }] : []),
    ...(thin && thin.thinning.stage !== 'critical' ? [thin] : []),
    ...(sample && !dilution
      ? [{ kind: 'thick oil' as const, viscosity: sample.viscosity, clean: sample.clean }]
      : []),
    ...(leaks ? [{ kind: 'stop the leak' as const, flow: leak.flow }] : []),
  ];
}

function endPlayActions(endPlay: Inspection['endPlay']): Action[] {
  if (endPlay === undefined) return [];
  const { finding, missing } = endPlay;
  if (missing !== undefined) return [{ kind: 'lost thrust face', finding, missing }];
  return holds(finding) || finding.verdict === 'undecided'
    ? []
    : [{ kind: 'set the end play', finding }];
}
