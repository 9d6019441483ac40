import {
  type AssemblySettings,
  describeCompression,
  describeDipper,
  describeFastener,
  describeFit,
  describeTiming,
  describeValve,
  FASTENER_NAMES,
  sayLimits,
} from '../assembly/index.js';
import { describeTorqueSetting } from '../fasteners/index.js';
import { describe, type Wording } from '../judging/index.js';
import { describeSpan, noteOf, say } from '../judging/internal.js';
import { section, wrap } from '../pages/index.js';
import type { ValveReport } from './inspect-valve.js';
import { describeStem } from './valve-actions.js';

/** The valves that were read, one after the other. */
export function valveSections(valves: readonly ValveReport[], wording: Wording): readonly string[] {
  if (valves.length === 0) return [];
  const { units } = wording;
  const lines = valves.flatMap(({ name, findings, spring, stem }) => [
    `${name}:`,
    ...findings.map((finding) => `  ${describe(finding, wording)}`),
    ...(stem ? [`  stem: ${describeStem(stem, wording)}`] : []),
    ...(spring
      ? [
          `  spring: rate ${describeSpan(spring.rateSpan, 'stiffness', units)}, free height about ${say(spring.freeHeight, 'length', units)}`,
        ]
      : []),
    ...[spring?.closed, spring?.open].flatMap((finding) =>
      finding ? [`  ${describe(finding, wording)}`] : [],
    ),
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
  { fasteners, valves, fits, wrench, compression, timing, dipper }: AssemblySettings,
  wording: Wording,
): readonly string[] {
  const torque = fasteners.flatMap((setting) => {
    const name = FASTENER_NAMES[setting.holds];
    const { torque: said, notes } = describeFastener(setting, wording, wrench);
    const known = setting.setting
      ? describeTorqueSetting(setting.setting, { ...wording, ...(wrench && { wrench }) }).slice(
          1,
          3,
        )
      : [];
    return [`${name}: ${said ?? 'no torque'}`, ...[...known, ...notes].map((note) => `  ${note}`)];
  });
  const lash = valves.flatMap((setting) => {
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
  return [
    ...topic('TORQUE', torque),
    ...topic('LASH AND SPRINGS TO SET', lash),
    ...topic(
      'FITS',
      fits.flatMap((fit) => describeFit(fit, wording)),
    ),
    ...topic('COMPRESSION BY SIZES', compression ? describeCompression(compression, wording) : []),
    ...topic('TIMING', timing ? describeTiming(timing, wording) : []),
    ...topic('DIPPERS', dipper ? describeDipper(dipper, wording) : []),
  ];
}

const topic = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0
    ? []
    : [
        section(
          title,
          lines.flatMap((line) => wrap(line, 4)),
        ),
      ];
