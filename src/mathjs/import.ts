import { guardFields } from '../judging/internal.js';
import { RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { guardSystem } from '../quantities/internal.js';
import { Exact } from './exact.js';
import { freeze } from './freeze.js';
import { constants, functions, type KnownConstant, type KnownFunction } from './functions.js';
import { giveValue } from './give-value.js';
import type { MathInstance } from './instance.js';
import { leaveUsualUnits, makeUnits } from './make-units.js';
import { allMissing } from './missing.js';
import { type Call, readValue } from './read-value.js';
import { fieldsOf, quotedWords } from './say-shape.js';
import type { Signature, ValueShape } from './shapes.js';

/** What to import into mathjs: functions by their names, and a few constants. */
export type MathImport = Readonly<Record<string, unknown>>;

/** How results are shown. */
export interface MathOptions {
  /** The units that results come in; by default `'inch'`. */
  readonly units?: UnitSystem;
}

/**
 * The functions, constants and units of this library for an instance of mathjs of your own. They keep their names. What
 * they take and give are units of mathjs; a size without a unit, or with that of another dimension, is refused. The units are
 * made in the instance at once: `thou`, `tenth`, `rpm`, `lbfFoot`, `quartUS`, and all others that it can read. Gauge
 * pressure (`psiGauge`) and fractions by volume and by mass (`percentByVolume`) do not mix with anything else.
 *
 * A reading of up to 15 digits in one unit is converted to the last bit as the library itself converts it. What comes
 * of arithmetic is as exact as mathjs computes.
 *
 * @param math - an instance of mathjs, as `create(all)` makes one
 * @param options - the units that results come in
 * @returns what to give to `math.import`
 * @throws {RebuildInputError} when there is no such instance, a field is misspelt or the unit system is unknown
 * @example
 * ```ts
 * import { all, create } from 'mathjs';
 *
 * const math = create(all ?? {});
 * math.import(crankwright(math));
 * const sizes = '{housingBore: 2.251 inch, journal: 2.125 inch, shellWall: 62 thou}';
 * math.format(math.evaluate(`oilClearance(${sizes}) to thou`), 6); // "2 thou"
 * ```
 */
export function crankwright(math: MathInstance, options: MathOptions = {}): MathImport {
  guardInstance(math);
  guardFields('options', options, ['units']);
  const { units: system = 'inch' } = options;
  guardSystem('options.units', system);
  return importInto(math, () => system).names;
}

/** A call of a function of ours, in SI, and what was made of its result for mathjs. */
export interface DoneCall {
  readonly name: string;
  readonly args: readonly unknown[];
  readonly result: unknown;
  readonly shown: unknown;
}

/** Told of every call. */
export type OnCall = (call: DoneCall) => void;

/** What `crankwright` gives, in units that may change, and what it converts with. */
export function importInto(
  math: MathInstance,
  system: () => UnitSystem,
  onCall: OnCall = () => {},
  typed = true,
): { readonly exact: Exact; readonly names: MathImport } {
  makeUnits(math);
  const exact = new Exact(math, typed);
  const wrapped = [...functions.values()].map((each) => {
    const own = wrappedFunction(each, exact, system, onCall);
    return [each.name, Object.defineProperty(own, 'name', { value: each.name })] as const;
  });
  const made = [...constants].map(([name, each]) => {
    return [name, factoryOf(name, () => inUnits(each, exact, system()))] as const;
  });
  const names = {
    ...Object.fromEntries([...wrapped, ...made]),
    percent: 0.01,
    ppm: 1e-6,
  };
  leaveUsualUnits(math);
  return { exact, names };
}

/** A constant of ours in units of mathjs. Nobody can change a part of it. */
function inUnits({ value, signature }: KnownConstant, exact: Exact, system: UnitSystem): unknown {
  const shown = giveValue(exact, value, signature.is, system, {});
  freeze(shown);
  return shown;
}

/** How mathjs is given a value of several parts: what is no factory it would take apart. */
const factoryOf = (name: string, make: () => unknown) =>
  Object.assign(make, { fn: name, dependencies: [] });

/** A function of ours that takes and gives units of mathjs. */
function wrappedFunction(
  { name, signature, run }: KnownFunction,
  exact: Exact,
  system: () => UnitSystem,
  onCall: OnCall,
): (...args: readonly unknown[]) => unknown {
  const { takes, gives } = signature;
  return (...args) => {
    if (args.length > takes.length) throw tooMany(name, takes, args.length);
    const [only, another] = takes;
    if (args.length === 0 && only && !only.optional) throw tooFew(name, takes);
    const call: Call = only && !another ? { root: only.name } : {};
    const given = takes
      .slice(0, args.length)
      .map((each, i) => readValue(exact, args[i], each.shape, each.name, call));
    const result = resultOf(run, given, takes);
    const shown = giveValue(exact, result, gives, system(), call);
    onCall({ name, args: given, result, shown });
    return shown;
  };
}

/** What a function gives; where a field is missing, the refusal names all that are. */
function resultOf(
  run: KnownFunction['run'],
  given: readonly unknown[],
  [first]: Signature['takes'],
): unknown {
  try {
    return run(...given);
  } catch (error) {
    const [sizes, ...others] = given;
    const call = { given: sizes, shape: first?.shape ?? 'anything' };
    throw allMissing(error, { ...call, run: (filled) => run(filled, ...others) }) ?? error;
  }
}

function tooMany(name: string, takes: Signature['takes'], count: number): RebuildInputError {
  const names = takes.map((each) => each.name).join(', ');
  const [only, another] = takes;
  const fields = only && !another ? neededOf(only.shape) : [];
  return new RebuildInputError({
    parameter: name,
    value: count,
    expected: `${takes.length} arguments at most`,
    problem: `arguments are too many for ${name}(${names})`,
    hint:
      fields.length > 0
        ? `Put all of them into one pair of braces: ${name}({${fields.map((field) => `${field}: …`).join(', ')}}).`
        : `It takes ${names}.`,
  });
}

const neededOf = (shape: ValueShape): readonly string[] =>
  Object.keys(fieldsOf(shape)).filter((key) => !key.endsWith('?'));

/** A call with nothing in its parentheses, and what it takes. */
function tooFew(name: string, takes: KnownFunction['signature']['takes']): RebuildInputError {
  const needed = takes.filter((each) => !each.optional);
  const said = needed.map((each) => {
    const fields = neededOf(each.shape);
    if (fields.length > 0) return `{${fields.join(', ')}}`;
    const words = quotedWords(each.shape);
    return words.length === 0 ? each.name : `${each.name}, one of ${words.join(', ')}`;
  });
  return new RebuildInputError({
    parameter: name,
    value: undefined,
    shown: 'it',
    expected: said.join(', '),
    problem: `takes ${said.join(', ')}`,
    hint: needed.some(({ shape }) => quotedWords(shape).length > 0)
      ? `For example ${name}(${quotedWords(needed[0]?.shape ?? 'anything')[0] ?? '…'}).`
      : 'Every size has its unit.',
  });
}

function guardInstance(math: MathInstance): void {
  const isOne =
    typeof math === 'object' &&
    math !== null &&
    ['unit', 'createUnit', 'Unit'].every((name) => typeof math[name as 'unit'] === 'function');
  if (isOne) return;
  throw new RebuildInputError({
    parameter: 'math',
    value: math,
    expected: 'an instance of mathjs',
    hint: 'Make one with create(all).',
  });
}
