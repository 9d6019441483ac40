import type { ServedGrindPlan } from '../crankshaft/index.js';
import { nameUndersize } from '../crankshaft/internal.js';
import type { ServedBorePlan } from '../cylinders/index.js';
import { boreOrder } from '../cylinders/internal.js';
import type { Wording } from '../judging/index.js';
import { describeInward, describeSpan } from '../judging/internal.js';
import type { InDoubt } from '../measuring/index.js';
import { describeStepsLeft, isReadTooCoarsely } from '../measuring/internal.js';
import { thou } from '../quantities/index.js';
import { journalWords, sayByRule } from '../reading/index.js';
import type { Action } from './action-types.js';
import type { BuyShells, WhenShells } from './shell-action-types.js';
import { tellSound, tellSoundBores } from './tell-sound.js';

/** What to grind to, and what stands behind it. */
export function describeGrind(
  { plan, journals, sound, byRule, hangsOn }: Extract<Action, { readonly kind: 'grind' }>,
  wording: Wording,
): string {
  const step = nameUndersize(plan.undersize, wording);
  const size = describeSpan(plan.target, 'length', wording.units);
  const left = describeStepsLeft(plan.stepsLeft, 'undersize');
  const order = `grind ${whichOf(plan, journals)} to ${step}: ${size}; ${left}`;
  const told = `${readFirst(hangsOn)}${tellSound(plan, sound, order, wording)}`;
  if (byRule) return `${told}; ${sayByRule('grind')}`;
  return inDoubt(told, plan.inDoubt?.journals, plan.nearly?.journals);
}

/** That a step hangs on a journal that is to be read again, before what is done by it. */
function readFirst(hangsOn: readonly string[] = []): string {
  if (hangsOn.length === 0) return '';
  const [have, them] = hangsOn.length === 1 ? ['has', 'it'] : ['have', 'them'];
  return `not before ${hangsOn.join(' and ')} ${have} been read again, as the step hangs on ${them}: `;
}

/** An order that is not to be given before it is known whether parts may stay as they are; as it is where none is in doubt. */
function inDoubt(
  order: string,
  parts: readonly InDoubt[] = [],
  nearly: readonly string[] = [],
): string {
  if (parts.length + nearly.length === 0) return order;
  const byRule = parts.filter((part) => !isReadTooCoarsely(part)).map(({ name }) => name);
  const byReading = [...parts.filter(isReadTooCoarsely).map(({ name }) => name), ...nearly];
  const who = [...new Set([...byRule, ...byReading])].join(', ');
  const [todo, but] =
    byRule.length === 0
      ? ['measure again', `if ${who} may not stay`]
      : ["find the maker's service limit", `if it does not let ${who} stay`];
  return `${who} in doubt: ${todo} before any metal comes off; ${but}, ${order}`;
}

/** What to bore to, once the pistons for it have been measured. */
export function describeBore(
  { plan, sound, byRule }: Extract<Action, { readonly kind: 'bore' }>,
  wording: Wording,
): string {
  const bored = plan.cylinders.filter(({ work }) => work !== 'use as it is');
  const which =
    bored.length === plan.cylinders.length
      ? ''
      : ` and rings for ${bored.map(({ name }) => name).join(' and ')}`;
  const sleeved = plan.cylinders.filter(({ work }) => work === 'sleeve').map(({ name }) => name);
  const after =
    sleeved.length === 0
      ? describeStepsLeft(plan.stepsLeft, 'oversize')
      : `ask the cylinder shop before you pay whether the wall of ${sleeved.join(' and ')} carries a sleeve`;
  const order = `get the pistons${which} and measure them first${wallsOf(plan)}, then ${boreOrder(plan, wording)}; ${after}`;
  const told = tellSoundBores(plan, sound, order, wording);
  if (byRule) return `${told}; ${sayByRule('bore')}`;
  return inDoubt(told, plan.inDoubt?.cylinders, plan.nearly?.cylinders);
}

/** Walls that were not measured: a bore that breaks through its wall is lost. */
function wallsOf({ cylinders }: ServedBorePlan): string {
  const bare = cylinders.filter(({ work, wallLeft }) => work === 'bore' && wallLeft === undefined);
  if (bare.length === 0) return '';
  const [wall, its] = bare.length === 1 ? ['wall', 'its'] : ['walls', 'their'];
  return `, and the ${wall} of ${bare.map(({ name }) => name).join(' and ')} at ${its} thinnest`;
}

/** What shells wait for. */
export const WHEN: Readonly<Record<WhenShells, string>> = {
  'in any case': '',
  'if ground': 'if it comes to grinding, ',
  'if none is ground': 'if none is ground, ',
};

/** The walls of one shell commonly differ by up to this, 0.008 mm (common practice, from memory). */
const CLOSE_WALL = /* @__PURE__ */ thou(0.3);

/** Shells to buy, or the wall to have them made with. */
export function describeBuying(
  { pairs: count, journals, undersize, when, isGround, walls, hangsOn }: BuyShells,
  wording: Wording,
): string {
  const pairs = count === 1 ? '1 pair' : `${count} pairs`;
  const made = walls.map(
    ({ bearing, wall }) => `${describeInward(wall, wording.units)} for ${bearing}`,
  );
  const isClose = walls.some(({ wall }) => wall.max - wall.min < CLOSE_WALL);
  const orMade =
    made.length === 0
      ? ''
      : `; or have them made, each half with a wall of ${made.join(', ')}${isClose ? ', which is closer than most are made: ask the shop first' : ''}`;
  const first = isGround ? '; measure them before the journals are ground' : '';
  return `${readFirst(hangsOn)}${WHEN[when]}get ${pairs} of shells for the ${journalWords(journals)}, ${nameUndersize(undersize, wording)}: the sheet has no spare pair that fits${orMade}${first}`;
}

/** `the rod journals`, or those to be ground by name if others need no grinding. */
function whichOf({ journals }: ServedGrindPlan, kind: 'rods' | 'mains'): string {
  const ground = journals.filter(({ work }) => work === 'grind').map(({ name }) => name);
  if (ground.length === journals.length) return `the ${journalWords(kind)}`;
  return `${ground.join(', ')} alone of the ${journalWords(kind)}`;
}
