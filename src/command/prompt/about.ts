import {
  callOf,
  choicesOf,
  constants,
  fieldsOf,
  functions,
  isDimension,
  nameOfUnit,
  unitByName,
  type ValueShape,
  withArticle,
} from '../../mathjs/internal.js';
import { type Dimension, tradeUnit, type UnitSystem } from '../../quantities/index.js';
import { either } from '../../reading/index.js';
import { beginningSo, closeName } from './close-name.js';

/** What a function takes and gives, or what a unit is, for a person at the prompt. */
export function about(name: string, units: UnitSystem, what?: string): string {
  const known = functions.get(name);
  if (known) {
    const { takes, gives, says } = known.signature;
    const parameters = takes.map((each) => (each.optional ? `${each.name}?` : each.name));
    return [
      `${name}(${parameters.join(', ')})`,
      `  ${says.replace(/[*`]/g, '')}`,
      ...takes.flatMap((each) => [
        `  ${each.name}: ${sayShape(each.shape, units)}${each.optional ? ', may be left out' : ''}`,
        ...fieldLines(each.shape, units, '    '),
      ]),
      `  type ${callOf(name)}`,
      `  gives ${sayShape(gives, units)}`,
      ...fieldLines(gives, units, '    '),
    ].join('\n');
  }
  const constant = constants.get(name)?.signature;
  if (constant) {
    return [
      `${name} is a constant`,
      `  ${constant.says.replace(/[*`]/g, '')}`,
      `  it is ${sayShape(constant.is, units)}`,
      ...fieldLines(constant.is, units, '    '),
    ].join('\n');
  }
  const unit = unitByName.get(name);
  if (unit) return `${name}: a unit of ${words(unit.dimension)}, printed as ${unit.symbol}`;
  if (what !== undefined) return `${name} is ${what}${PLAIN[name] ?? ''}`;
  const near = closeName(name, [...functions.keys(), ...constants.keys(), ...unitByName.keys()]);
  return near
    ? `${name}: did you mean ${near}?`
    : `${name}: nothing here has that name${beginningSo(name, [...functions.keys(), ...constants.keys()])}`;
}

function fieldLines(shape: ValueShape, units: UnitSystem, indent: string): readonly string[] {
  const lists = choicesOf(shape).flatMap((one) =>
    typeof one === 'object' && 'list' in one ? choicesOf(one.list) : [one],
  );
  const fields = Object.entries(fieldsOf({ either: lists }));
  const width = fields.reduce((most, [key]) => Math.max(most, key.length), 0);
  return fields.map(([key, of]) => `${indent}${key.padEnd(width)}  ${sayShape(of, units)}`);
}

/** In words: `a length in inch`; `"inch" or "metric"`. */
function sayShape(shape: ValueShape, units: UnitSystem): string {
  const choices = choicesOf(shape);
  const words = choices.flatMap((one) =>
    typeof one === 'object' && 'oneOf' in one ? one.oneOf : [],
  );
  const all = [...new Set(words)].map((word) => JSON.stringify(word));
  const said = choices
    .filter((one) => typeof one !== 'object' || !('oneOf' in one))
    .map((one) => sayOne(one, units));
  return either([...new Set(said), ...all]);
}

function sayOne(shape: ValueShape, units: UnitSystem): string {
  if (isDimension(shape)) return sayDimension(shape, units);
  if (typeof shape === 'string') return SAID[shape] ?? 'a value';
  if ('list' in shape) return `a list in [ ], each ${sayShape(shape.list, units)}`;
  if (!('fields' in shape)) return 'fields in { }';
  const names = Object.keys(shape.fields);
  const few = names.slice(0, 6).join(', ');
  return `{ ${few}${names.length > 6 ? ', …' : ''} }`;
}

/** What plain numbers with a name are, beyond being constants. */
const PLAIN: Readonly<Record<string, string>> = {
  e: ': 2.71828…',
  i: ', the root of -1, and of no use here',
  pi: ': 3.14159…',
  percent: ': 0.01',
  ppm: ': 0.000001',
};

const SAID: Readonly<Record<string, string>> = {
  number: 'a number',
  text: 'text in quotes',
  truth: 'true or false',
  quantity: 'a quantity with its unit',
};

function sayDimension(dimension: Dimension, units: UnitSystem): string {
  if (dimension === 'ratio') return 'a ratio, as 0.5 or 50%';
  if (dimension === 'volumeFraction') {
    return 'a volume fraction in percentByVolume, as 5 percentByVolume or 5 % by volume';
  }
  if (dimension === 'massFraction') {
    return 'a mass fraction in percentByMass, as 5 percentByMass or 5 % by mass';
  }
  // A chamber is measured in these, and the oil of a sump in the others.
  const small = units === 'inch' ? 'cubicInch or ' : 'mL or ';
  const first = dimension === 'volume' ? small : '';
  return `${withArticle(dimension)} in ${first}${nameOfUnit(tradeUnit(dimension, units))}`;
}

const words = (dimension: Dimension): string => withArticle(dimension).replace(/^an? /, '');
