import { fieldsOf, functions, unitByName, wordsIn } from '../../mathjs/internal.js';
import {
  inch,
  mm,
  RebuildInputError,
  thou,
  type UnitSystem,
  valueIn,
} from '../../quantities/index.js';
import { complaintOf, nearest } from '../../quantities/internal.js';
import { inInches } from '../../reading/index.js';
import { asTyped } from './as-typed.js';
import { beginningSo, closeName } from './close-name.js';
import { conversionSlip } from './conversion-slip.js';
import { sayPath } from './say-path.js';
import { NOT_FINITE, WrongStatement } from './wrong-statement.js';
import { callSpelled } from './wrong-text.js';

/** The statement that is wrong, and where it stands. */
interface WhereWrong {
  /** Every name that it may use. */
  readonly names: readonly string[];
  /** The units that results are in. */
  readonly units: UnitSystem;
  /** The statement as mathjs writes it. */
  readonly typed: string;
}

/** What is wrong with a statement, in words for the person who typed it. */
export function whatIsWrong(error: unknown, { names, units, typed }: WhereWrong): string {
  if (error instanceof WrongStatement) return error.message;
  const slip = isConversion(error) ? conversionSlip(typed) : undefined;
  if (slip !== undefined) return slip;
  if (error instanceof RebuildInputError) {
    const said = ofInput(error, typed);
    return units === 'inch' ? inInches(said, typed) : inMillimetres(said);
  }
  const { message } = error as Error;
  const [, what, unknown] = /^Undefined (symbol|function) (\w+)$/.exec(message ?? '') ?? [];
  if (unknown !== undefined) {
    // To mathjs `f(journal: 2 in)` is a range from one to the other.
    const [, called] = new RegExp(`(\\w+)\\(\\s*${unknown}\\s*:`).exec(typed) ?? [];
    if (called !== undefined) return `put the sizes in braces: ${called}({${unknown}: …})`;
    if (/^[xX]$/.test(unknown) && new RegExp(`[\\w)] ${unknown} [\\d(]`).test(typed)) {
      const written = typed.replaceAll(` ${unknown} `, ' * ').replace(/\((\d[\d.]*)\)/g, '$1');
      return `${unknown}: for times write *: ${written}`;
    }
    const instead = Object.hasOwn(INSTEAD, unknown) ? INSTEAD[unknown] : undefined;
    if (instead !== undefined) return `${unknown}: ${instead}`;
    const spelled = callSpelled(typed);
    if (spelled !== undefined) return spelled;
    const near = unknown.length > 2 ? guess(unknown, names, typed) : undefined;
    const known = what === 'function' ? 'function' : 'name';
    if (near) return `${unknown}: did you mean ${near}?`;
    if (isWordHere(unknown)) {
      return `${unknown}: there is no such name; words stand in quotes, as "steel" or "3/8-16 UNC"`;
    }
    return `${unknown}: there is no such ${known}${beginningSo(unknown, names)}`;
  }
  return tidy(message ?? String(error));
}

/** Whether an error says that a size is of another kind than what it was to be converted to. */
const isConversion = (error: unknown): boolean =>
  error instanceof RebuildInputError
    ? error.parameter === 'to'
    : /^Units do not match/.test((error as Error).message ?? '');

/** The name that was most likely meant: a unit behind a number and `to`. One that is far off is not guessed at. */
function guess(unknown: string, names: readonly string[], typed: string): string | undefined {
  const isUnit = new RegExp(`(?:\\d\\)?\\s*\\*?|\\bto)\\s*${unknown}\\b`).test(typed);
  const units = isUnit ? [...unitByName.keys()] : [];
  return closeName(unknown, units) ?? closeName(unknown, names);
}

const ON_GAUGE = 'a gauge pressure is written 60 psiGauge, 4 barGauge or 400 kPaGauge';

/** What people write and mathjs cannot read, with what to write instead. */
const INSTEAD: Readonly<Record<string, string>> = {
  gage: ON_GAUGE,
  gauge: ON_GAUGE,
  guage: ON_GAUGE,
  of: 'for of write *, as 5% * 2 in',
  turn: 'a quarter turn is written 90 deg',
  turns: 'a quarter turn is written 90 deg',
};

/** Whether a name is one of the words, or part of one, that functions take in quotes, and no field of any. */
function isWordHere(name: string): boolean {
  const shapes = [...functions.values()].flatMap(({ signature: { takes } }) =>
    takes.map(({ shape }) => shape),
  );
  const fields = shapes.flatMap((shape) => Object.entries(fieldsOf(shape)));
  if (fields.some(([key]) => key.replace('?', '') === name)) return false;
  return [...shapes, ...fields.map(([, of]) => of)]
    .flatMap(wordsIn)
    .some((word) => word.split(' ').includes(name));
}

/** A whole call of `judge`. */
const JUDGED =
  'judge({feature: "end play", dimension: "length", value: 12 thou, limits: {max: 10 thou}, basis: {kind: "specified"}})';

function ofInput(error: RebuildInputError, typed: string): string {
  if (typeof error.value === 'number' && !Number.isFinite(error.value)) return NOT_FINITE;
  const { expected, hint } = error;
  const parameter = sayPath(error.parameter);
  const name = error.parameter.split('.').at(-1) ?? parameter;
  if (expected === 'a known field') {
    const fields = hint.replace(/^Fields: |\.$/g, '').split(', ');
    const near = nearest(name, fields);
    return near
      ? `${name}: did you mean ${near}?`
      : `${name} is not a field here; fields are ${fields.join(', ')}`;
  }
  const complaint = complaintOf(error);
  if (/\bjudge\(/.test(typed) && (error.parameter === 'judgement' || error.value === undefined)) {
    return `${parameter}: ${complaint.replace(/;.*|, e\.g\. .*/, '')}. A value is judged against limits that somebody set, for example ${JUDGED}`;
  }
  if (/expansion$/i.test(name) && expected === 'an object' && error.value !== undefined) {
    return `${parameter}: ${complaint.replace(/;.*/, '')}: give meanExpansion("grey iron"), or that of your material`;
  }
  // A value that shows itself says enough; the hint is for code.
  if (/; expected .*for example /.test(complaint)) {
    return `${parameter}: ${complaint.replace(/([\d.]+) percentBy(Volume|Mass)$/, (typed, number: string, of: string) => `${typed} or ${number} % by ${of.toLowerCase()}`)}`;
  }
  return asTyped(`${parameter}: ${complaint}. ${hint}`);
}

/** The example of a length in a refusal, as a metric shop would type it. */
const inMillimetres = (message: string): string =>
  message.replace(
    /(e\.g\.) ([\d.]+) (inch|thou)\b/g,
    (_, eg: string, number: string, name: string) => {
      const length = (name === 'inch' ? inch : thou)(Number(number));
      return `${eg} ${Number(valueIn(length, mm).toPrecision(4))} mm`;
    },
  );

/** What mathjs says, without the words that only its makers understand. */
function tidy(message: string): string {
  if (/^Unexpected type of argument in function \w*(?:add|subtract)/i.test(message)) {
    return 'only sizes of one kind can be added or taken from each other, each with its unit';
  }
  const [, few, into] = /^Too (few|many) arguments in function (\w+)/.exec(message) ?? [];
  if (into !== undefined) {
    const example = into === 'round' ? '; a size is rounded by round(2.12345 in, 4, inch)' : '';
    return `${into} has too ${few} values${example}`;
  }
  const [, part] = /^No access to property "?(\w+)/.exec(message) ?? [];
  if (part !== undefined) return `this is one value and has no ${part}`;
  if (/read only property/.test(message)) {
    return 'no part of it can be changed; give your own values a name, as x = {min: 1 in, max: 2 in}';
  }
  if (/^Units do not match/.test(message)) return 'these are not of one kind';
  const [, name] = /^Unexpected type of argument in function (\w+)/.exec(message) ?? [];
  if (name === 'to')
    return 'to converts one size; name the part that you mean, such as x.min to mm';
  if (/^(?:multiply|divide)/.test(name ?? '')) {
    return 'one of these has several parts: name the one that you mean, such as x.max * 2';
  }
  if (name !== undefined) return `${name.replace(/Scalar$/, '')} does not take that`;
  // What Node says of its own values is of no use here.
  if (/Cannot read prop|is not a function|is not iterable|undefined|null/.test(message)) {
    return 'this cannot be worked out; is something missing in it?';
  }
  const [line = ''] = message.split('\n');
  return line;
}
