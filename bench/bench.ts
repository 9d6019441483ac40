/**
 * Ratios against peers, all measured in this one run, on this one machine: how
 * long a conversion, a guarded formula and a cold import take, and what one
 * function weighs; how long an oil film, the path of a crankpin, the roundness of a trace, random stacks and choices of
 * parts take, and plans of sheds [s], with parts that nobody has measured, and of a dealer's.
 * A missed target makes the exit code 1.
 */
import { weighBundles } from './bundle-size.js';
import { timeCalc } from './calc-start.js';
import { raceChoice } from './choice-race.js';
import { raceClearances } from './clearance-race.js';
import { timeColdImports } from './cold-import.js';
import { raceConverters } from './convert-race.js';
import { planOfDealer } from './dealer.js';
import { timeExercises } from './exercise-race.js';
import { raceFilms } from './film-race.js';
import { timeLookUps } from './fits-race.js';
import { raceFormulas } from './formula-race.js';
import { raceOrbits } from './orbit-race.js';
import { timePlans } from './plan-race.js';
import { printSection, type Section } from './report.js';
import { raceRoundness } from './roundness-race.js';
import { raceStacks } from './stack-race.js';
import { raceUnknown } from './unknown-race.js';

console.log(`Node ${process.versions.node}. Ratios are medians of rounds that were interleaved;`);
console.log('beside them the range that the middle half of the rounds fell in.');

const sections: readonly Section[] = [
  ...raceConverters(),
  raceClearances(),
  raceFormulas(),
  timeLookUps(),
  timeExercises(),
  ...raceFilms(),
  ...raceOrbits(),
  ...(await raceRoundness()),
  ...raceStacks(),
  timeColdImports(),
  timeCalc(),
  await weighBundles(),
  ...(await timePlans()),
  await raceChoice(),
  await raceUnknown(),
  planOfDealer(),
];
const met = sections.map(printSection);
if (met.includes(false)) process.exitCode = 1;
