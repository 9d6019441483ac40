import { consequence, READ_BEFORE_BLAME } from '../bearings/internal.js';
import { nameUndersize } from '../crankshaft/internal.js';
import type { Finding, Wording } from '../judging/index.js';
import {
  describeSpan,
  guardLayout,
  guardWording,
  noteOf,
  say,
  sayFinding,
} from '../judging/internal.js';
import { describeNearly, sayOddReading, saySettling } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { CRACK_TEST, HAPPENED, HITS_THE_BLOCK, journalWords, sayByRule } from '../reading/index.js';
import type { Action } from './action-types.js';
import { describeAssemblyAction } from './assembly-actions.js';
import { describeThinFilm } from './describe-film.js';
import { describeBore, describeBuying, describeGrind, WHEN } from './describe-orders.js';
import { describeRing } from './describe-ring.js';
import { describeFuelSpan, describeThinOil, WHY_THICK } from './describe-sample.js';
import { describeWait } from './describe-wait.js';
import { actionLayout } from './layouts.js';
import type { WrongShells } from './shell-action-types.js';
import { describeValveAction } from './valve-actions.js';

/**
 * Describes one action in a sentence.
 *
 * @param action - one of those that `actionsFrom` gave
 * @param wording - the units to print in
 * @returns one sentence without a full stop
 * @throws {RebuildInputError} when the action is not what `actionsFrom` gives, or the unit system is unknown
 * @example
 * ```ts
 * const sheet = readSheet({
 *   version: 1, engine: 'pump set', units: 'inch',
 *   crankshaft: { endPlay: { readings: [{ pushed: '0 thou', pulled: '14 thou' }] } },
 * });
 * actionsFrom(inspect(sheet)).flatMap((action) => describeAction(action, { units: 'inch' }));
 * // ["end play in doubt: find the maker's limits before you change it; end play 0.0140 in: 0.0040 in above the limit of 0.0100 in (common practice: crankshaft end play of 0.004 to 0.010 in (0.10 to 0.25 mm)), of new parts; no service limit is given"]
 * ```
 */
export function describeAction(action: Action, wording: Wording): readonly string[] {
  guardLayout('action', action, actionLayout, 'actionsFrom');
  guardWording(wording);
  return [sayAction(action, wording)];
}

/** The sentence of it. */
export function sayAction(action: Action, wording: Wording): string {
  const { units } = wording;
  switch (action.kind) {
    case 'do not run':
      return `DO NOT RUN: drain the oil and find the leak; ${describeFuelSpan(action, wording)}`;
    case 'measure again':
      return `${action.part}: measure it again; ${sayFinding(action.finding, wording)}; ${saySettling(action.settling, action.finding, wording)}`;
    case 'read again':
      return `${action.part}: ${sayOddReading(action.odd, wording)}; nothing is decided on it before that`;
    case 'change the oil':
      return `change the oil and find the leak; ${describeFuelSpan(action, wording)}`;
    case 'stop the leak':
      return `stop the fuel leak of ${describeSpan(action.flow, 'flow', units)} before you refill`;
    case 'thin oil':
      return describeThinOil(action.thinning, wording);
    case 'wrong shells':
      return describeWrongShells(action, wording);
    case 'wrong clearance':
      return `${action.bearing}${action.finding.value < 0 ? ': IT WILL NOT TURN, the parts interfere' : ''}: read journal, housing and shell walls again; if they stand, check the housing bore against the manual, then the stamp on the shells, and only then fit other shells or grind the journal; ${sayFinding(action.finding, wording)}`;
    case 'check sizes':
      return `${action.bearing}: measure the housing bore and the shell walls again, as the sizes contradict the stamp on the shells, and nothing is decided on it before that; ${sayFinding(action.finding, wording)}`;
    case 'thin film':
      return `DO NOT RUN: ${describeThinFilm(action.film, wording)}; check the oil, its grade and its supply, and the metal, clearance and load of the bearing`;
    case 'thick oil':
      return `change the oil: it is thicker than clean oil, ${say(action.viscosity, 'kinematicViscosity', units)} against ${say(action.clean, 'kinematicViscosity', units)}; ${WHY_THICK}, and its viscosity does not show how much fuel is in it`;
    case 'crack test':
      return describeCrackTest(action, wording);
    case 'check the housing':
      return `${action.bearing}: torque the cap and measure the housing again: it reads ${say(action.outOfRound, 'length', units)} out of round, and a round one would bring the clearance within its limits; ${sayFinding(action.finding, wording)}`;
    case 'bent crankshaft':
      return `${action.bearing}: the crankshaft reads as bent: read the dial again; if it stands, have it crack-tested, straightened and crack-tested again, then read its runout and its journals again; until then there is no size to grind to and no shell to buy; ${sayFinding(action.finding, wording)}`;
    case 'compare the housings':
      return `compare the housing bores of the ${action.journals.join(' and ')} with the manual before you buy shells or grind: no shell makes up for a bad housing`;
    case 'measure the housing':
      return `measure the housing bore of ${action.bearings.join(' and ')}, cap torqued and no shells in it: without it no clearance is judged and no shells are chosen`;
    case 'unknown oil':
      return `DO NOT RUN on the oil that is in it: ${describeSpan(action.flow, 'flow', units)} of fuel leaks into it, and how much is in it is not known; drain it, or have it measured`;
    case 'lost thrust face':
      return `DO NOT RUN: ${say(action.missing, 'length', units)} of end play is missing metal, not wear: read the dial again, then look at the thrust faces and washers of block and crankshaft, and at the rods, which run off centre; no washer makes up for a broken face; settle this before any other work; ${sayFinding(action.finding, wording)}`;
    case 'grind':
      return describeGrind(action, wording);
    case 'bore':
      return describeBore(action, wording);
    case 'no step serves':
      if (action.nearly) {
        const { undersize, journals } = action.nearly;
        return describeNearly(nameUndersize(undersize, wording), journals, 'grind');
      }
      return `no undersize saves the ${journalWords(action.journals)}${action.defeatedBy.length > 0 ? ` (${action.defeatedBy.join(', ')})` : ''}: find another crankshaft, or ask a crankshaft welding shop, before you spend anything on its other journals`;
    case 'fit shells':
      return `${action.bearing}: ${WHEN[action.when]}${action.wereFound ? 'keep' : 'fit'} "${action.match.shell.name}"${action.wereFound ? ' if both halves are bright and unmarked' : ''}, which leaves ${describeSpan(action.match.clearance, 'length', units)}`;
    case 'buy shells':
      return describeBuying(action, wording);
    case 'set the end play':
      return describeEndPlay(action.finding, wording);
    case 'rebore':
      return `${action.cylinder}: ${action.inDoubt ? "in doubt: find the maker's service limit; past it, bore or sleeve it" : 'bore or sleeve it'}, then fit piston and rings to the new size; ${sayFinding(action.finding, wording)}${!action.inDoubt && action.finding.grade === 'undecided' ? `; ${sayByRule('bore')}` : ''}`;
    case 'wrong piston':
      return `${action.cylinder}: measure piston and bore again; if they stand, fit another piston, or bore to another size; ${sayFinding(action.finding, wording)}`;
    case 'piston interferes':
      return `${action.cylinder}: read piston and bore again: the piston reads ${say((0 - action.clearance.min) as Length, 'length', units)} larger than its bore, and cannot go in`;
    case 'loose piston':
      return `${action.cylinder}: measure the piston again, and look for an oversize stamped on its crown: it reads ${describeSpan(action.clearance, 'length', units)} smaller than its bore, which is past what wear does to one; a slipped digit and a piston of another size look the same`;
    case 'wait':
      return describeWait(action);
    case 'odd bore':
      return `${action.cylinder}: read it again, at every place: the bore reads round and straight, and yet ${say(action.above, 'length', units)} above standard, where no step and no wear takes it; a turn of the thimble is 0.025 in or 0.5 mm; nothing is decided on it before that`;
    case 'odd size':
      if (action.below < 0) {
        return `${action.bearing}: read it again, at every place, and set the micrometer against its standard: it reads ${say((0 - action.below) as Length, 'length', units)} above standard, and no journal grows, unless it was built up; nothing is decided on it before that`;
      }
      return `${action.bearing}: read the thimble again, at every place: the journal reads round, and yet ${say(action.below, 'length', units)} below standard, which is no step; a turn of the thimble is 0.025 in or 0.5 mm; nothing is decided on it before that`;
    case 'low compression':
    case 'wrong fit':
    case 'overloaded bolts':
    case 'dipper':
    case 'starting spark':
    case 'leaking cylinder':
      return describeAssemblyAction(action, wording);
    case 'valve':
    case 'weak spring':
    case 'valve stem':
      return describeValveAction(action, wording);
    case 'ring':
      return `${action.cylinder}: read the gap again first; ${describeRing(action.ring, wording)}`;
  }
}

/** What to look for cracks in, before anything else is done or paid for. */
function describeCrackTest(
  { happened, machined }: Extract<Action, { readonly kind: 'crack test' }>,
  wording: Wording,
): string {
  if (happened.length === 0) {
    return `have the ${machined.join(' and the ')} crack-tested before you pay for machining: ${machined.includes('crankshaft') ? 'a ground crankshaft can hide a crack and break' : 'a cracked block is not worth boring'}`;
  }
  const block = happened.some((what) => HITS_THE_BLOCK.includes(what)) ? ', the block' : '';
  return `crack-test the crankshaft${block} and every rod that is used again, first of all: the engine ${happened.map((what) => HAPPENED[what]).join(' and ')} ${noteOf(CRACK_TEST, wording)}; look at the webs of the block, flush every oilway, and check the rods for bend and twist`;
}

/** A dial that did not move tells nothing, and a rule of thumb condemns no crankshaft. */
function describeEndPlay(finding: Finding<'length'>, wording: Wording): string {
  const judged = sayFinding(finding, wording);
  if (finding.value === 0) {
    return `end play: the dial did not move: see that it bears on the shaft and that the shaft is free, and read it again; ${judged}`;
  }
  if (finding.grade === 'undecided') {
    return `end play in doubt: find the maker's limits before you change it; ${judged}`;
  }
  return `read the dial again; if it stands, set the end play; ${judged}`;
}

/** `rod 2, WRONG SHELLS: standard shells ("…") on a journal ground 0.0200 in under: it will knock; …`. */
function describeWrongShells(
  { bearing, shells, undersize, journalUndersize, explanation }: WrongShells,
  wording: Wording,
): string {
  const pair = `${nameUndersize(undersize, wording)} shells ("${shells}")`;
  const ground = nameUndersize(journalUndersize, wording);
  const journal = ground === 'standard' ? 'a standard journal' : `a journal ground ${ground}`;
  return `${bearing}, WRONG SHELLS: ${pair} on ${journal}: ${consequence(explanation, wording)}; ${READ_BEFORE_BLAME}, before anything rests on that`;
}
