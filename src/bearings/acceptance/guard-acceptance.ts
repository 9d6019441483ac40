import {
  diametralClearance,
  guardFields,
  guardSpan,
  guardWord,
  namedFrom,
} from '../../judging/internal.js';
import { bearingLoad } from '../../motion/internal.js';
import type { Length } from '../../quantities/index.js';
import { filmToRoughness, shareInDoubt } from '../film/domains.js';
import { combinedRoughness } from '../film/film-regime.js';
import { type CheckedBearing, guardFedBearing } from '../film/heat-balance.js';
import { guardLoads } from '../orbit/guard-big-end.js';
import type { BearingToAccept } from './acceptance-types.js';
import { NO_FILTER, particleSize } from './domains.js';
import { guardSameSpeed } from './guard-same-speed.js';
import { guardSupply } from './oil-supply.js';
import { type ShellLimits, shellLimits } from './shell-material.js';

const FIELDS = [
  'journal',
  'length',
  'clearance',
  'speed',
  'load',
  'oil',
  'inlet',
  'specificHeat',
  'carried',
  'material',
  'roughness',
  'filmRatio',
  'duty',
  'largestParticle',
  'supply',
  'loads',
  'rule',
  'startUpLoad',
  'loadDoubt',
] as const;
const DUTIES = ['general', 'closely fitted'] as const;
const RULES = ['Trumpler'] as const;

/** A bearing to accept that was checked. */
export interface CheckedAcceptance {
  /** The bearing at either end of its clearance, once if that is one size. */
  readonly ends: readonly CheckedBearing[];
  readonly loads?: BearingToAccept['loads'];
  readonly combined?: Length;
  readonly metal?: ShellLimits;
}

/** Refuses a bearing that cannot be, and what no one can know of it. */
export function guardAcceptance(bearing: BearingToAccept): CheckedAcceptance {
  guardFields('bearing', bearing, FIELDS);
  const { roughness, material, loads } = bearing;
  guardIfGiven(bearing);
  return {
    ends: endsOf(bearing),
    ...(loads !== undefined && { loads: guardSameSpeed(guardLoads(loads), bearing.speed) }),
    ...(roughness !== undefined && { combined: combinedRoughness(roughness) }),
    ...(material !== undefined && { metal: shellLimits(material) }),
  };
}

function endsOf(bearing: BearingToAccept): readonly CheckedBearing[] {
  const { clearance } = bearing;
  const { min, max } = guardSpan('clearance', clearance, diametralClearance);
  const at = (size: Length, end: 'min' | 'max') =>
    namedFrom(
      () => (typeof clearance === 'object' ? { clearance: `clearance.${end}` } : {}),
      () => guardFedBearing({ ...bearing, clearance: size }),
    );
  return min === max ? [at(min, 'min')] : [at(min, 'min'), at(max, 'max')];
}

function guardIfGiven(bearing: BearingToAccept): void {
  const { filmRatio, duty, largestParticle, rule, startUpLoad, loadDoubt, supply } = bearing;
  if (filmRatio !== undefined) filmToRoughness('filmRatio', filmRatio);
  if (duty !== undefined) guardWord('duty', duty, DUTIES);
  if (largestParticle !== undefined && largestParticle !== NO_FILTER) {
    particleSize('largestParticle', largestParticle);
  }
  if (rule !== undefined) guardWord('rule', rule, RULES);
  if (startUpLoad !== undefined) bearingLoad('startUpLoad', startUpLoad);
  if (loadDoubt !== undefined) shareInDoubt('loadDoubt', loadDoubt);
  guardSupply('supply', supply);
}
