import { FileError, type Shed, type Testable, writeShed } from 'crankwright/shed';
import { randomShed } from '../planning/random-sheds.js';
import { type Dice, diceOf } from '../support/dice.js';

/** A random shed that a file can hold, or nothing if that of the seed contradicts itself. */
export function readableShed(seed: number): Shed | undefined {
  const shed = withSoundTests(randomShed(seed));
  try {
    writeShed(shed);
    return shed;
  } catch (error) {
    if (error instanceof FileError) return undefined;
    throw error;
  }
}

/** Castings are not tested for softening. */
function withSoundTests({ blocks, heads, toBuy, ...shed }: Shed): Shed {
  const castings = <P extends Testable>(parts: readonly P[] = []): readonly P[] =>
    parts.map(({ tested = [], ...part }) => {
      const cracks = tested.filter((test) => test.for === 'cracks');
      return { ...part, ...(cracks.length > 0 && { tested: cracks }) } as unknown as P;
    });
  return {
    ...shed,
    blocks: castings(blocks),
    heads: castings(heads),
    ...(toBuy && {
      toBuy: { ...toBuy, blocks: castings(toBuy.blocks), heads: castings(toBuy.heads) },
    }),
  };
}

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** A shed file as no program writes it: fields in any order, odd spaces, sizes in many spellings. */
export function oddFile(seed: number): string | undefined {
  const shed = readableShed(seed);
  if (shed === undefined) return undefined;
  const dice = diceOf(seed);
  const newline = dice.oneOf(['\n', '\r\n', '\r']);
  const plain = { ...(JSON.parse(writeShed(shed)) as object), $schema: './shed.json', 'x-kept': 1 };
  const mark = dice.percent(20) ? '\ufeff' : '';
  const text = print(shuffled(owned(plain, dice), dice), dice, newline);
  return mark + blank(dice, newline) + text + blank(dice, newline);
}

/** The same with fields that belong to the owner, here and there. */
function owned(value: Json, dice: Dice): Json {
  if (Array.isArray(value)) return value.map((each: Json) => owned(each, dice));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, each]) => [key, owned(each, dice)] as const);
  const own = { 'x-shelf': dice.oneOf([[], { 'x-of': 1 }, '', null, ' =1 ']) };
  return { ...(dice.percent(10) && own), ...Object.fromEntries(entries) };
}

const blank = (dice: Dice, newline: string): string =>
  dice.oneOf(['', '', '', ' ', '  ', '\t', newline, `${newline}   `, `${newline}${newline}\t`]);

function shuffled(value: Json, dice: Dice): Json {
  if (Array.isArray(value)) return value.map((each: Json) => shuffled(each, dice));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, each]) => [key, shuffled(each, dice)] as const);
  const order = entries.map((entry) => ({ entry, place: dice.from(0, 1000) }));
  return Object.fromEntries(order.sort((a, b) => a.place - b.place).map(({ entry }) => entry));
}

function print(value: Json, dice: Dice, newline: string): string {
  const space = () => blank(dice, newline);
  if (typeof value === 'string') return respelt(value, dice);
  if (typeof value !== 'object' || value === null) {
    return value === 1 ? dice.oneOf(['1', '1.0', '1e0', '10E-1']) : JSON.stringify(value);
  }
  const isList = Array.isArray(value);
  const items = Object.entries(value).map(([key, each]) => {
    const name = isList ? '' : `${JSON.stringify(key)}${space()}:${space()}`;
    return `${space()}${name}${print(each as Json, dice, newline)}${space()}`;
  });
  return `${isList ? '[' : '{'}${items.length === 0 ? space() : items.join(',')}${isList ? ']' : '}'}`;
}

/** The same text in another spelling: escapes, signs, spaces, fractions. */
function respelt(text: string, dice: Dice): string {
  const size = /^(\d+)\.(\d+) in$/.exec(text);
  const spellings = size
    ? [
        text,
        `+${text}`,
        `  ${text}`,
        `${size[1]}.${size[2]}"`,
        `${size[1]}.${size[2]}00 inch`,
        `${size[1] === '0' ? '' : `${size[1]}-`}${Number(size[2])}/1${'0'.repeat(size[2]?.length ?? 0)} in`,
      ]
    : [text];
  const written = JSON.stringify(dice.oneOf(spellings));
  const code = (letter: string) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`;
  return dice.percent(5) ? written.replace(/[a-z]/, code) : written;
}
