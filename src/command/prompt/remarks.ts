import {
  type BearingSizes,
  describeClearance,
  explainClearance,
  type MaxDilutionSpan,
  recommendedOilClearance,
} from '../../bearings/index.js';
import { READ_BEFORE_BLAME } from '../../bearings/internal.js';
import { undersizeSteps } from '../../crankshaft/index.js';
import type { PressFit, ShrinkTemperature } from '../../fits/index.js';
import { NANOMETRE } from '../../judging/internal.js';
import type { DoneCall } from '../../mathjs/internal.js';
import type { ThinningFinding } from '../../oil/index.js';
import { capital } from '../../pages/index.js';
import { type Length, percentByVolume, type UnitSystem } from '../../quantities/index.js';
import type { LashGrowth } from '../../valves/index.js';
import { sayPath } from './say-path.js';
import { sayIn, sayResultIn, unitToSay } from './show-quantity.js';

const READ_AGAIN = capital(READ_BEFORE_BLAME);

/** What a machinist would add to a bare result: the rest of its line, and lines below it. */
export function remarkOn(call: DoneCall, units: UnitSystem): string | undefined {
  if (call.name === 'shrinkTemperature') return onHeating(call.result as ShrinkTemperature);
  if (call.name === 'thinningFinding') return onThick(call.result as ThinningFinding);
  if (call.name === 'pressFit') return onStrength(call.result as PressFit);
  if (call.name === 'lashGrowth') {
    return `${onLash(call.result as LashGrowth)}${onRange(call.result) ?? ''}`;
  }
  return call.name === 'oilClearance' ? onClearance(call, units) : onRange(call.result);
}

/** The sentence that a long result begins with. */
export function headOn({ name, result }: DoneCall): string | undefined {
  if (name !== 'maxFuelDilutionSpan') return undefined;
  const { span, drivers } = result as MaxDilutionSpan;
  const [first] = drivers;
  const most =
    first && first.span.min < first.span.max ? ` It hangs most on the ${first.driver}.` : '';
  const [least, last] = [span.min, span.max].map((end) => sayResultIn(end, percentByVolume));
  return `The film stands ${least} of fuel at the least and ${last} at the most, with one number in doubt at a time. Go by the least: two in doubt at once move it further.${most}`;
}

/** What is warmer or colder than its table of expansion reaches. */
function onRange(result: unknown): string | undefined {
  const { outsideRange = [] } = (result ?? {}) as { readonly outsideRange?: readonly string[] };
  return Array.isArray(outsideRange) && outsideRange.length > 0
    ? `\noutside of the temperatures that its expansion is tabled for: ${outsideRange.map(sayPath).join(', ')}; take the figures as an estimate`
    : undefined;
}

/** At which end, in which state and for which valve a lash is. */
const onLash = ({ coldLash }: LashGrowth): string =>
  coldLash
    ? "\ncoldLash is what to set on the cold engine, at the end of the valve's stem, nearer the most: a valve without lash burns. It is for the one valve that these pieces are of; work inlet and exhaust each by its own heat"
    : "\ngrowth is at the end of the valve's stem, from cold to hot; below zero the lash closes. Add hotLash for what to set cold";

/** A sample that is thicker than clean oil says nothing of thinning. */
const onThick = ({ stage }: ThinningFinding): string | undefined =>
  stage === 'thicker'
    ? '\nthe sample is thicker than the clean oil, so this tells nothing of fuel: look first whether the two are swapped, or the sample was colder'
    : undefined;

/** Stresses that nobody gave a strength for are not judged. */
const onStrength = ({ findings }: PressFit): string | undefined =>
  findings.length === 0
    ? '\nno strength is given, so no stress is judged and the fit is not known to be sound: add yieldStrength to shaft and hub, or tensileStrength to a hub of grey iron'
    : undefined;

/** How hot a hub may be made, if nobody has said it. */
const onHeating = ({ finding }: ShrinkTemperature): string | undefined =>
  finding
    ? undefined
    : '\nhow hot the hub may be made is not given, so this is not judged: add heating: heatingLimit("mild steel"), or that of your metal; .about heatingLimit lists them';

function onClearance(call: DoneCall, units: UnitSystem): string | undefined {
  if (typeof call.result !== 'number') return undefined;
  const [sizes] = call.args as readonly [BearingSizes];
  const { journal } = sizes;
  const clearance = call.result as Length;
  const unit = unitToSay(clearance, 'length', units);
  const length = (each: Length) => sayResultIn(each, unit);
  try {
    const why = explainClearance({ clearance, journal, steps: undersizeSteps(units) });
    const { limits, basis } = recommendedOilClearance(journal);
    const { min = clearance, max = clearance } = limits;
    const rule = basis.kind === 'common practice' ? basis.rule : '';
    const grips = clearance < -NANOMETRE;
    const isOut = !grips && (clearance > max || clearance < min);
    const beside = isOut
      ? `: ${clearance > max ? 'above' : 'below'} ${length(clearance > max ? max : min)}, by common practice (${rule})`
      : '';
    const stuck = grips ? `\n${onInterference(sizes, length(-clearance as Length), units)}` : '';
    if (!('mismatch' in why)) {
      // The sentence of the library says where it stands, in its own unit.
      return grips
        ? `${stuck} Read all three again; a mistake in the wall counts twice.`
        : `\n${describeClearance(why, { units }).join('\n')}`;
    }
    const { outcome, mismatch, matched } = why;
    const asked =
      outcome === 'journal ground, shells not'
        ? 'ground journal, shells for a larger one?'
        : 'shells for a smaller journal?';
    return `${beside}${stuck}\n${asked} A step of ${length(mismatch)} explains it: matching shells would leave ${length(matched.value)}. ${READ_AGAIN}.`;
  } catch {
    // A clearance so far off that nothing explains it: the number stands alone.
    return undefined;
  }
}

/** That a journal does not go in, and of what three readings that comes. */
function onInterference(sizes: BearingSizes, by: string, units: UnitSystem): string {
  const [journal, housing, wall] = [sizes.journal, sizes.housingBore, sizes.shellWall].map((each) =>
    sayIn(each, unitToSay(each, 'length', units)),
  );
  return `a journal of ${journal} does not go into a housing bore of ${housing} with shells of ${wall}: it is ${by} larger than the hole that they leave.`;
}

/** What hurts somebody, or wrecks the engine, where the result is acted on. */
const CARE: Readonly<Record<string, string>> = {
  shrinkTemperature:
    'Hot metal looks cold: wear dry gloves and cover your eyes. Heat in an oven, or in oil well below its flash point; never cast iron with a torch at one spot.',
  hydraulicLockHours:
    'A flooded cylinder bends its rod: take the plugs out before you crank, and keep sparks and flames away.',
  skimForRatio:
    "Every part above comes nearer: check each valve at full lift, and the room above the piston, by hand before it runs. Without the maker's figure leave an old engine its ratio.",
  gasketForRatio:
    'A thin gasket brings piston and valves nearer to the head: a piston past its face hits it. Turn the engine over by hand before it runs.',
  torqueSetting:
    'Too little preload breaks a rod bolt as surely as too much: the joint works until the bolt is tired.',
};

/** The usual caution on a result, and what must be done before anything rests on it. */
export function cautionOn({ name, result }: DoneCall): string | undefined {
  const told = (typeof result === 'object' && result !== null ? result : {}) as {
    readonly stage?: unknown;
  };
  if (name === 'explainClearance' && 'mismatch' in told) {
    return `${READ_AGAIN}, before anything rests on that.`;
  }
  if (name === 'dilutionFinding' && told.stage === 'critical') {
    return 'Do not run it. Fuel vapour in a crankcase can explode: drain it in the open, away from any flame or spark.';
  }
  return CARE[name];
}
