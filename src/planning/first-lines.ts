import type { Wording } from '../judging/index.js';
import { sayMayBring } from './describe-measure-first.js';
import type { MayBring, MeasureFirst } from './measure-types.js';
import type { Plan } from './plan-types.js';
import { sayCost } from './say-cost.js';
import { countParts, NOTHING, oneLine, type Topic } from './topic.js';

/** What to measure first, of the parts that are not known, and what that may save. */
export function firstLines({ measureFirst }: Plan, wording: Wording): Topic {
  const [first, ...others] = measureFirst;
  if (first === undefined) return NOTHING;
  const names = namesIn(first);
  const count = countParts(names.length);
  const what = sayWhatFor(first.mayBring, wording);
  const saving = others.flatMap(({ mayBring, parts }) =>
    mayBring.kind === 'lower cost' ? [{ less: sayCost(mayBring.less), parts }] : [],
  )[0];
  if (saving === undefined) {
    return oneLine(
      `${what}, measure first: ${names.join(', ')}.`,
      `${what}, measure ${count} first: see MEASURE FIRST.`,
      `Measure ${count} first: see MEASURE FIRST.`,
    );
  }
  const toSave = `perhaps to save ${saving.less}`;
  const savedBy = namesIn(saving);
  if (savedBy.every((name) => names.includes(name))) {
    return oneLine(
      `${what}, and ${toSave}, measure first: ${names.join(', ')}.`,
      `Measure first, ${toSave}: ${savedBy.join(', ')}.`,
      `Measure ${count} first, ${toSave}: see MEASURE FIRST.`,
    );
  }
  const all = countParts(new Set([...names, ...savedBy]).size);
  return oneLine(
    `${what}, measure first: ${names.join(', ')}; ${toSave}: ${savedBy.join(', ')}.`,
    `Measure first, ${toSave}: ${savedBy.join(', ')}; see MEASURE FIRST for more.`,
    `Measure ${all} first, ${toSave}: see MEASURE FIRST.`,
  );
}

const namesIn = ({ parts }: Pick<MeasureFirst, 'parts'>): readonly string[] =>
  parts.map(({ name }) => name);

/** What to measure for: the start of a sentence. */
function sayWhatFor(mayBring: MayBring, wording: Wording): string {
  switch (mayBring.kind) {
    case 'one more engine':
      return 'For one more engine';
    case 'wider margin':
      return 'For a wider margin of the tightest clearance';
    default:
      return sayMayBring(mayBring, wording);
  }
}
