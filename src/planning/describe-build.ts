import { nameUndersize } from '../crankshaft/internal.js';
import { nameOversize } from '../cylinders/internal.js';
import type { Finding, Span, Wording } from '../judging/index.js';
import { describeSpan, noteOf, sayFinding } from '../judging/internal.js';
import {
  capital,
  columns,
  type PageLine,
  type PageSection,
  printable,
  section,
  wrap,
} from '../pages/index.js';
import { type Length, tradeUnit } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { journalWords } from '../reading/index.js';
import {
  cautionsFor,
  describeJob,
  describeTest,
  NO_LIMIT_STATED,
  named,
  partWord,
} from '../shed/internal.js';
import { noEndPlay, openPointLines } from './describe-open-points.js';
import { besideOrder } from './job-doubts.js';
import type { BuildTest } from './job-types.js';
import type { Build, BuildBearing, BuildCylinder } from './plan-types.js';
import { sayCost } from './say-cost.js';
import { sayCrossed } from './say-crossed.js';
import { sayInterchange } from './say-interchange.js';
import { sayWalls } from './walls.js';
import { workIn } from './work-in.js';

/** Describes one engine of a plan: its parts, their clearances, and the work on them. */
export function describeBuild(build: Build, number: number, wording: Wording): PageSection {
  const { name, parts, cost, endPlay } = build;
  const work = workIn(build);
  return section(`ENGINE ${number}: ${name}`, [
    ...wrap(`Shop work and purchases for it cost ${sayCost(cost)}.`, 2),
    ...sentence(sayInterchange(build) ?? ''),
    ...partLines(parts, wording),
    ...testLines(build.tests),
    ...homeMadeLines(build),
    ...openPointLines(build, wording),
    ...timed('Before any other work, and before use:', ['before use'], build.tests, wording),
    ...(work.length === 0 ? ['No machining.'] : ['Machining:']),
    ...work.flatMap((job) =>
      wrap(
        `  ${job.part}: ${describeJob(job, wording)}, by ${job.shop}${besideOrder(job, wording)}`,
        4,
      ),
    ),
    ...cautionLines(build),
    ...timed('After the work, before it is built:', ['again', 'after'], build.tests, wording),
    ...(['mains', 'rods'] as const).flatMap((kind) => bearingLines(kind, build.bearings, wording)),
    ...sentence(sayCrossed(build)),
    ...cylinderLines(build.cylinders, wording),
    ...(endPlay
      ? wrap(`With ${stackOf(endPlay.washers)}: ${sayFinding(endPlay.finding, wording)}`, 2)
      : wrap(noEndPlay(build), 2)),
    ...sentence(capital(guideLine(build, wording))),
  ]);
}

/** A sentence, if there is one. */
const sentence = (text: string): readonly PageLine[] => (text === '' ? [] : wrap(text, 2));

/** The parts, one a line with what they are; in short, those of one origin together. */
function partLines(parts: Build['parts'], { why }: Wording): readonly PageLine[] {
  if (why !== false) {
    return ['Parts:', ...parts.flatMap((part) => wrap(`  ${describePartOf(part)}`, 6))];
  }
  const origins = [...new Set(parts.map(originOf))];
  return origins.flatMap((origin) => {
    const names = parts
      .filter((part) => originOf(part) === origin)
      .map(({ name, count }) => named(name, count));
    return wrap(`${origin}: ${names.join('; ')}`, 2);
  });
}

function originOf({ from, bought, made }: Build['parts'][number]): string {
  if (made) return 'To be made';
  if (bought) return 'To be bought';
  return from === undefined ? 'From the shelf' : `From ${from}`;
}

/** The home-made parts, with their owner's notes. The limits are of other makers' shells, not of their metal. */
export function sayHomeMade({ parts }: Pick<Build, 'parts'>): readonly string[] {
  return parts
    .filter(({ homeMade }) => homeMade)
    .map(({ section: of, name, notes = [] }) => {
      const clearance =
        of === 'shells'
          ? "; its material's running clearance is not known: ask for its maker's or the metal's"
          : '; nobody vouches for its material or its sizes but its maker';
      const noted = notes.length === 0 ? '' : ` (owner: "${notes.map(printable).join(' / ')}")`;
      return `Home-made: ${name}${clearance}${noted}.`;
    });
}

const homeMadeLines = (build: Build): readonly PageLine[] =>
  sayHomeMade(build).flatMap((line) => wrap(line, 2));

/** `Crack-test first: crankshaft A, rods A.` */
function testLines(tests: Build['tests']): readonly PageLine[] {
  const first = tests.filter(({ when }) => when === 'first').map(({ part }) => part);
  return first.length === 0 ? [] : wrap(`Crack-test first: ${first.join(', ')}.`, 2);
}

/** What to test and measure at one time of the work. */
function timed(
  title: string,
  whens: readonly BuildTest['when'][],
  tests: Build['tests'],
  wording: Wording,
): readonly PageLine[] {
  const its = tests.filter(({ when }) => whens.includes(when));
  return [
    ...(its.length === 0 ? [] : [title]),
    ...its.flatMap((test) => {
      const { section: of, part: name } = test;
      return wrap(`  ${name}: ${describeTest(test, { section: of, name }, wording)}`, 4);
    }),
  ];
}

/** Cautions for the work on the parts of an engine, and for what only tests have cleared. */
function cautionLines({ parts, jobs, tests }: Build): readonly PageLine[] {
  const walls = sayWalls(jobs).flatMap((each) => wrap(`Caution: ${each}.`, 2));
  const others = parts.flatMap(({ section: of, name }) => {
    const its = <T extends { readonly part: string }>(all: readonly T[]) =>
      all.filter(({ part }) => part === name);
    return cautionsFor(of, name, its(jobs), its(tests)).flatMap((each) =>
      wrap(`Caution: ${each}.`, 2),
    );
  });
  return [...walls, ...others];
}

/** `pair of shells: 2 × rod shells 20 under, bought`. */
export function describePartOf({
  section: each,
  name,
  kind,
  from,
  count,
  bought,
  made,
}: Build['parts'][number]): string {
  const source = from === undefined ? '' : `, from ${from}`;
  return `${partWord(each, count, kind)}: ${named(name, count)}${source}${made ? ', to be made' : bought ? ', to be bought' : ''}`;
}

/** The clearance of the valve stems; empty if the guides or the stems were not measured. */
function guideLine({ guides }: Build, wording: Wording): string {
  if (!guides) return '';
  const { clearance, finding } = guides;
  if (finding) return sayFinding(finding, wording);
  return `guide clearance ${describeSpan(clearance, 'length', wording.units)}: ${NO_LIMIT_STATED}`;
}

/** Washers in one stack: `2 × washer 0.096 + shim 0.005`; `no washers`. */
export function stackOf(names: readonly string[]): string {
  if (names.length === 0) return 'no washers';
  const each = [...new Set(names)];
  return each.map((name) => named(name, names.filter((one) => one === name).length)).join(' + ');
}

function bearingLines(
  kind: BuildBearing['kind'],
  bearings: readonly BuildBearing[],
  wording: Wording,
): readonly PageLine[] {
  const its = bearings.filter((bearing) => bearing.kind === kind);
  if (its.length === 0) return [];
  const steps = new Set(its.map(({ undersize }) => nameUndersize(undersize, wording)));
  return [
    ...wrap(`${capital(journalWords(kind))} and their shells, ${[...steps].join(', ')}:`, 2),
    ...columns(
      ['journal', 'housing', 'shells', 'clearance', 'limits'],
      its.map(({ journal, housing, shells, clearance, finding }) => [
        journal,
        // Every main housing is in the block.
        kind === 'mains' ? housing.place : `${housing.part}, ${housing.place}`,
        shells,
        spanNumber(clearance, wording),
        limitsOf(finding, wording),
      ]),
      3,
    ),
  ];
}

function cylinderLines(cylinders: readonly BuildCylinder[], wording: Wording): readonly PageLine[] {
  const steps = new Set(cylinders.map(({ oversize }) => nameOversize(oversize, wording)));
  return [
    ...wrap(`Bores and pistons, ${[...steps].join(', ')}:`, 2),
    ...columns(
      ['bore', 'piston', 'bore size', 'clearance', 'limits'],
      cylinders.map(({ bore, piston, boreSize, clearance, finding }) => [
        bore,
        piston,
        spanNumber(boreSize, wording),
        spanNumber(clearance, wording),
        finding ? limitsOf(finding, wording) : 'none stated',
      ]),
      2,
    ),
  ];
}

/** `1.6045 to 1.6050`, for tables whose unit is named above them. */
export function spanNumber({ min, max }: Span<Length>, { units }: Wording): string {
  const unit = tradeUnit('length', units);
  const [low, high] = [formatNumber(min, unit), formatNumber(max, unit)];
  return low === high ? high : `${low} to ${high}`;
}

/** `0.0012 to 0.0028 [1]`, `at most 0.0040 [2]`. */
function limitsOf({ limits, basis }: Finding<'length'>, wording: Wording): string {
  return `${limitsNumber(limits, wording)} ${noteOf(basis, wording)}`;
}

/** `0.0012 to 0.0028`, `at least 0.0012`. */
export function limitsNumber({ min, max }: Finding<'length'>['limits'], wording: Wording): string {
  const unit = tradeUnit('length', wording.units);
  if (min !== undefined && max !== undefined) return spanNumber({ min, max }, wording);
  return min === undefined
    ? `at most ${formatNumber(max as Length, unit)}`
    : `at least ${formatNumber(min, unit)}`;
}
