import type { Wording } from '../judging/index.js';
import { blank, caution, checks, paragraph, type Step, table } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import { stackOf } from '../planning/internal.js';
import { tradeUnit } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { allowed } from './measuring.js';

/** The gap of every ring, filed in its finished bore. */
export function ringGapStep({ cylinders }: Build, wording: Wording): Step {
  return {
    title: 'Set the ring gaps',
    blocks: [
      paragraph(
        "Square each ring in its finished bore with the piston, measure its gap, and file its ends a little at a time: what is off is off. The maker's limits win over those here.",
      ),
      table(
        ['bore', 'gap', 'limits by', 'top ring', 'second ring', 'oil ring'],
        cylinders.map(({ bore, ringGap }) => [
          bore,
          ...allowed(ringGap, ringGap.limits, wording),
          blank,
          blank,
          blank,
        ]),
        1,
      ),
    ],
  };
}

/** The end play, with the washers that set it. */
export function endPlayStep({ endPlay }: Build, wording: Wording): Step {
  const title = 'Set the end play';
  if (!endPlay) {
    return {
      title,
      blocks: [
        paragraph('It was not planned: a width is missing, or its limits are.'),
        checks([{ write: "End play, by the maker's manual" }]),
      ],
    };
  }
  const { washers, play, finding } = endPlay;
  const [limits, by] = allowed(finding, finding.limits, wording);
  return {
    title,
    blocks: [
      checks([stackOf(washers)]),
      table(
        ['', 'expected', 'measured', 'limits', 'limits by'],
        [['end play', formatNumber(play, tradeUnit('length', wording.units)), blank, limits, by]],
        1,
      ),
    ],
  };
}

/** Bolts: what they are torqued to stands in the maker's manual only. */
export function torqueStep({ bearings, parts }: Build): Step {
  const bolts = [
    ...(bearings.some(({ kind }) => kind === 'mains') ? ['Main bearing caps'] : []),
    'Rod caps',
    ...(parts.some(({ section }) => section === 'heads') ? ['Cylinder head'] : []),
    'Flywheel',
  ];
  return {
    title: 'Oil, assemble and torque',
    blocks: [
      paragraph(
        "Oil every bearing and bore. After each cap turn the crankshaft by hand: if it binds, stop and measure. Figures are the maker's.",
      ),
      checks(bolts.map((bolt) => ({ write: `${bolt}, by the maker's manual` }))),
    ],
  };
}

/** What to heed and to check when it runs for the first time. */
export function startStep(): Step {
  return {
    title: 'First start',
    blocks: [
      caution(
        'Fuel vapour lights from a spark. Ventilate, keep flames and switches away, wipe up what is spilt, and have an extinguisher at hand. Exhaust gas kills: run it outdoors or lead the gas outside.',
      ),
      checks([
        "Oil filled to the mark, of the grade in the maker's manual",
        'Turned by hand through two full turns: nothing binds',
        'Turned over with the plugs out until oil shows at the bearings or on the gauge',
        'The way to stop it is tried out',
        'Guards are on',
      ]),
      caution(
        'Stand clear of flywheel, pulley and belt, tie up hair and sleeves, and reach over nothing that spins.',
      ),
      checks([
        { write: 'Oil pressure cold' },
        { write: 'Oil pressure hot' },
        'No knock, cold or hot: stop at once if there is one',
        'No leak of fuel, oil or water',
      ]),
      caution(
        'Oil and water are hot after a run: let them cool before you open or drain anything.',
      ),
      checks([
        'Oil level after the first run',
        "Bolts torqued again if the maker's manual asks for it",
        { write: 'First oil change after hours' },
      ]),
    ],
  };
}
