import type { Wording } from '../../judging/index.js';
import { noteOf, say } from '../../judging/internal.js';
import { CRACK_TEST, HAPPENED } from '../../reading/index.js';
import { MARGIN_LIMIT, SEAT_WIDTH_LIMIT } from '../../valves/internal.js';
import type { Section } from '../sections.js';
import { SCRAP_ROD } from '../sources.js';
import type { NeededTest } from './needed-test.js';
import type { TriagedPart } from './triage-types.js';
import type { Trouble } from './troubles.js';

/** The part that a test is for. */
type Tested = Pick<TriagedPart, 'section' | 'name'>;

/** Describes a test or measurement that a part needs, as an order with its reason. */
export function describeTest(test: NeededTest, part: Tested, wording: Wording): string {
  switch (test.test) {
    case 'crack test':
      return test.when === 'first'
        ? `crack-test it first: ${whyFirst(test, part, wording)}`
        : 'crack-test it again once it is straight';
    case 'pressure test':
      return 'pressure-test it after the repair, before anything else is done to it';
    case 'measure its journals':
      return 'measure the runout and the diameters of every journal again once it is straight, before its mains are called good';
    case 'check it for bend and twist':
      return test.when === 'before use'
        ? 'check it for bend and twist before use: it would be scrap, but your tests cleared it of heat, and heat bends a rod'
        : 'check it for bend and twist once it is straight';
    case 'softening test':
      return `test the journal of the bearing that seized for softening before you grind or use it: ${sayTroubles(test.because, part.name)}`;
    case 'measure its margins':
      return `measure the margin that refacing leaves, on the worst valve first: ${tooThin(test, wording)}`;
    case 'measure its seats':
      return `measure the width of its seats once they are recut ${noteOf(SEAT_WIDTH_LIMIT, wording)}`;
  }
}

/** Why a part is tested for cracks before money is spent on it. */
export function whyFirst(
  { because }: NeededTest,
  { section, name }: Tested,
  wording: Wording,
): string {
  const why =
    because.length > 0
      ? sayTroubles(because, name)
      : section === 'crankshafts'
        ? 'no crack test of it is listed'
        : 'before you pay for its work';
  const basis = sourceFor(section);
  return basis ? `${why} ${noteOf(basis, wording)}` : why;
}

const sourceFor = (section: Section) =>
  section === 'crankshafts' ? CRACK_TEST : section === 'rods' ? SCRAP_ROD : undefined;

const DID: { readonly [W in Trouble['what']]: string } = {
  ...HAPPENED,
  'spun shells': 'spun its shells',
};

/** What happened to a part or its donor, each once. */
export const sayTroubles = (because: readonly Trouble[], name: string): string =>
  [...new Set(because.map((each) => sayTrouble(each, name)))].join(', and ');

/** `its engine threw a rod`; `donor C threw a rod (crankshaft C)`. */
function sayTrouble({ what, part, from }: Trouble, name: string): string {
  if (part === name || from === undefined) return `its engine ${DID[what]}`;
  return part === from ? `${from} ${DID[what]}` : `${from} ${DID[what]} (${part})`;
}

/** What becomes of rods whose engine had an accident, unless they are tested; nothing of any other part. */
export function unlessTested(section: Section, { because }: NeededTest): string {
  if (section !== 'rods' || because.length === 0) return '';
  return because.some(({ what }) => what === 'seized bearing')
    ? ': scrap unless tested for cracks and softening, or until it is known that their bearing did not seize'
    : ': scrap unless tested';
}

/** The tests that come before a part is measured: `have it crack-tested first (its engine threw a rod)`. */
export function sayTestedFirst(tests: readonly NeededTest[], part: Tested): readonly string[] {
  const soften = tests.some(({ test }) => test === 'softening test')
    ? ', and the journal of the bearing that seized tested for softening'
    : '';
  return tests
    .filter(({ when }) => when === 'first')
    .map((test) => {
      const why = sayTroubles(test.because, part.name);
      const reason = why === '' ? '' : ` (${why})`;
      const which = part.section === 'rods' ? 'them' : 'it';
      return `have ${which} crack-tested first${reason}${unlessTested(part.section, test)}${soften}`;
    });
}

function tooThin({ least }: NeededTest, wording: Wording): string {
  return least === undefined
    ? `the maker's limit is not given ${noteOf(MARGIN_LIMIT, wording)}`
    : `below ${say(least, 'length', wording.units)} they are scrap`;
}

/** On what the use of a part depends after its repairs, to follow the repairs; often nothing. */
export function condition(tests: readonly NeededTest[]): string {
  const needs = (test: NeededTest['test']) => tests.some((each) => each.test === test);
  if (needs('measure its margins')) return ', if the margin left is enough: measure it';
  if (needs('measure its seats')) return ', if they are not too wide then: measure them';
  return needs('pressure test') ? ', if it then holds pressure' : '';
}

/** Whether a part is tested for cracks before anything else. */
export const isTestedFirst = (tests: readonly NeededTest[]): boolean =>
  tests.some(({ when }) => when === 'first');
