import type { Wording } from '../judging/index.js';
import { describeInward, describeSpan, say } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { PartToMake } from './order-types.js';
import { sayCost } from './say-cost.js';

/** The parts to make, each in a sentence without a full stop, and what to mind. */
export function describeToMake(
  all: readonly PartToMake[],
  { units }: Wording,
): { readonly parts: readonly string[]; readonly cautions: readonly string[] } {
  const has = (section: PartToMake['section']) => all.some((part) => part.section === section);
  return {
    parts: all.map((part) => {
      const { name, material, engine, place, cost } = part;
      const what = material === undefined ? name : `${name} (${material})`;
      const where = place === undefined ? engine : `${place} of ${engine}`;
      return `${what}, ${KINDS[part.section]}, for ${where}: ${sizeOf(part, units)}; ${sayCost(cost)}`;
    }),
    cautions: [
      ...(has('shells') ? [SHELLS] : []),
      ...(has('thrustWashers') ? [WASHERS] : []),
      ...(has('sleeves') ? [SLEEVES] : []),
    ],
  };
}

const KINDS: { readonly [S in PartToMake['section']]: string } = {
  shells: 'a pair of shells',
  thrustWashers: 'a thrust washer',
  sleeves: 'a sleeve',
};

function sizeOf(
  { section, size, tolerance, finishedTo }: PartToMake,
  units: Wording['units'],
): string {
  // What may be made of it is told inwards: a size at its end is within the limits as printed.
  const least = tolerance === undefined ? size.min : size.min - tolerance;
  const most = tolerance === undefined ? size.max : size.max + tolerance;
  const give =
    tolerance === undefined
      ? ''
      : `; ${describeInward({ min: least as Length, max: most as Length }, units)} will do`;
  if (section === 'shells') {
    return `wall of each half ${say(size.min, 'length', units)}${give}`;
  }
  if (section === 'thrustWashers') {
    return `thickness ${say(size.min, 'length', units)}${give}`;
  }
  const finished =
    finishedTo === undefined ? '' : `finished bore ${describeSpan(finishedTo, 'length', units)}, `;
  return `${finished}wall ${describeSpan(size, 'length', units)} as it can be made; the shop chooses it`;
}

const SHELLS =
  'Have shells made only once housing and journal are finished and measured: the wall is half of what the housing leaves over journal and clearance. The clearance is judged against the limits given, whatever the shells are made of: bronze is run with more of it than white metal, so ask their maker what they need. How they are gripped in the housing is not judged';
const WASHERS =
  'Have a thrust washer made only once both thrust faces are finished and measured, and look that its oil grooves face the crankshaft';
const SLEEVES =
  'The press fit of a sleeve, and what wall the block keeps around it, are for the shop to say. It is bored to the finished size only once it is in';
