import { type AssemblySettings, aroundBores, assemblySettings } from '../assembly/index.js';
import { type EndPlay, endPlay } from '../crankshaft/index.js';
import type { BorePlan } from '../cylinders/index.js';
import { guardLayout, type Names, namedFrom } from '../judging/internal.js';
import { fewestAtAPlace, repeatsIn } from '../measuring/internal.js';
import type { UnitSystem } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import {
  type Accuracy,
  accuracyOf,
  certaintyOf,
  guardKind,
  type Happening,
  type HowRead,
  isByRule,
  own,
} from '../reading/index.js';
import { type MeasuredBearing, measuredBearings } from './film-sizes.js';
import { howRead } from './how-read.js';
import { type BearingGroupReport, inspectBearings, journalsOf } from './inspect-bearings.js';
import { boreSoundAt, boringOf, keptByClearance, oddBore } from './inspect-bores.js';
import { type CompressionReport, inspectCompression } from './inspect-compression.js';
import { type CylinderReport, inspectCylinder } from './inspect-cylinder.js';
import { inspectOil, type OilReport } from './inspect-oil.js';
import { inspectValve, type ValveReport } from './inspect-valve.js';
import { sheetLayout } from './layouts.js';
import type { NotFilledIn, Sheet } from './sheet.js';
import { type Unsettled, unsettledIn } from './unsettled.js';

/** All findings on one engine: plain data that JSON carries unchanged. */
export interface Inspection {
  /** Name of the engine. */
  readonly engine: string;
  /** The units that the sheet wants its report in. */
  readonly units: UnitSystem;
  /** Rods, mains and cylinders that were named and not measured, or half read. */
  readonly notFilledIn?: NotFilledIn;
  /** Rod journals, rods and their shells, if the sheet has any. */
  readonly rods?: BearingGroupReport;
  /** Main journals, housings and their shells, if the sheet has any. */
  readonly mains?: BearingGroupReport;
  /** Crankshaft end play, if it was measured. */
  readonly endPlay?: EndPlay;
  /** What the engine went through; it calls for a crack test. */
  readonly happened: readonly Happening[];
  /** Every cylinder of the sheet. */
  readonly cylinders: readonly CylinderReport[];
  /** What to bore to, if the sheet says what the maker bored to. */
  readonly boring?: BorePlan;
  /** Whether only rules of thumb ask for the boring. */
  readonly boringByRule?: true;
  /** How well the sizes were read. */
  readonly howRead: HowRead;
  /** Findings that the readings do not decide, each with what would: measure these again first. */
  readonly unsettled: readonly Unsettled[];
  /** Every valve of the sheet. */
  readonly valves: readonly ValveReport[];
  /** The compression test and the leakage tests, if there were any. */
  readonly compression?: CompressionReport;
  /** What the engine is set to as it goes together, if the sheet tells. */
  readonly assembly?: AssemblySettings;
  /** The oil and its leak, if the sheet has them. */
  readonly oil?: OilReport;
}

/**
 * Inspects one engine: the shape of every part, the size to grind to, the shells that fit, the
 * clearances, ring gaps and end play, and the oil. It judges only what was measured.
 *
 * @param sheet - the engine's sheet, as `readSheet` gives it
 * @returns findings and decisions, each with its reasons
 * @throws {RebuildInputError} when the sheet is not what `readSheet` gives, or readings contradict each other
 * @example
 * ```ts
 * const sheet = readSheet({
 *   version: 1, engine: 'pump set', units: 'inch',
 *   crankshaft: { endPlay: { readings: [{ pushed: '0 thou', pulled: '14 thou' }] } },
 * });
 * const { endPlay } = inspect(sheet);
 * endPlay && endPlay.finding.verdict; // "above"
 * ```
 */
export function inspect(sheet: Sheet): Inspection {
  guardKind('sheet', sheet);
  guardLayout('sheet', sheet, sheetLayout, 'readSheet');
  return inspectEngine(sheet);
}

function inspectEngine(sheet: Sheet): Inspection {
  const { endPlay: play } = sheet.crankshaft ?? {};
  const accuracy = accuracyOfSheet(sheet);
  const [rods, mains] = [groupOf(sheet, 'rods', accuracy), groupOf(sheet, 'mains', accuracy)];
  const groups = [mains, rods].filter((group) => group !== undefined);
  const bored = (sheet.cylinders ?? []).map((cylinder, i) =>
    namedFrom(
      () => ({ cylinder: `sheet.cylinders[${i}]`, allowed: 'sheet.cylinderLimits' }),
      () => inspectCylinder(cylinder, accuracy, sheet.cylinderLimits, sheet.bores),
    ),
  );
  const boring = keptByClearance(sheet, boringOf(sheet, accuracy), bored, accuracy);
  const cylinders = bored.map((report, i) => {
    const soundAt = boreSoundAt(sheet, boring, i, report, accuracy);
    const oddSize = oddBore(sheet, i, report);
    return {
      ...report,
      ...(oddSize !== undefined && { oddSize }),
      ...(soundAt !== undefined && { soundAt }),
    };
  });
  const shapes = cylinders.map(({ shape }) => shape);
  const clearance = own(sheet.cylinderLimits?.pistonClearance).limits;
  const assembly =
    sheet.assembly &&
    assemblySettings(sheet.assembly, {
      ...aroundBores(sheet.bores),
      certainty: certaintyOf('fit clearance', accuracy),
    });
  const valves = (sheet.valves ?? []).map((valve, i) =>
    namedFrom(
      () => ({ valve: `sheet.valves[${i}]`, limits: 'sheet.valveLimits' }),
      () => inspectValve(valve, accuracy, sheet.valveLimits, assembly?.valves),
    ),
  );
  const compression =
    sheet.compressionTest &&
    inspectCompression(
      sheet.compressionTest,
      assembly?.compression?.rules,
      sheet.bores?.standard.max,
    );
  const floated =
    play &&
    namedFrom(
      () => END_PLAY_NAMES,
      () => endPlay(play.readings, { ...own(play.limits), ...certaintyOf('end play', accuracy) }),
    );
  return {
    engine: sheet.engine,
    units: sheet.units,
    ...(rods && { rods }),
    ...(mains && { mains }),
    ...(floated && { endPlay: floated }),
    happened: sheet.happened ?? [],
    cylinders,
    ...(boring && { boring }),
    ...(boring && isByRule(boring, shapes, clearance) && { boringByRule: true as const }),
    valves,
    ...(compression && { compression }),
    ...(assembly && { assembly }),
    ...(sheet.notFilledIn && { notFilledIn: sheet.notFilledIn }),
    howRead: howRead(sheet, accuracy, groups, cylinders),
    unsettled: unsettledIn({
      groups,
      endPlay: floated,
      cylinders,
      boring,
      valves,
      fits: assembly?.fits ?? [],
      accuracy,
    }),
    ...(sheet.oil && { oil: oilOf(sheet.oil, measuredBearings([rods, mains])) }),
  };
}

const END_PLAY_NAMES: Names = {
  readings: 'sheet.crankshaft.endPlay.readings',
  'options.limits': 'sheet.crankshaft.endPlay.limits',
};

function oilOf(oil: NonNullable<Sheet['oil']>, measured: readonly MeasuredBearing[]): OilReport {
  return namedFrom(
    () => ({ '': 'sheet.oil' }),
    () => inspectOil(oil, measured),
  );
}

function groupOf(
  sheet: Sheet,
  kind: 'rods' | 'mains',
  accuracy: Accuracy,
): BearingGroupReport | undefined {
  const bearings = sheet[kind];
  return bearings && inspectBearings(sheet, kind, journalsOf(sheet, kind), bearings, accuracy);
}

/** How well the sizes of a sheet are known: repeats of a place tell how readings scatter. */
export function accuracyOfSheet({
  rods = [],
  mains = [],
  cylinders = [],
  ...sheet
}: Partial<Sheet>): Accuracy {
  const journals = [...rods, ...mains].map(({ journal }) => journal.readings);
  const bores = cylinders.map(({ bore }) => bore.readings);
  return accuracyOf(
    sheet,
    { micrometer: journals.map(repeatsIn), boreGauge: bores.map(repeatsIn) },
    {
      ...(journals.length > 0 && { micrometer: smallestOf(journals.map(fewestAtAPlace)) }),
      ...(bores.length > 0 && { boreGauge: smallestOf(bores.map(fewestAtAPlace)) }),
    },
  );
}
