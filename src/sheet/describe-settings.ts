import {
  type AssemblySettings,
  type CompressionSetting,
  describeCranking,
  describeDipper,
  describeFastener,
  describeFit,
  describeRules,
  describeSpaces,
  describeTiming,
  describeValve,
  FASTENER_NAMES,
  sayLimits,
} from '../assembly/index.js';
import { describeTorqueSetting } from '../fasteners/index.js';
import type { BasedLimits, Wording } from '../judging/index.js';
import { describeSpan, holds, noteOf, say, sayFinding } from '../judging/internal.js';
import type { DipperDip } from '../motion/index.js';
import { type PageSection, section, wrap } from '../pages/index.js';
import type { ValveReport } from './inspect-valve.js';
import { describeStem } from './valve-actions.js';

/** The valves that were read, one after the other. */
export function valveSections(
  valves: readonly ValveReport[],
  wording: Wording,
): readonly PageSection[] {
  if (valves.length === 0) return [];
  const { units } = wording;
  const lines = valves.flatMap(({ name, findings, spring, springForces, stem, withoutLimit }) => [
    `${name}:`,
    ...findings.map((finding) => `  ${sayFinding(finding, wording)}`),
    ...(stem ? [`  stem: ${describeStem(stem, wording)}`] : []),
    ...(spring
      ? [
          `  spring: rate ${describeSpan(spring.rateSpan, 'stiffness', units)}, free height about ${say(spring.freeHeight, 'length', units)}`,
        ]
      : []),
    ...(withoutLimit.length > 0
      ? [`  measured, but not judged, as no limit of it is stated: ${withoutLimit.join(', ')}`]
      : []),
    ...springForces.map((finding) => `  ${sayFinding(finding, wording)}`),
  ]);
  return [
    section(
      'VALVES',
      lines.flatMap((line) => wrap(line, 4)),
    ),
  ];
}

/** What the engine is set to as it goes together, topic by topic. */
export function settingSections(
  settings: AssemblySettings,
  wording: Wording,
): readonly PageSection[] {
  const { fits, compression, timing, dipper } = settings;
  const { cautions, notes } = timing
    ? describeTiming(timing, wording)
    : { cautions: [], notes: [] };
  return [
    ...topic('TORQUE', torqueOf(settings, wording)),
    ...topic('LASH AND SPRINGS TO SET', lashOf(settings, wording)),
    ...topic('RINGS IN THEIR GROOVES', ringsOf(settings, wording)),
    ...topic(
      'FITS',
      fits.flatMap((fit) => describeFit(fit, wording)),
    ),
    ...topic('COMPRESSION BY SIZES', compression ? compressionOf(compression, wording) : []),
    ...topic('TIMING', [...cautions.map((each) => `CAUTION: ${each}`), ...notes]),
    ...topic('DIPPERS', dipper ? dippersOf(dipper, wording) : []),
  ];
}

function torqueOf({ fasteners, wrench }: AssemblySettings, wording: Wording): readonly string[] {
  return fasteners.flatMap((setting) => {
    const name = FASTENER_NAMES[setting.holds];
    const { torque: said, notes } = describeFastener(setting, wording, wrench);
    // The torque itself is said; a preload that is too high comes first here, and stands among the notes.
    const known = setting.setting
      ? describeTorqueSetting(setting.setting, { ...wording, ...(wrench && { wrench }) }).slice(
          holds(setting.setting.finding) ? 1 : 2,
          3,
        )
      : [];
    return [`${name}: ${said ?? 'no torque'}`, ...[...known, ...notes].map((note) => `  ${note}`)];
  });
}

function lashOf({ valves }: AssemblySettings, wording: Wording): readonly string[] {
  return valves.flatMap((setting) => {
    const { lash: said, notes } = describeValve(setting, wording);
    return [
      ...(said ? [`${setting.valve}: ${said}`] : []),
      ...notes.map((note) => `  ${note}`),
      ...setting.springs.map(
        ({ at, height, force }) =>
          `${setting.valve}, spring with the valve ${at}: ${sayLimits(force, 'force', wording.units)} at ${say(height, 'length', wording.units)} ${noteOf(force.basis, wording)}`,
      ),
    ];
  });
}

function ringsOf(
  { rings: { sideClearance, backClearance } }: AssemblySettings,
  wording: Wording,
): readonly string[] {
  const said = (limits: BasedLimits<'length'>) =>
    `${sayLimits(limits, 'length', wording.units)} ${noteOf(limits.basis, wording)}`;
  return [
    ...(sideClearance ? [`side clearance ${said(sideClearance)}`] : []),
    ...(backClearance
      ? [`a ring pushed right in lies below its land by ${said(backClearance)}`]
      : []),
  ];
}

function compressionOf(compression: CompressionSetting, wording: Wording): readonly string[] {
  const { before, rules } = describeRules(compression, wording);
  return [
    ...describeSpaces(compression, wording),
    ...describeCranking(compression, wording),
    `Compression test. ${before}`,
    ...rules.map((rule) => `  ${rule}`),
  ];
}

function dippersOf(dipper: DipperDip, wording: Wording): readonly string[] {
  const { depth, dangers, notes } = describeDipper(dipper, wording);
  return [`depth in the oil ${depth}`, ...dangers.map((each) => `CAUTION: ${each}`), ...notes];
}

const topic = (title: string, lines: readonly string[]): readonly PageSection[] =>
  lines.length === 0
    ? []
    : [
        section(
          title,
          lines.flatMap((line) => wrap(line, 4)),
        ),
      ];
