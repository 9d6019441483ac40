import { sayClearance } from '../bearings/internal.js';
import { describeGrindPlan } from '../crankshaft/index.js';
import { type BorePlan, describeBorePlan } from '../cylinders/index.js';
import type { Finding, Span, Wording } from '../judging/index.js';
import { describeSpan, guardLayout, guardWording, say, sayFinding } from '../judging/internal.js';
import { sayOddReading } from '../measuring/internal.js';
import {
  asText,
  columns,
  numberedNotes,
  type PageLine,
  type PageSection,
  section,
  task,
  whoSetTheLimits,
  wrap,
} from '../pages/index.js';
import { type Length, tradeUnit, type UnitSystem } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { howWell, journalWords } from '../reading/index.js';
import { actionsFrom } from './actions.js';
import { beforeYouAct } from './before-you-act.js';
import { boredIn } from './bored.js';
import { sayAction } from './describe-action.js';
import { compressionSection } from './describe-compression.js';
import { describeOil } from './describe-oil.js';
import { describeRing } from './describe-ring.js';
import { settingSections, valveSections } from './describe-settings.js';
import type { Inspection } from './inspect.js';
import type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
import type { CylinderReport, RingReport } from './inspect-cylinder.js';
import type { OilReport } from './inspect-oil.js';
import { inspectionLayout } from './layouts.js';
import { notMeasured } from './not-measured.js';

/**
 * Prints an inspection as plain text for the bench. It begins with what to do. Then come the
 * readings, decisions and reasons, part by part, and who set each limit.
 *
 * @param inspection - what `inspect` gave
 * @param wording - the units to print in, by default those of the sheet, and whether to tell why steps were passed over
 * @returns lines of at most 96 characters; the last one ends with a line break
 * @throws {RebuildInputError} when the inspection is not what `inspect` gives, or the unit system is unknown
 * @example
 * ```ts
 * const sheet = readSheet({
 *   version: 1, engine: 'pump set', units: 'inch',
 *   crankshaft: { endPlay: { readings: [{ pushed: '0 thou', pulled: '7 thou' }] } },
 * });
 * report(inspect(sheet)).includes('END PLAY'); // true
 * ```
 */
export function report(
  inspection: Inspection,
  wording: Wording = { units: inspection?.units },
): string {
  guardLayout('inspection', inspection, inspectionLayout, 'inspect');
  guardWording(wording);
  return asText(reportSections(inspection, wording));
}

/** The sections of the report on an inspection, to be printed. */
export function reportSections(inspection: Inspection, wording: Wording): readonly PageSection[] {
  const { engine, rods, mains, endPlay, cylinders, boring, valves, compression, assembly, oil } =
    inspection;
  const { units } = wording;
  const notes = numberedNotes(wording);
  const noted = notes.wording;
  const actions = actionsFrom(inspection);
  const bored = boredIn(inspection);
  const parts = [
    section(`INSPECTION: ${engine}`, [
      `Sizes are diameters in ${units === 'inch' ? 'inches' : 'millimetres'}, clearances on the diameter.`,
    ]),
    section('WHAT TO DO', [
      ...(actions.length === 0 ? [nothingToDo(inspection)] : []),
      ...actions.map((action, i) => task(i + 1, sayAction(action, noted))),
      ...notMeasured(inspection),
    ]),
    ...howWell(inspection.howRead, noted),
    ...[mains, rods].flatMap((group) => (group ? [bearingSection(group, noted)] : [])),
    ...(endPlay ? [section('END PLAY', wrap(sayFinding(endPlay.finding, noted), 2))] : []),
    ...cylinders.map((cylinder) => cylinderSection(cylinder, bored.includes(cylinder.name), noted)),
    ...(boring ? [boringSection(boring, cylinders, noted)] : []),
    ...valveSections(valves, noted),
    ...(compression ? [compressionSection(compression, noted)] : []),
    ...(assembly ? settingSections(assembly, noted) : []),
    ...(oil ? [oilSection(oil, noted)] : []),
  ];
  const who = whoSetTheLimits(notes);
  return [...parts, ...who, beforeYouAct(inspection)];
}

/** What is to be said where nothing is to be done: not too much. */
function nothingToDo(inspection: Inspection): string {
  const { rods, mains, endPlay, compression, oil, cylinders, valves, howRead } = inspection;
  const read = [rods, mains, endPlay, compression, oil, ...cylinders, ...valves];
  if (read.every((each) => each === undefined)) return 'Nothing was measured yet.';
  const { undescribed, ovalHidden } = howRead;
  return undescribed.length + ovalHidden.length === 0
    ? 'No action needed for what was measured.'
    : 'No action needed by what was read; how well it was read is told below.';
}

const CONTRADICTION =
  'that contradicts the stamp on the shells and the size of the journal: measure the housing and the walls again';

/** What stands in the way of every decision: readings to take again, or a crankshaft that reads as bent. */
function undecidedFor(
  parts: readonly Pick<BearingReport, 'name' | 'readAgain' | 'oddSize' | 'bent'>[],
  wording: Wording,
): readonly PageLine[] {
  const odd = parts.flatMap(({ name, readAgain = [] }) =>
    readAgain.flatMap((each) => wrap(`${name}: ${sayOddReading(each, wording)}`, 4)),
  );
  if (odd.length > 0) return ['Decision: none, as a reading does not fit the others.', ...odd];
  if (parts.some(({ oddSize }) => oddSize !== undefined)) {
    return ['Decision: none, as a journal reads round and yet at no step.'];
  }
  return parts.some(({ bent }) => bent)
    ? ['Decision: none, as the crankshaft is not shown to be straight.']
    : [];
}

/** What to bore to, and why. */
function boringSection(
  plan: BorePlan,
  cylinders: readonly CylinderReport[],
  wording: Wording,
): PageSection {
  const [undecided] = undecidedFor(cylinders, wording);
  if (undecided !== undefined) {
    const odd = cylinders.flatMap(({ name, readAgain }) => (readAgain ? [name] : []));
    return section(
      'BORING',
      wrap(`${typeof undecided === 'string' ? undecided : ''} See ${odd.join(', ')}.`, 2),
    );
  }
  const [decision, ...reasons] = describeBorePlan(plan, wording);
  return section('BORING', [
    ...wrap(`Decision: ${decision}`, 2),
    ...reasons.flatMap((reason) => wrap(`  ${reason}`, 4)),
  ]);
}

function bearingSection(group: BearingGroupReport, wording: Wording): PageSection {
  const { units } = wording;
  const number = numberIn(units);
  const [decision, ...reasons] = describeGrindPlan(group.plan, wording);
  const fitted = group.bearings.flatMap(({ name, fitted, readAgain }) =>
    fitted && !readAgain
      ? wrap(
          `${name}, "${fitted.shells}": ${describeSpan(fitted.clearance, 'length', units)}; ${fitted.agrees ? sayClearance(fitted.explanation, wording) : CONTRADICTION}`,
          4,
        )
      : [],
  );
  const shells = group.bearings.flatMap(({ name, shells }) =>
    shells
      ? wrap(`${name}, "${shells.shell.name}": ${sayFinding(shells.finding, wording)}`, 4)
      : [],
  );
  const misread = undecidedFor(group.bearings, wording);
  return section(journalWords(group.kind).toUpperCase(), [
    ...columns(
      ['journal', 'smallest', 'largest', 'out-of-round', 'taper', 'along its length'],
      group.bearings.map(({ name, shape }) => [
        name,
        number(shape.smallest),
        number(shape.largest),
        number(shape.outOfRound),
        number(shape.taper),
        shape.form,
      ]),
    ),
    ...failed(
      group.bearings.flatMap(({ name, findings, readAgain }) =>
        readAgain ? [] : findings.map((finding) => ({ name, finding })),
      ),
      wording,
    ),
    ...(fitted.length > 0 ? ['As found, with the shells that were fitted:', ...fitted] : []),
    ...(misread.length > 0
      ? misread
      : [
          ...wrap(`Decision: ${decision}`, 2),
          ...reasons.flatMap((reason) => wrap(`  ${reason}`, 4)),
          ...(shells.length > 0
            ? ['Shells from the shelf for the finished journals:', ...shells]
            : []),
        ]),
  ]);
}

function cylinderSection(
  cylinder: CylinderReport,
  isToBeBored: boolean,
  wording: Wording,
): PageSection {
  const { name, shape, readAgain, findings, piston, rings } = cylinder;
  const mustBeBored = isToBeBored && !readAgain;
  const { units } = wording;
  const number = numberIn(units);
  const over = (span: Span<Length>) => `${describeSpan(span, 'length', units)} over the travel`;
  const along = ({ travel, widestAt }: RingReport) =>
    `${over(travel)}${travel.max > travel.min ? `, widest at station ${say(widestAt, 'length', units)}` : ''}`;
  // Described only where it is printed: a description notes who set the limit.
  const verdict = () =>
    piston?.finding ? sayFinding(piston.finding, wording) : 'not judged, as no limit is given';
  return section(name.toUpperCase(), [
    ...columns(
      ['station', 'mean', 'out-of-round'],
      shape.stations.map(({ station, mean, outOfRound }) => [
        number(station),
        number(mean),
        number(outOfRound),
      ]),
    ),
    ...(readAgain
      ? []
      : [`Along its length: ${shape.form}, taper ${say(shape.taper, 'length', units)}.`]),
    ...(readAgain
      ? undecidedFor([cylinder], wording)
      : findings.flatMap((finding) => wrap(sayFinding(finding, wording), 2))),
    ...(mustBeBored ? ['Piston and rings must fit the finished bore. In the worn bore now:'] : []),
    ...(piston && !readAgain
      ? wrap(`piston: clearance ${over(piston.clearance)}${mustBeBored ? '' : `; ${verdict()}`}`, 2)
      : []),
    ...(readAgain ? [] : rings).flatMap((ring) =>
      mustBeBored
        ? wrap(`${ring.name}: gap ${along(ring)}`, 2)
        : wrap(`${describeRing(ring, wording)}; ${along(ring)}`, 2),
    ),
  ]);
}

function oilSection(oil: OilReport, wording: Wording): PageSection {
  const lines = describeOil(oil, wording);
  return section(
    'OIL',
    lines.flatMap((line) => wrap(line, 2)),
  );
}

function failed(
  judged: readonly { readonly name: string; readonly finding: Finding<'length'> }[],
  wording: Wording,
): readonly PageLine[] {
  return judged
    .filter(({ finding }) => finding.verdict !== 'within')
    .flatMap(({ name, finding }) => wrap(`${name}: ${sayFinding(finding, wording)}`, 2));
}

const numberIn = (units: UnitSystem) => (length: Length) =>
  formatNumber(length, tradeUnit('length', units));
