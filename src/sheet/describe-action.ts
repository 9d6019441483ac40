import { consequence } from '../bearings/internal.js';
import type { ServedGrindPlan } from '../crankshaft/index.js';
import { nameUndersize } from '../crankshaft/internal.js';
import { describe, type Span, type Wording } from '../judging/index.js';
import { describeSpan, guardLayout, guardWording, say } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { journalWords } from '../reading/index.js';
import type { Action, WrongShells } from './actions.js';
import { describeThinFilm } from './describe-oil.js';
import { describeThinOil } from './describe-sample.js';
import type { RingReport } from './inspect-cylinder.js';
import { actionLayout } from './layouts.js';

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
 * actionsFrom(inspect(sheet)).map((action) => describeAction(action, { units: 'inch' }));
 * // ["set the end play; end play 0.0140 in: 0.0040 in above the limit of 0.0100 in (common practice: crankshaft end play of 0.004 to 0.010 in (0.10 to 0.25 mm))"]
 * ```
 */
export function describeAction(action: Action, wording: Wording): string {
  guardLayout('action', action, actionLayout, 'actionsFrom');
  guardWording(wording);
  const { units } = wording;
  switch (action.kind) {
    case 'do not run':
      return `DO NOT RUN: drain the oil and find the leak; ${describe(action.dilution.finding, wording)}`;
    case 'change the oil':
      return `change the oil and find the leak; ${describe(action.dilution.finding, wording)}`;
    case 'stop the leak':
      return `stop the fuel leak of ${describeSpan(action.flow, 'flow', units)} before you refill`;
    case 'thin oil':
      return describeThinOil(action.thinning, wording);
    case 'wrong shells':
      return describeWrongShells(action, wording);
    case 'wrong clearance':
      return `${action.bearing}: check its housing bore against the manual, then fit other shells or grind the journal; ${describe(action.finding, wording)}`;
    case 'check sizes':
      return `${action.bearing}: measure the housing bore and the shell walls again, as the sizes contradict the stamp on the shells; ${describe(action.finding, wording)}`;
    case 'thin film':
      return `DO NOT RUN: ${describeThinFilm(action.film, wording)}; check the oil, its grade, and the clearance and load of the bearing`;
    case 'thick oil':
      return `change the oil: it is thicker than clean oil, ${say(action.viscosity, 'kinematicViscosity', units)} against ${say(action.clean, 'kinematicViscosity', units)}; it has aged or is another grade, and its viscosity does not show how much fuel is in it`;
    case 'grind':
      return `grind ${whichOf(action.plan, action.journals)} to ${nameUndersize(action.plan.undersize, wording)}: ${describeSpan(action.plan.target, 'length', units)}`;
    case 'no step serves':
      return `no undersize saves the ${journalWords(action.journals)}${action.defeatedBy.length > 0 ? ` (${action.defeatedBy.join(', ')})` : ''}: find another crankshaft, or ask a crankshaft welding shop`;
    case 'fit shells':
      return `${action.bearing}: fit "${action.match.shell.name}", which leaves ${describeSpan(action.match.clearance, 'length', units)}`;
    case 'buy shells': {
      const pairs = action.pairs === 1 ? '1 pair' : `${action.pairs} pairs`;
      return `buy ${pairs} of shells for the ${journalWords(action.journals)}, ${nameUndersize(action.undersize, wording)}: the sheet has no spare pair that fits`;
    }
    case 'set the end play':
      return `set the end play; ${describe(action.finding, wording)}`;
    case 'rebore':
      return `${action.cylinder}: bore or sleeve it, then fit piston and rings to the new size; ${describe(action.finding, wording)}`;
    case 'wrong piston':
      return `${action.cylinder}: fit another piston, or bore to another size; ${describe(action.finding, wording)}`;
    case 'ring':
      return `${action.cylinder}, ${describeRing(action.ring, wording)}`;
  }
}

/** `rod 2, WRONG SHELLS: standard shells ("…") on a journal ground 0.0200 in under: it will knock; …`. */
function describeWrongShells(
  { bearing, shells, undersize, journalUndersize, explanation }: WrongShells,
  wording: Wording,
): string {
  const pair = `${nameUndersize(undersize, wording)} shells ("${shells}")`;
  const ground = nameUndersize(journalUndersize, wording);
  const journal = ground === 'standard' ? 'a standard journal' : `a journal ground ${ground}`;
  return `${bearing}, WRONG SHELLS: ${pair} on ${journal}: ${consequence(explanation, wording)}`;
}

/** `the rod journals`, or those to be ground by name if others need no grinding. */
function whichOf({ journals }: ServedGrindPlan, kind: 'rods' | 'mains'): string {
  const ground = journals.filter(({ work }) => work === 'grind').map(({ name }) => name);
  if (ground.length === journals.length) return `the ${journalWords(kind)}`;
  return `${ground.join(', ')}, but none of the other ${journalWords(kind)},`;
}

/** Describes what to do with one ring. */
export function describeRing({ name, filing }: RingReport, wording: Wording): string {
  const span = (size: Span<Length>) => describeSpan(size, 'length', wording.units);
  const finding = describe(filing.finding, wording);
  switch (filing.work) {
    case 'fit as it is':
      return `${name}: fit as it is; ${finding}`;
    case 'wider than a new fit':
      return `${name}: wider than a new ring is set, so go by the maker's wear limit; ${finding}`;
    case 'use another ring':
      return `${name}: use another ring, as this one is worn or not made for this bore; ${finding}`;
    case 'bore is worn': {
      const remedy = filing.serves
        ? `a ring with a gap of ${span(filing.serves)} at the smallest bore stays within its limits`
        : "bore or sleeve the cylinder, or go by the maker's wear limit";
      return `${name}: the bore is worn, not the ring; ${finding}; ${remedy}`;
    }
    case 'file': {
      const { min, max = min } = filing.remove;
      const worn = filing.worn
        ? `; once filed, ${describe(filing.worn, wording)}: the bore is worn`
        : '';
      return `${name}: file ${span({ min, max })} off its ends; ${finding}${worn}`;
    }
  }
}
