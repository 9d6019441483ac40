import { BLIND, describeRule, onlyCompares } from '../assembly/index.js';
import type { JudgedCompression, LeakDown, OiledCylinder } from '../cylinders/index.js';
import type { Wording } from '../judging/index.js';
import { say, sayFinding } from '../judging/internal.js';
import { columns, type PageSection, section, wrap } from '../pages/index.js';
import { format, percent, squareMm } from '../quantities/index.js';
import type { CompressionReport } from './inspect-compression.js';

/** The compression and leakage tests, as a section of the report. */
export function compressionSection(
  { cylinders, test, leakage }: CompressionReport,
  wording: Wording,
): PageSection {
  const print = (value: number | undefined) =>
    value === undefined ? 'not read' : say(value as never, 'gaugePressure', wording.units);
  const lines = [
    ...(test ? describeTest(test, wording) : []),
    ...leakage.flatMap(({ cylinder, leak }) => describeLeakage(cylinder, leak, wording)),
  ];
  return section('COMPRESSION', [
    ...columns(
      ['cylinder', 'dry', 'with oil'],
      cylinders.map(({ name, dry, wet }) => [name, print(dry), print(wet)]),
    ),
    ...lines.flatMap((line) => wrap(line, 2)),
  ]);
}

const SAYS: Readonly<Record<JudgedCompression['outcome'], string>> = {
  kept: 'the readings keep to every rule',
  broken: 'the readings break the rules',
  undecided: 'the readings do not decide it',
  'rules disagree': 'the rules disagree',
};

/** What all rules say of a test, each by itself, and what oil and neighbours suggest. */
function describeTest(test: JudgedCompression, wording: Wording): readonly string[] {
  const { outcome, byOwnRules, rules, oiled, gasketBetween, notRead, takenAsExact } = test;
  return [
    byOwnRules === undefined
      ? `No rule of this engine is stated; by the rules of other engines, which only advise, ${SAYS[outcome]}.`
      : `By the rules of this engine ${SAYS[byOwnRules]}.`,
    ...rules.map(({ rule, verdict, cylinder, finding: { grade, ...finding } }) =>
      notRead.length > 0 && verdict === 'undecided'
        ? `${describeRule(rule, wording)}: undecided, as ${notRead.join(', ')} was not read`
        : `${describeRule(rule, wording)}: ${verdict}; ${cylinder} decides; ${sayFinding(finding, wording)}`,
    ),
    ...(onlyCompares(rules.map(({ rule }) => rule)) ? [BLIND] : []),
    ...oiled.map(describeOiled),
    ...gasketBetween.map(
      ([one, other]) =>
        `${one} and ${other} stand side by side and are both low: maybe the gasket between them leaks; a leakage test tells`,
    ),
    ...(notRead.length > 0 ? [`not read: ${notRead.join(', ')}`] : []),
    ...(takenAsExact.length > 0
      ? [
          `taken as exact, as nothing is said of ${takenAsExact.map((what) => TAKEN[what]).join(' and ')}`,
        ]
      : []),
  ];
}

const TAKEN = {
  gauge: 'the error of the gauge',
  repeats: 'how well a cylinder repeats',
} as const;

function describeOiled({ cylinder, suggests }: OiledCylinder): string {
  switch (suggests) {
    case 'rings or bore':
      return `${cylinder}: oil raises it, which speaks of rings or bore; a rule of thumb, as oil fills some of a small chamber too`;
    case 'valves or gasket':
      return `${cylinder}: oil does not raise it, which speaks of valves or gasket; a rule of thumb`;
    case 'undecided':
      return `${cylinder}: oil raised it, but by too little to tell with these errors`;
    case 'nothing':
      return `${cylinder}: oil did little`;
  }
}

function describeLeakage(
  cylinder: string,
  { lost, finding, leakArea, suspects = [] }: LeakDown,
  wording: Wording,
): readonly string[] {
  const area =
    leakArea &&
    `; a hole of ${format(leakArea.min, squareMm, 2)} to ${format(leakArea.max, squareMm, 2)} leaks as much`;
  return [
    `${cylinder}: ${finding ? sayFinding(finding, wording) : `it loses ${format(lost, percent, 0)} of the pressure of this tester; not judged, as no limit for it is given`}${area ?? ''}`,
    ...suspects.map(
      ({ heardAt, part }) =>
        `${cylinder}: air at the ${heardAt}: ${part}; look before anything is ground or taken apart`,
    ),
  ];
}
