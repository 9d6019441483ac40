import type { FitSetting } from '../assembly/index.js';
import type { JudgedCompression } from '../cylinders/index.js';
import { describe, type Finding, type Wording } from '../judging/index.js';
import { holds } from '../judging/internal.js';

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
    };

/** What a compression test and the fits call for. A test that breaks a rule of another engine counts where this one has none. */
export function assemblyActions(
  test: JudgedCompression | undefined,
  fits: readonly FitSetting[] = [],
): readonly AssemblyAction[] {
  const says = test?.byOwnRules ?? test?.outcome;
  return [
    ...(test && (says === 'broken' || says === 'rules disagree')
      ? [{ kind: 'low compression' as const, test }]
      : []),
    ...fits.flatMap(({ name: fit, finding }) =>
      finding && !holds(finding) && finding.verdict !== 'undecided'
        ? [{ kind: 'wrong fit' as const, fit, finding }]
        : [],
    ),
  ];
}

/** Describes it in a sentence. */
export function describeAssemblyAction(action: AssemblyAction, wording: Wording): string {
  return action.kind === 'low compression'
    ? describeLowCompression(action.test)
    : `${action.fit}: measure both parts again; if they stand, find another shaft, or have the hole bushed, bored or reamed to suit; ${describe(action.finding, wording)}`;
}

function describeLowCompression({ byOwnRules, rules }: JudgedCompression): string {
  const low = [...new Set(rules.flatMap((rule) => rule.low))].join(', ');
  const rule =
    byOwnRules === undefined
      ? ' by a rule of another engine, which only advises: find the rule of this one'
      : '';
  return `${low || 'the cylinders'}: low compression${rule}; test again, warm and with the throttle open; if it stands, set the lash first, then read it with a little oil, then find the leak with air: a piston under air can spin the crank`;
}
