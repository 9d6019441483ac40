import type { CardName } from './cards.js';
import { cardNamed } from './evaluate.js';
import type { Exercise } from './exercise-types.js';
import type { Slip } from './slip-types.js';
import { isExact } from './tolerance.js';

const HINTS: Readonly<Record<Slip, string>> = {
  'another quantity': 'That is the unit of another quantity. See what is asked for.',
  'a lost minus': 'Look at the sign: which of the two is larger, and what does a minus mean here?',
  'factor two': 'Look for a factor of two: both sides, or one? A radius, or a diameter?',
  'factor four':
    'Look for a factor of two, twice: was a size put in double or half and then squared, or a four left out?',
  'half of an angle': 'Look for a factor of two: half of the angle, or all of it?',
  'factor pi': 'Look at π: is it left out, or put in twice?',
  'per cent': 'Look for a factor of a hundred: is the answer a share, or per cent?',
  'wrong unit': 'Look at the unit: the number fits another one.',
  'factor of a thousand': 'Look for a factor of a thousand: thou for inches, or mm for metres?',
  'factor of ten': 'Look at the decimal point.',
  'a reading left out': 'Look whether every reading is in your sum: one seems to be left out.',
  'an earlier line': 'You are on the way: that is an earlier line of the working.',
  'radius for diameter':
    'Look at the diameters: was a radius put in for one, or a diameter doubled?',
  'unit of a reading': 'Look at the units of what you put in: is one reading in another unit?',
  'sign of a reading': 'Look at the signs of what you put in.',
  'degrees for radians': 'Look at the angles: degrees and radians seem to be mixed up.',
  'temperature scale': 'Look at the temperatures: the formula counts from absolute zero.',
  'another temperature':
    'Look at the temperatures: is one put in for another, or a cold one for a warm one?',
};

const KEEP_DIGITS = 'Keep more digits until the last line.';
const ADD_AGAIN = 'Add it up once more: the last digits are off.';

/** What to look at where no slip explains a number. */
export const LINE_BY_LINE =
  'No usual slip comes to that. Write down every reading with its unit and its sign, and work it out line by line.';

/** What to look at after a slip. */
export const hintAt = (slip: Slip): string => HINTS[slip];

/** What to look at where a number is a little off. */
export const hintWhenClose = ({ name }: Exercise): string =>
  isExact(cardNamed(name as CardName)) ? ADD_AGAIN : KEEP_DIGITS;

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
/** Units whose symbols are words of another meaning. */
const SPELT: Readonly<Record<string, string>> = { in: 'inches', ft: 'feet', deg: 'degrees' };

/** What to write where no number can be read. */
export const hintWhenUnreadable = ({ asks: { unit } }: Exercise): string =>
  unit === ''
    ? 'No number can be read in that. Write one number and nothing else, such as 1.4.'
    : `No number with a unit can be read in that. Write one number and its unit and nothing else, such as 1.4 ${unit}.`;

/** What is asked where a comma or a space may part decimals or thousands. */
export function hintWhenUnclear(number: string): string {
  const plain = number.replaceAll(/[,\s]/g, '');
  return /^[^,]*,[^,.]*$/.test(number)
    ? `Is the comma a decimal or a thousands one? Write ${plain} or ${number.replace(',', '.')}.`
    : `Write the number without marks between its thousands: ${plain}.`;
}

/** What to give in place of a number that was rounded too far. */
export function hintWhenRounded({
  asks: { dimension, unit },
  answer: { value },
}: Exercise): string {
  const places = `${value}`.split('.')[1]?.length ?? 0;
  const digits = value.toExponential().replace(/e.*|\D/g, '').length;
  const written =
    places === 0 && digits === `${Math.abs(value)}`.length
      ? 'as a whole number'
      : dimension === 'length' && places > 0
        ? `to ${NUMBERS[places]} decimal place${places === 1 ? '' : 's'}`
        : `to ${NUMBERS[digits]} digit${digits === 1 ? '' : 's'}`;
  const where = unit === '' ? '' : ` in ${SPELT[unit] ?? unit},`;
  return `That is rounded too far. Give it${where} ${written}.`;
}
