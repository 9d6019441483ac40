import {
  type AssemblySettings,
  describeDipper,
  describeTiming,
  FASTENER_NAMES,
  type FastenerSetting,
  type FitSetting,
  type TimingSetting,
} from '../assembly/index.js';
import type { JudgedCompression, LeakDown } from '../cylinders/index.js';
import type { Finding, Wording } from '../judging/index.js';
import { holds, sayFinding } from '../judging/internal.js';
import type { DipperDip } from '../motion/index.js';
import type { CompressionReport } from './inspect-compression.js';

/** Something to do about cylinders that leak, or parts that do not fit each other. */
export type AssemblyAction =
  | {
      /** Cylinders are low on the compression gauge. */
      readonly kind: 'low compression';
      /** The test, judged. */
      readonly test: JudgedCompression;
    }
  | {
      /** Two parts fit each other too loosely or too tightly. */
      readonly kind: 'wrong fit';
      /** Which. */
      readonly fit: string;
      /** The finding that they fail. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** The torque may pull bolts past what they bear. */
      readonly kind: 'overloaded bolts';
      /** What they hold. */
      readonly holds: FastenerSetting['holds'];
      /** The highest preload against the proof load. */
      readonly finding: Finding<'force'>;
    }
  | {
      /** A dipper strikes its trough, or misses the oil. */
      readonly kind: 'dipper';
      /** How the dippers run. */
      readonly dipper: DipperDip;
    }
  | {
      /** The spark for starting comes too early, may do so, or nobody knows where it comes. */
      readonly kind: 'starting spark';
      /** Where valves and spark come. */
      readonly timing: TimingSetting;
    }
  | {
      /** A cylinder leaks more than it may. */
      readonly kind: 'leaking cylinder';
      /** Which. */
      readonly cylinder: string;
      /** What it lost, and where that went. */
      readonly leak: LeakDown;
    };

/** What wrecks an engine or hurts its owner, whatever else is to be done. */
export function dangerActions(settings: AssemblySettings | undefined): readonly AssemblyAction[] {
  const { fasteners = [], dipper, timing } = settings ?? {};
  return [
    ...fasteners.flatMap(({ holds: what, setting }) =>
      setting && !holds(setting.finding)
        ? [{ kind: 'overloaded bolts' as const, holds: what, finding: setting.finding }]
        : [],
    ),
    ...(dipper && (dipper.strikes !== 'no' || dipper.reachesOil !== 'yes')
      ? [{ kind: 'dipper' as const, dipper }]
      : []),
    ...(timing && timing.card.cautions.length > 1
      ? [{ kind: 'starting spark' as const, timing }]
      : []),
  ];
}

/** What the tests of the cylinders and the fits call for. A test that breaks a rule of another engine counts where this one has none. */
export function assemblyActions(
  { test, leakage = [] }: Partial<CompressionReport>,
  fits: readonly FitSetting[] = [],
): readonly AssemblyAction[] {
  const says = test?.byOwnRules ?? test?.outcome;
  return [
    ...(test && (says === 'broken' || says === 'rules disagree')
      ? [{ kind: 'low compression' as const, test }]
      : []),
    ...leakage.flatMap(({ cylinder, leak }) =>
      leak.finding && !holds(leak.finding) && leak.finding.verdict !== 'undecided'
        ? [{ kind: 'leaking cylinder' as const, cylinder, leak }]
        : [],
    ),
    ...fits.flatMap(({ name: fit, finding }) =>
      finding && !holds(finding) && finding.verdict !== 'undecided'
        ? [{ kind: 'wrong fit' as const, fit, finding }]
        : [],
    ),
  ];
}

/** Describes it in a sentence. */
export function describeAssemblyAction(action: AssemblyAction, wording: Wording): string {
  switch (action.kind) {
    case 'low compression':
      return describeLowCompression(action.test);
    case 'wrong fit':
      return `${action.fit}: measure both parts again; if they stand, find another shaft, or have the hole bushed, bored or reamed to suit; press nothing before that; ${sayFinding(action.finding, wording)}`;
    case 'overloaded bolts':
      return `${FASTENER_NAMES[action.holds]}: do not tighten to that torque before you know that the grade of the bolts, and what is on their threads, are those of the torque; ${sayFinding(action.finding, wording)}`;
    case 'dipper':
      return describeDipper(action.dipper, wording).dangers.join(' ').replace(/\.$/, '');
    case 'starting spark':
      return `do not swing the starting handle before this is settled: ${describeTiming(action.timing, wording).cautions.join(' ').replace(/\.$/, '')}`;
    case 'leaking cylinder': {
      const { finding, suspects = [] } = action.leak;
      const where = suspects.map(({ part }) => part);
      return `${action.cylinder}: test its leakage again, warm; if it stands, look at ${where.length > 0 ? where.join(', then ') : 'where the air comes out'} before anything is ground; a piston under air can spin the crank${finding ? `; ${sayFinding(finding, wording)}` : ''}`;
    }
  }
}

function describeLowCompression({ byOwnRules, rules }: JudgedCompression): string {
  const low = [...new Set(rules.flatMap((rule) => rule.low))].join(', ');
  const rule =
    byOwnRules === undefined
      ? ' by a rule of another engine, which only advises: find the rule of this one'
      : '';
  return `${low || 'the cylinders'}: low compression${rule}; test again, warm and with the throttle open; if it stands, set the lash first, then read it with a little oil, then find the leak with air: a piston under air can spin the crank`;
}
