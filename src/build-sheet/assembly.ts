import type { Wording } from '../judging/index.js';
import { blank, caution, checks, paragraph, type TaskStep, table } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import { stackOf } from '../planning/internal.js';
import { tradeUnit } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { allowed } from './measuring.js';

/** The ring gaps, set in the finished bores. */
export function ringGapStep({ cylinders }: Build, wording: Wording): TaskStep {
  return {
    title: 'Set the ring gaps',
    blocks: [
      paragraph(
        "Square each ring in its finished bore with the piston and measure its gap. File its ends a little at a time: you cannot put metal back. The maker's limits win over those here.",
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
export function endPlayStep({ endPlay }: Build, wording: Wording): TaskStep {
  const title = 'Set the end play';
  if (!endPlay) {
    return {
      title,
      blocks: [
        paragraph('Not planned, as its limits or a thrust width are missing.'),
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

/** The bolts. Only the maker's manual gives their torques. */
export function torqueStep({ bearings, parts }: Build): TaskStep {
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
        "Oil every bearing and bore. After each cap, turn the crankshaft by hand: if it binds, stop and measure. Take the torques from the maker's manual.",
      ),
      checks(bolts.map((bolt) => ({ write: `${bolt}, by the maker's manual` }))),
    ],
  };
}

/** Cautions and checks for the first start. */
export function startStep(): TaskStep {
  return {
    title: 'First start',
    blocks: [
      caution(
        'A spark lights fuel vapour. Ventilate, keep flames and switches away, wipe up spills, and have an extinguisher at hand. Exhaust gas kills: run the engine outdoors, or lead the exhaust outside.',
      ),
      checks([
        "Oil filled to the mark, of the grade in the maker's manual",
        'Turned by hand through two full turns: nothing binds',
        'Turned over with the plugs out until oil shows at the bearings or on the gauge',
        'Stop control tried out',
        'Guards fitted',
      ]),
      caution(
        'Stand clear of flywheel, pulley and belt, tie back hair and sleeves, and never reach over anything that spins.',
      ),
      checks([
        { write: 'Oil pressure cold' },
        { write: 'Oil pressure hot' },
        'No knock, cold or hot: if it knocks, stop at once',
        'No leak of fuel, oil or water',
      ]),
      caution(
        'Oil and water are hot after a run: let them cool before you open or drain anything.',
      ),
      checks([
        'Oil level after the first run',
        "Bolts re-torqued if the maker's manual says so",
        { write: 'First oil change after hours' },
      ]),
    ],
  };
}
