import { type BorePlan, describeBorePlan } from '../cylinders/index.js';
import type { Span, Wording } from '../judging/index.js';
import { describeSpan, guardLayout, guardWording, say, sayFinding } from '../judging/internal.js';
import {
  asText,
  columns,
  numberedNotes,
  type PageSection,
  section,
  task,
  whoSetTheLimits,
  wrap,
} from '../pages/index.js';
import type { Length } from '../quantities/index.js';
import { howWell } from '../reading/index.js';
import { actionsFrom } from './actions.js';
import { bearingSection } from './bearing-section.js';
import { beforeYouAct } from './before-you-act.js';
import { boredIn, mayStayIn } from './bored.js';
import { sayAction } from './describe-action.js';
import { compressionSection } from './describe-compression.js';
import { describeOil } from './describe-oil.js';
import { describeRing } from './describe-ring.js';
import { settingSections, valveSections } from './describe-settings.js';
import type { Inspection } from './inspect.js';
import type { CylinderReport, RingReport } from './inspect-cylinder.js';
import type { OilReport } from './inspect-oil.js';
import { inspectionLayout } from './layouts.js';
import { notMeasured } from './not-measured.js';
import { numberIn } from './number-in.js';
import { mayAllBoresStay } from './tell-sound.js';
import { undecidedFor } from './undecided.js';
import { misreadBores, misreadIn, oddPistons } from './waiting.js';

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
  const [bored, mayStay] = [boredIn(inspection), mayStayIn(inspection)];
  const groups = [mains, rods].filter((group) => group !== undefined);
  const misread = misreadIn(groups);
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
    ...groups.map((group) => bearingSection(group, misread, noted)),
    ...(endPlay ? [section('END PLAY', wrap(sayFinding(endPlay.finding, noted), 2))] : []),
    ...cylinders.map((cylinder) => {
      const { name } = cylinder;
      const fate = !bored.includes(name) ? 'stays' : mayStay.includes(name) ? 'may stay' : 'bored';
      return cylinderSection(cylinder, fate, noted);
    }),
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

/** What to bore to, and why. */
function boringSection(
  plan: BorePlan,
  cylinders: readonly CylinderReport[],
  wording: Wording,
): PageSection {
  const [undecided] = undecidedFor(cylinders, wording);
  if (undecided !== undefined) {
    const odd = misreadBores({ cylinders });
    return section(
      'BORING',
      wrap(`${typeof undecided === 'string' ? undecided : ''} See ${odd.join(', ')}.`, 2),
    );
  }
  const pistons = oddPistons(cylinders);
  if (pistons.length > 0 && plan.outcome !== 'use as it is') {
    return section('BORING', [`Decision: none before ${pistons.join(' and ')} is read again.`]);
  }
  const [decision, ...reasons] = describeBorePlan(plan, wording);
  const mayStay = mayAllBoresStay(
    plan,
    cylinders.filter(({ soundAt }) => soundAt !== undefined).map(({ name }) => name),
  );
  return section('BORING', [
    ...wrap(`Decision${mayStay ? ', if all are to have one size' : ''}: ${decision}`, 2),
    ...reasons.flatMap((reason) => wrap(`  ${reason}`, 4)),
  ]);
}

/** Whether a cylinder is bored. */
type Fate = 'stays' | 'may stay' | 'bored';

const OF_BORED: Readonly<Record<Exclude<Fate, 'stays'>, string>> = {
  bored: 'Piston and rings must fit the finished bore. In the worn bore now:',
  'may stay': 'If it is bored, piston and rings must fit the finished bore. If it stays:',
};

function cylinderSection(cylinder: CylinderReport, fate: Fate, wording: Wording): PageSection {
  const { name, shape, readAgain, findings, piston, rings } = cylinder;
  const mustBeBored = fate === 'bored';
  const { units } = wording;
  const number = numberIn(units);
  const over = (span: Span<Length>) => `${describeSpan(span, 'length', units)} over the travel`;
  const along = ({ travel, widestAt }: RingReport) =>
    `${over(travel)}${travel.max > travel.min ? `, widest at station ${say(widestAt, 'length', units)}` : ''}`;
  // Described only where it is printed: a description notes who set the limit.
  const verdict = () =>
    piston?.readAgain
      ? 'read it again'
      : piston?.finding
        ? sayFinding(piston.finding, wording)
        : 'not judged, as no limit is given';
  return section(name.toUpperCase(), [
    ...columns(
      ['station', 'mean', 'out-of-round'],
      shape.stations.map(({ station, mean, outOfRound }) =>
        readAgain?.some(({ reading }) => reading.station === station)
          ? [number(station), 'read again', '']
          : [number(station), number(mean), number(outOfRound)],
      ),
    ),
    ...(readAgain
      ? []
      : [`Along its length: ${shape.form}, taper ${say(shape.taper, 'length', units)}.`]),
    ...(readAgain
      ? undecidedFor([cylinder], wording)
      : findings.flatMap((finding) => wrap(sayFinding(finding, wording), 2))),
    ...(readAgain || fate === 'stays' || (!piston && rings.length === 0) ? [] : [OF_BORED[fate]]),
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
