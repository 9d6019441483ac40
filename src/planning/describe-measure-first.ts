import type { Wording } from '../judging/index.js';
import { sayDistance } from '../judging/internal.js';
import { type PageSection, section, wrap } from '../pages/index.js';
import { INSTRUMENT_WORDS } from '../reading/index.js';
import { describeFar, describeMisread, sayTestedFirst } from '../shed/internal.js';
import { sayLacks } from './describe-lacks.js';
import { sayEngines } from './describe-proof.js';
import type { MayBring, Measurement, PartToMeasure } from './measure-types.js';
import type { Plan } from './plan-types.js';
import { sayCost } from './say-cost.js';

/** What there may be besides what is proven, and what to measure first: a section of the plan, if there is any. */
export function describeMeasureFirst(plan: Plan, wording: Wording): readonly PageSection[] {
  const { measureFirst, readAgain } = plan;
  const again = readAgain.flatMap(({ name, because }) =>
    because.flatMap((reason) => wrap(`  ${name}, ${describeFar(reason, wording)}.`, 4)),
  );
  if (measureFirst.length + again.length === 0) return [];
  const cores = measureFirst.some(({ parts }) => parts.some(({ core }) => core !== undefined));
  return [
    section('MEASURE FIRST', [
      ...(again.length > 0 ? [...wrap(READ_AGAIN, 0), ...again] : []),
      ...(measureFirst.length > 0 ? wrap(sayMayBe(plan), 0) : []),
      ...measureFirst.flatMap(({ mayBring, parts }) => [
        ...wrap(`${heading(mayBring, wording)}:`, 0),
        ...parts.flatMap((each) => wrap(`  ${sayPartToMeasure(each, wording)}`, 4)),
        ...(mayBring.kind === 'what to buy'
          ? wrap(
              `If they turn out good, the engine still needs: ${sayLacks(mayBring.lacks, wording)}.`,
              0,
            )
          : []),
      ]),
      ...(cores ? wrap(TAKE_APART, 0) : []),
    ]),
  ];
}

const READ_AGAIN = 'Before a part is passed over for it, read again what can hardly be right:';

const TAKE_APART =
  'Before you take an engine apart, drain its fuel and oil out of doors, away from any flame, and let no spring or flywheel loose by surprise.';

/** What can hardly be right and costs nothing to read again, before money is spent on what hangs on it. */
export const sayFreeReadings = (
  { measureFirst }: Pick<Plan, 'measureFirst'>,
  wording: Wording,
): readonly string[] => [
  ...new Set(
    measureFirst.flatMap(({ mayBring, parts }) =>
      parts
        .filter(({ again }) => again.length > 0)
        .map((part) => `${sayPartToMeasure(part, wording)} (${sayMayBring(mayBring, wording)})`),
    ),
  ),
];

/** What is proven, and what there may be. */
function sayMayBe({ builds, mayBe }: Plan): string {
  if (mayBe === undefined) {
    return 'Parts that were not measured are in none of these engines; with nothing bought, no more engines can come of them.';
  }
  const { engines, cost, parts } = mayBe;
  const their =
    parts.length === 1
      ? '1 part not yet measured proves good'
      : `${parts.length} parts not yet measured all prove good`;
  return `Proven: ${sayEngines(builds.length)}. At most ${engines}, if ${their}${cost.amount > 0 ? `; shop work and purchases would then cost ${sayCost(cost)} or more` : ''}. Nothing of that is counted on in this plan.`;
}

/** What measuring may bring, for the line above what to measure. */
const heading = (mayBring: MayBring, wording: Wording): string =>
  mayBring.kind === 'what to buy'
    ? `${sayMayBring(mayBring, wording)}, measure these`
    : `${sayMayBring(mayBring, wording)}, if these turn out good`;

/** What measuring may bring: the start of a sentence. */
export function sayMayBring(mayBring: MayBring, { units }: Wording): string {
  switch (mayBring.kind) {
    case 'one more engine':
      return `One more engine, ${mayBring.engines} in all`;
    case 'what to buy':
      return 'To know what to buy for one more engine';
    case 'lower cost':
      return `As many engines for ${sayCost(mayBring.less)} less`;
    case 'wider margin':
      return mayBring.margin === undefined
        ? 'The tightest clearance lies further inside its limits'
        : `The tightest clearance lies ${sayDistance(mayBring.margin, 'length', units)} inside its limits`;
  }
}

/** `crankshaft B: rod journals (rod 1, rod 2) with the outside micrometer`. */
export function sayPartToMeasure(part: PartToMeasure, wording: Wording): string {
  const { name, core, marks = [], tests, measure, again, until } = part;
  const which =
    marks.length === 0 ? name : `${name}, marked ${marks.map((mark) => `"${mark}"`).join(', ')}`;
  const what = [
    ...again.map((each) => describeMisread(each, wording)),
    ...measure.map(sayMeasurement),
  ];
  const apart = core === undefined ? [] : [`take ${core} apart`];
  const open = core === undefined ? `nothing is decided until ${until}` : 'look it over';
  const last = what.length > 0 ? what : [open];
  return `${which}: ${[...apart, ...sayTestedFirst(tests, part), ...last].join('; ')}`;
}

function sayMeasurement({ what, places, with: instrument }: Measurement): string {
  const which = places.length === 0 ? what : `${what} (${places.join(', ')})`;
  return instrument
    ? `${which}, with the ${INSTRUMENT_WORDS[instrument]}`
    : `find out the ${which}`;
}
