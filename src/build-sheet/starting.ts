import {
  type AssemblySettings,
  type CompressionSetting,
  describeCranking,
  describeRules,
  describeTiming,
} from '../assembly/index.js';
import type { Wording } from '../judging/index.js';
import {
  type Block,
  blank,
  bulletList,
  caution,
  checks,
  paragraph,
  type TaskStep,
  table,
} from '../pages/index.js';
import type { Build } from '../planning/index.js';
import type { EngineKind } from '../reading/index.js';
import { coolingAfter, coolingRuns, fillingWithCoolant } from './cooling.js';
import { deadIgnition, liveIgnition, pointsByManual, sparkTiming, stillDead } from './ignition.js';
import { lashHot, lashToSet } from './lash.js';
import { fillingWithOil, oilArrives, oilRuns } from './oiling.js';

/** Valves and spark: the first time that the engine is turned with its ignition on it. */
export function timingStep(
  { ignition }: EngineKind,
  settings: AssemblySettings,
  wording: Wording,
): TaskStep {
  const { timing } = settings;
  const { cautions, notes } = timing ? describeTiming(timing, wording) : NOTHING_SAID;
  return {
    title: 'Set the valves and the timing',
    blocks: [
      ...deadIgnition(ignition),
      ...cautions.map(caution),
      checks([
        ...lashToSet(settings, wording),
        ...(timing?.pointsGap ? [] : pointsByManual(ignition)),
        ...notes,
        ...sparkTiming(ignition, isListed(timing)),
      ]),
    ],
  };
}

const NOTHING_SAID = { cautions: [], notes: [] } as const;

/** Whether the marks for the spark stand above. */
const isListed = (timing: AssemblySettings['timing']): boolean =>
  timing?.card.rows.some(({ event }) => event === 'spark, running') ?? false;

/** Oil and coolant, and the first turns by hand. */
export function fillStep(
  { lubrication, ignition, cooling }: EngineKind,
  { dipper }: AssemblySettings,
  wording: Wording,
): TaskStep {
  const { note, items } = fillingWithOil(lubrication, dipper, wording);
  return {
    title: 'Fill, and turn over by hand',
    blocks: [
      ...note,
      checks([
        stillDead(ignition),
        ...items,
        ...fillingWithCoolant(cooling),
        'Turned by hand through two full turns, plugs out: nothing binds',
        ...oilArrives(lubrication),
        'Spark plugs refitted after that, gaps set, ignition still dead',
      ]),
    ],
  };
}

/** Cautions and checks for the first start and after it. */
export function startStep(
  { parts }: Build,
  { lubrication, ignition, cooling }: EngineKind,
  settings: AssemblySettings,
  wording: Wording,
): TaskStep {
  const { timing } = settings;
  const { cautions } = timing ? describeTiming(timing, wording) : NOTHING_SAID;
  const hasHead = parts.some(({ section }) => section === 'heads');
  return {
    title: 'First start',
    blocks: [
      caution(
        'A spark lights fuel vapour. Ventilate, keep flames and switches away, wipe up spills. Exhaust gas kills: run the engine outdoors, or lead the exhaust outside.',
      ),
      checks([
        'Fire extinguisher for burning liquids at hand',
        'Stop control tried out',
        'Governor linkage moves freely through its whole travel and closes the throttle: if it sticks open, the engine runs away and can burst its flywheel',
        'Guards fitted',
        'Fuel turned on: no leak',
        liveIgnition(ignition),
      ]),
      caution(
        'Stand clear of flywheel, pulley and belt, tie back hair and sleeves, and never reach over anything that spins.',
      ),
      ...(cautions.length > 0
        ? [
            caution(
              `Do not swing the starting handle before this is settled: with the plugs out and the leads earthed, turn the engine slowly and see where it would spark. ${cautions.join(' ')}`,
            ),
          ]
        : []),
      checks([
        { write: 'Started on' },
        ...oilRuns(lubrication),
        'No knock, cold or hot: if it knocks, stop at once',
        ...coolingRuns(cooling),
      ]),
      caution(
        'The engine, its oil and its water are hot after a run: let them cool before you open or drain anything. Make the ignition dead again before you put a hand inside.',
      ),
      checks([
        'Stopped after a few minutes: no bearing hotter than the others, oil where it should be',
        { write: 'Oil level after the first run' },
        ...lashHot(settings, wording),
        ...(hasHead ? ["Head re-torqued and lash set again if the maker's manual says so"] : []),
        ...coolingAfter(cooling),
        { write: 'First oil change after hours' },
      ]),
    ],
  };
}

/** The test of the compression, once the engine has run. */
export function compressionStep(
  { cylinders }: Build,
  { compression }: AssemblySettings,
  wording: Wording,
): TaskStep {
  return {
    title: 'Test the compression',
    blocks: [
      caution(
        'Shut the fuel and let the engine cool down to warm. Take all plugs out, and earth their leads away from the openings: what is blown out burns. Keep clear of what turns, and of the piston and crank where air is let in: air turns them.',
      ),
      paragraph(
        'Warm, throttle open, the same number of turns for each cylinder. Read each once more with a teaspoon of oil in it: if that raises a low one, its rings or its bore leak; if it does not, its valves or its gasket.',
      ),
      ...(compression
        ? [bulletList(describeCranking(compression, wording)), ...rulesOf(compression, wording)]
        : [paragraph("What it should read is not stated: go by the maker's manual.")]),
      table(
        ['cylinder', 'dry', 'with oil'],
        cylinders.map(({ bore }) => [bore, blank, blank]),
        1,
      ),
    ],
  };
}

/** What the readings are judged by. */
function rulesOf(compression: CompressionSetting, wording: Wording): readonly Block[] {
  const { before, rules } = describeRules(compression, wording);
  return [paragraph(before), bulletList(rules)];
}
