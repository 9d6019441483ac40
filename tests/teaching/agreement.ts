import {
  blendViscosity,
  borePlan,
  dripFlow,
  endPlay,
  explainClearance,
  flattenedThreadGap,
  fuelFraction,
  fuelInSump,
  type GrindRequest,
  grindPlan,
  journalShape,
  type Length,
  metre,
  oilClearance,
  pistonClearance,
  type Quantity,
  recommendedOilClearance,
  recommendedRingGap,
  ringFilingNeeded,
  ringGapIn,
  shellWallFor,
  timeToDilution,
  type ViscosityLine,
  viscosityAt,
} from 'crankwright';
import type { CardName } from 'crankwright/teaching';
import { filmCode } from './agreement-film.js';
import { motionCode } from './agreement-motion.js';
import { oilCode } from './agreement-oil.js';
import { viscosityCode } from './agreement-viscosity.js';

/** Values of a card's letters. The test checks that a letter is one of the card before it is read. */
type Letters = (symbol: string) => never;

/** The library's own code for each card, fed with the same letters. */
export const code: Readonly<Record<CardName, (v: Letters) => number>> = {
  outOfRound: (v) =>
    journalShape([
      { station: metre(0), angle: 0 as never, diameter: v('D_max') },
      { station: metre(0), angle: 1 as never, diameter: v('D_min') },
      { station: metre(0.02), angle: 0 as never, diameter: v('D_min') },
      { station: metre(0.02), angle: 1 as never, diameter: v('D_min') },
    ]).outOfRound,
  journalLeft: (v) => {
    const { because } = grindPlan(worn(v('D_min'), v('o'), v('r'), v('a')));
    const reason = because.find(({ kind }) => kind === 'cleans up');
    return reason?.kind === 'cleans up' ? reason.available : Number.NaN;
  },
  targetDiameter: (v) => {
    const standard = { min: v('D_s'), max: v('D_s') };
    const plan = grindPlan({
      ...worn(metre(0.0496), metre(0), metre(0), metre(0)),
      standard,
      steps: [v('u')],
    });
    return plan.outcome === 'none' ? Number.NaN : plan.target.max;
  },
  endPlay: (v) => endPlay([{ pushed: v('x_1'), pulled: v('x_2') }]).mean,
  oilClearance: (v) =>
    oilClearance({ housingBore: v('D_h'), shellWall: v('t'), journal: v('D_j') }),
  shellWallFor: (v) => shellWallFor({ standardWall: v('t'), undersize: v('u') }),
  recommendedOilClearance: (v) => recommendedOilClearance(v('D_j')).target,
  explainClearance: (v) => {
    const limits = { min: metre(1e-5), max: metre(1e-4) };
    const why = explainClearance({
      clearance: v('c'),
      journal: metre(0.05),
      limits,
      steps: [v('s')],
    });
    return 'matched' in why ? why.matched.value : Number.NaN;
  },
  flattenedThreadGap: (v) => flattenedThreadGap({ threadDiameter: v('d'), flattenedWidth: v('w') }),
  pistonClearance: (v) => pistonClearance({ bore: v('D'), piston: v('D_p') }),
  boreNeeded: (v) => {
    const { because } = bored(metre(0.08), v('D_max'), v('o'), v('h'));
    const reason = because.find(({ kind }) => kind === 'cleans up');
    return reason?.kind === 'cleans up' ? reason.needed : Number.NaN;
  },
  wallLeft: (v) => {
    const bore = metre(0.08);
    const most = (v('D') - bore) as Length;
    const plan = bored(v('D_min'), metre(0.0802), metre(0), metre(0), v('t_0'), most);
    return (plan.outcome !== 'none' && plan.cylinders[0]?.wallLeft) || Number.NaN;
  },
  recommendedRingGapLeast: (v) => recommendedRingGap(v('D')).limits.min ?? Number.NaN,
  recommendedRingGapMost: (v) => recommendedRingGap(v('D')).limits.max ?? Number.NaN,
  ringGapIn: (v) => ringGapIn({ gap: v('g_0'), measuredIn: v('D_0'), bore: v('D') }),
  ringFilingNeeded: (v) => {
    const limits = { min: v('g_min') };
    const filing = ringFilingNeeded({ gap: v('g'), measuredIn: metre(0.08), limits });
    return filing.work === 'file' ? filing.remove.min : Number.NaN;
  },
  viscosityAt: (v) => {
    const line: ViscosityLine = [
      { temperature: v('T_1'), viscosity: v('nu_1') },
      { temperature: v('T_2'), viscosity: v('nu_2') },
    ];
    return viscosityAt(line, v('T'));
  },
  blendByVolume: (v) => blendViscosity({ law: 'ASTM D7152', parts: partsOf(v) }),
  blendByMass: (v) => blendViscosity({ law: 'Refutas', parts: partsOf(v) }),
  fuelByVolume: (v) => fuelFraction({ law: 'ASTM D7152', ...viscosities(v) }),
  fuelByMass: (v) => fuelFraction({ law: 'Refutas', ...viscosities(v) }),
  dripFlow: (v) => dripFlow({ drops: v('n'), dropVolume: v('V_d') }),
  fuelInSump: (v) =>
    fuelInSump({ leak: v('q'), evaporation: v('k'), time: v('t'), oil: 0.001 as never }).fuel,
  fuelFractionInSump: (v) => fuelInSump({ leak: v('q'), oil: v('V_o'), time: v('t') }).fraction,
  timeToDilution: (v) => timeOf({ leak: v('q'), oil: v('V_o'), fraction: v('x') }),
  timeToDilutionWithLoss: (v) =>
    timeOf({ leak: v('q'), oil: v('V_o'), fraction: v('x'), evaporation: v('k') }),
  ...filmCode,
  ...motionCode,
  ...oilCode,
  ...viscosityCode,
};

function worn(
  smallest: Length,
  outOfRound: Length,
  runout: Length,
  allowance: Length,
): GrindRequest {
  const largest = (smallest + outOfRound) as Length;
  return {
    journals: [{ name: 'journal', smallest, largest, outOfRound, taper: metre(0), runout }],
    standard: { min: metre(0.05), max: metre(0.05) },
    steps: [metre(0.0008)],
    cleanUpAllowance: allowance,
  };
}

function bored(
  smallest: Length,
  largest: Length,
  outOfRound: Length,
  honingAllowance: Length,
  wall?: Length,
  oversize = metre(0.0008),
) {
  return borePlan({
    cylinders: [
      { name: 'c', smallest, largest, outOfRound, taper: metre(0), ...(wall && { wall }) },
    ],
    standard: { min: metre(0.08), max: metre(0.08) },
    steps: [oversize],
    honingAllowance,
    leastWall: metre(0.001),
  });
}

function partsOf(v: Letters) {
  const fuel: number = v('x');
  return [
    { viscosity: v('nu_o'), fraction: (1 - fuel) as never },
    { viscosity: v('nu_f'), fraction: fuel as never },
  ] as const;
}

function viscosities(v: Letters) {
  return { oil: v('nu_o'), fuel: v('nu_f'), sample: v('nu_s') };
}

function timeOf(sump: Parameters<typeof timeToDilution>[0]): Quantity<'time'> | number {
  const until = timeToDilution(sump);
  return until.reached ? until.time : Number.NaN;
}
