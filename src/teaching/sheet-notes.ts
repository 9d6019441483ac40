import { convert, type Dimension, type UnitName } from '../quantities/index.js';
import type { CardName } from './cards.js';
import { cardNamed } from './evaluate.js';
import type { Exercise } from './exercise-types.js';
import { toDigits } from './rounding.js';
import { countsRadians } from './unfold.js';

/** What a sheet says below a formula: how it counts angles, and what its own numbers are in the units of the sheet. */
export const notesOn = (problem: Exercise): readonly string[] => [
  ...radiansIn(problem),
  ...constantsIn(problem),
];

function radiansIn({ formula, where, given, asks }: Exercise): readonly string[] {
  if (!countsRadians([...where, formula].join('\n'))) return [];
  const units = [...given, asks].map(({ unit }) => unit);
  const said = [
    ...(units.includes('deg') ? ['angles in radians'] : []),
    ...(units.includes('rpm') ? ['speeds of turning in radians a second'] : []),
  ];
  return said.length === 0 ? [] : [`The formula counts ${said.join(' and ')}.`];
}

/** Units that formulas hold numbers in. */
const WRITTEN_IN: Readonly<Record<string, Dimension>> = {
  K: 'temperature',
  MPa: 'pressure',
  in: 'length',
};

function constantsIn({ name, formula, where, given, asks }: Exercise): readonly string[] {
  const { letters } = cardNamed(name as CardName);
  const shown = [
    asks,
    ...given.map(({ symbol, unit }) => ({
      unit,
      dimension: Object.hasOwn(letters, symbol) ? letters[symbol]?.domain.dimension : undefined,
    })),
  ];
  const written = [...where, formula].join('\n').matchAll(/([\d.]+) (K|MPa|in)(?![\w/^])/g);
  const lines = [...written].flatMap(([text, number, unit = '']) => {
    const own = shown.find(({ dimension }) => dimension === WRITTEN_IN[unit])?.unit ?? unit;
    // A number of one only takes the unit off what stands before it.
    if (own === unit || number === '1') return [];
    return [
      `${text} = ${toDigits(convert(Number(number), unit as UnitName, own as never), 5)} ${own}`,
    ];
  });
  return [...new Set(lines)];
}
