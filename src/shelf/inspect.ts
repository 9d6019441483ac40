import { type EndPlay, endPlay } from '../crankshaft/end-play.js';
import { guardText } from '../judging/guards.js';
import { madeHere } from '../judging/made-here.js';
import { RebuildInputError } from '../quantities/error.js';
import { guardSystem, type UnitSystem } from '../quantities/systems.js';
import { type BearingGroupReport, inspectBearings } from './inspect-bearings.js';
import { type CylinderReport, inspectCylinder } from './inspect-cylinder.js';
import { inspectOil, type OilReport } from './inspect-oil.js';
import { own } from './own.js';
import type { Sheet } from './sheet.js';

/** Everything that was found of one engine: data only, JSON as it is. */
export interface Inspection {
  /** What the engine is called. */
  readonly engine: string;
  /** Units that the sheet asks its report in. */
  readonly units: UnitSystem;
  /** Rod journals, rods and their shells, if the sheet has any. */
  readonly rods?: BearingGroupReport;
  /** Main journals, housings and their shells, if the sheet has any. */
  readonly mains?: BearingGroupReport;
  /** Crankshaft end play, if it was measured. */
  readonly endPlay?: EndPlay;
  /** Every cylinder of the sheet. */
  readonly cylinders: readonly CylinderReport[];
  /** The oil and what leaks into it, if the sheet has it. */
  readonly oil?: OilReport;
}

/** One part of the inspection that can be done apart from the others. */
export interface Step {
  /** Where in the sheet a parameter that it refuses stands. */
  readonly pathOf: (parameter: string) => string;
  /** Does it. */
  readonly inspect: () => Partial<Inspection>;
}

/**
 * Inspects one engine: the shape every part is in, the size to grind to, the
 * shells that fit, the clearances, ring gaps and end play, and the oil.
 *
 * @param sheet - the engine's sheet, as `readSheet` gives it
 * @returns findings and decisions, every one with its reasons
 * @throws {RebuildInputError} when readings contradict each other, such as a journal larger than standard
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
  return madeHere('sheet', sheet, 'readSheet', () => {
    const start = { engine: guardText('sheet.engine', sheet.engine), units: sheet.units };
    guardSystem('sheet.units', start.units);
    const parts = inspectionSteps(sheet).map((step) => step.inspect());
    const cylinders = parts.flatMap((part) => part.cylinders ?? []);
    return Object.assign(start, ...parts, { cylinders }) as Inspection;
  });
}

/** The parts of an inspection that a sheet has the input for. */
export function inspectionSteps(sheet: Partial<Sheet>): readonly Step[] {
  const { endPlay: play } = sheet.crankshaft ?? {};
  const steps: Step[] = [...bearingSteps(sheet, 'rods'), ...bearingSteps(sheet, 'mains')];
  if (play) {
    const take = () => ({ endPlay: endPlay(play.readings, own(play.limits)) });
    steps.push({ pathOf: within('crankshaft.endPlay'), inspect: take });
  }
  sheet.cylinders?.forEach((cylinder, i) => {
    const take = () => ({ cylinders: [inspectCylinder(cylinder, sheet.cylinderLimits)] });
    steps.push({ pathOf: within(`cylinders[${i}]`), inspect: take });
  });
  const { oil } = sheet;
  if (oil) {
    const take = () => ({ oil: inspectOil(oil) });
    steps.push({ pathOf: within('oil'), inspect: take });
  }
  return steps;
}

function bearingSteps(sheet: Partial<Sheet>, kind: 'rods' | 'mains'): readonly Step[] {
  const bearings = sheet[kind];
  const { units } = sheet;
  if (bearings === undefined || units === undefined) return [];
  const field = kind === 'rods' ? 'rodJournals' : 'mainJournals';
  const journals = sheet.crankshaft?.[field];
  const take = () => {
    if (journals === undefined) {
      throw new RebuildInputError({
        parameter: `crankshaft.${field}`,
        value: undefined,
        shown: `the standard size of the journals that ${kind} run on`,
        expected: 'a standard size',
        problem: 'is missing',
        hint: `Give crankshaft.${field}.standard, or the ${kind} cannot be judged.`,
      });
    }
    const { shells } = sheet;
    const input = { units, ...(shells && { shells }) };
    return { [kind]: inspectBearings(input, kind, journals, bearings) };
  };
  const pathOf = (parameter: string) =>
    parameter.startsWith('crankshaft')
      ? parameter
      : parameter.replace(/^journals\[(\d+)\].*/, `${kind}[$1].journal`);
  return [{ pathOf, inspect: take }];
}

const within = (section: string) => (parameter: string) => `${section} (${parameter})`;
