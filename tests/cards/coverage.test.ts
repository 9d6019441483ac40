import { cards } from 'crankwright/teaching';
import { expect, it } from 'vitest';
import { signaturesOf } from '../support/doc-rules.js';
import { exported, program } from '../support/exported.js';
import { importEntries } from '../support/repo.js';
import { unitsWithin } from '../support/type-units.js';

/** Functions that compute a quantity and have no card, each with the reason. */
const WITHOUT_CARD: Readonly<Record<string, string>> = {
  ...because('counts of teeth, which are whole', ['oneTooth', 'teethOff']),
  ...because('a table of what others gave', ['timingCard']),
  ...because('a film that is solved for, or read off a map of solutions', [
    'bigEndOrbit',
    'filmThickness',
    'finiteBearing',
    'finiteBearingAt',
    'heatBalance',
    'maxFuelDilution',
    'maxFuelDilutionSpan',
    'safeHours',
    'solveReynolds',
  ]),
  ...because('a comparison of quantities that others gave', ['diffPlans', 'diffSheds']),
  ...because('a choice of the best of many', [
    'matchShells',
    'nearestThreads',
    'pickShims',
    'selectFit',
  ]),
  ...because('a fit to any number of readings', ['bend', 'harmonics', 'oddReadings', 'roundness']),
  ...because('the worst of every way that an oval may lie', ['shareOfOvalSeen']),
  ...because('a list of what others judged', ['clearancesOf']),
  ...because('a list of what manuals print', ['publishedCompressionRules']),
  ...because('a list of what the trade makes', ['oversizeSteps', 'threadsIn', 'undersizeSteps']),
  ...because('an order of bolts, with shares of their torque', ['tighteningPlan']),
  ...because('the nearer limit decides, of whatever dimension', ['judge']),
  ...because('arithmetic of any two quantities, in a room below the one that makes cards', [
    'absolutePressure',
    'gaugePressure',
    'minus',
    'plus',
    'times',
  ]),
  ...because('the exact ratios of the table of units', ['convert', 'valueIn']),
  ...because('a reader of text', [
    'afterMachining',
    'parse',
    'parseLength',
    'readShed',
    'readSheet',
    'threadOf',
  ]),
  ...because('the normal distribution, whose tails no formula of a card keeps', [
    'conformanceProbability',
    'falseAcceptanceRisk',
    'falseRejectionRisk',
  ]),
  ...because('a sum over a list of whatever length', [
    'expandedUncertainty',
    'instrumentBudget',
    'readingUncertainty',
    'repeatability',
  ]),
  ...because('a search: the equation of a card turned round by halving', ['kinematicFromSaybolt']),
  ...because('a row of a table', [
    'boltStrength',
    'convertRoughness',
    'elasticConstants',
    'fitOf',
    'heatingLimit',
    'inchFit',
    'isoGrade',
    'limitsOfSize',
    'meanExpansion',
    'nutFactor',
    'shellLimits',
  ]),
  ...because('judgement on limits', [
    'actionsFrom',
    'bearingAcceptance',
    'compressionTest',
    'dilutionFinding',
    'inspect',
    'seatFindings',
    'supplyFinding',
    'torqueSetting',
    'triage',
    'whatSettles',
  ]),
  ...because('works the cards out', ['evaluateCard']),
};

function because(reason: string, names: readonly string[]): Readonly<Record<string, string>> {
  return Object.fromEntries(names.map((name) => [name, reason]));
}

const checker = program.getTypeChecker();
const values = new Map(
  [...(await importEntries()).values()].flatMap((module) => Object.entries(module)),
);

/** Every exported function that gives a quantity, alone or inside of something else. */
const computing = [...exported].flatMap(([name, symbol]) => {
  const types = signaturesOf(symbol).flatMap((node) => {
    const signature = checker.getSignatureFromDeclaration(node);
    return signature ? [checker.getReturnTypeOfSignature(signature)] : [];
  });
  return types.some((type) => unitsWithin(type, checker).size > 0) ? [name] : [];
});

it('has a card for every function that computes a quantity, or says why there is none', () => {
  const carded = new Set(Object.values(cards).map(({ of }): unknown => of));
  const without = computing.filter((name) => !carded.has(values.get(name)));
  expect(without.sort()).toEqual(Object.keys(WITHOUT_CARD).sort());
});
