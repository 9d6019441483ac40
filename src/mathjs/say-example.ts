import { wordsMeant } from '../judging/internal.js';
import { type Dimension, tradeUnit } from '../quantities/index.js';
import { choicesOf, fieldsOf, isDimension, wordsIn } from './say-shape.js';
import type { Signature, ValueShape } from './shapes.js';
import { signatures } from './signatures.js';
import { nameOfUnit } from './unit-names.js';

/** A number of each dimension that a person may have read, in the unit of an inch shop. */
const READ: Readonly<Record<Exclude<Dimension, 'length' | 'volume'>, number>> = {
  area: 0.1,
  angle: 30,
  mass: 2,
  density: 0.88,
  time: 2,
  rate: 60,
  force: 450,
  pressure: 85_000,
  gaugePressure: 60,
  torque: 18,
  energy: 20,
  power: 5,
  speed: 60,
  acceleration: 32,
  rotationalSpeed: 1800,
  flow: 18,
  dynamicViscosity: 15,
  kinematicViscosity: 100,
  temperature: 180,
  temperatureDifference: 100,
  stiffness: 100,
  thermalExpansion: 6.5,
  specificHeat: 0.45,
  ratio: 0.5,
  volumeFraction: 5,
  massFraction: 5,
};

/** A size as it is typed: `18 lbfFoot`. */
const exampleOf = (dimension: Exclude<Dimension, 'length' | 'volume'>): string =>
  dimension === 'ratio'
    ? String(READ.ratio)
    : `${READ[dimension]} ${nameOfUnit(tradeUnit(dimension, 'inch'))}`;

/**
 * A value of a shape as it is typed, with all the fields that it needs: `{thickness: … inch, bore: … inch}`; what makes
 * some of them of a word makes them of the one given.
 */
export function exampleOfShape(shape: ValueShape, word?: string): string {
  const made = madeOfWord(shape, word);
  if (made?.isWhole) return made.call;
  const choices = choicesOf(shape);
  const first = choices.find(isDimension) ?? choices[0] ?? 'anything';
  // A gasket and a stroke are lengths, a chamber and a sump volumes: no number suits both.
  if (first === 'length') return '… inch';
  if (first === 'volume') return '… mL';
  if (isDimension(first)) return exampleOf(first);
  if (first === 'number') return '1';
  if (first === 'truth') return 'true';
  if (typeof first === 'string') return '…';
  if ('list' in first) return `[${exampleOfShape(first.list)}]`;
  if ('oneOf' in first) return JSON.stringify(first.oneOf[0]);
  if (!('fields' in first)) return '{…}';
  const all = Object.entries(first.fields);
  const needed = all.filter(([key]) => !key.endsWith('?'));
  const shown =
    needed.length > 0 ? needed : all.map(([key, of]) => [key.slice(0, -1), of] as const);
  const fields = shown.map(([key, of]) => {
    const value = made?.gives.includes(key) ? `${made.call}.${key}` : exampleOfShape(of);
    return `${key}: ${value}`;
  });
  return `{${fields.join(', ')}}`;
}

/** How a function is called, with all that it needs: `oilClearance({housingBore: … inch, …})`; undefined of no function of ours. */
export function callOf(name: string): string | undefined {
  if (!Object.hasOwn(signatures, name)) return undefined;
  const needed = (signatures[name]?.takes ?? []).filter((each) => !each.optional);
  return `${name}(${needed.map(({ shape }) => exampleOfShape(shape)).join(', ')})`;
}

/** A call that makes what several sizes belong to of one word: `meanExpansion("steel")`. */
export interface Maker {
  readonly call: string;
  /** Whether it makes all that is needed; otherwise these fields. */
  readonly isWhole: boolean;
  readonly gives: readonly string[];
}

/** What makes an object of that shape, or some fields of it, of a word that was given. */
export function madeOfWord(shape: ValueShape, word: string | undefined): Maker | undefined {
  const wanted = fieldsOf(shape);
  const found = Object.entries(signatures).flatMap(([name, signature]): readonly Maker[] => {
    const taken = wordsTaken(signature);
    const given = Object.entries(fieldsOf(signature.gives));
    if (taken === undefined || given.length === 0) return [];
    const fits = given.every(([key, of]) => {
      const own = wanted[key] ?? wanted[`${key.replace('?', '')}?`];
      return own !== undefined && isTaken(own, of);
    });
    if (!fits) return [];
    const gives = given.map(([key]) => key.replace('?', ''));
    const isWhole = Object.keys(wanted).every((key) => key.endsWith('?') || gives.includes(key));
    const meant = taken.length === 0 ? word : (wordsMeant(word, taken)[0] ?? usual(taken));
    return [{ call: `${name}(${JSON.stringify(meant ?? NAMED[name] ?? '…')})`, isWhole, gives }];
  });
  return found.find((each) => each.isWhole) ?? found[0];
}

/** Most parts are of steel. */
const usual = (words: readonly string[]) => words.find((word) => word === 'steel') ?? words[0];

/** What text may be where no list of words tells. */
const NAMED: Readonly<Record<string, string>> = { threadOf: '3/8-24 UNF' };

/** The words that a function makes its result of, none if any text does; undefined where it takes anything else. */
function wordsTaken({ takes }: Signature): readonly string[] | undefined {
  const [only, another] = takes.filter((each) => !each.optional);
  if (!only || another) return undefined;
  const words = wordsIn(only.shape);
  return words.length > 0 || choicesOf(only.shape).includes('text') ? words : undefined;
}

const isTaken = (by: ValueShape, given: ValueShape): boolean => {
  const taken = choicesOf(by).map((one) => JSON.stringify(one));
  return choicesOf(given).every((one) => taken.includes(JSON.stringify(one)));
};
