import type { FactoryFunctionMap, MathJsInstance, MathNode } from 'mathjs';
import { type DoneCall, type Exact, importInto } from '../../mathjs/internal.js';
import type { UnitSystem } from '../../quantities/index.js';
import { readingFunctions } from './reading-functions.js';
import { WrongStatement } from './wrong-statement.js';

/**
 * Functions of mathjs that have no place at the prompt: they change it, read text or formulas, or
 * fill lists of any length, which can end the program.
 */
export const OFF: readonly string[] = [
  'chain',
  'compile',
  'config',
  'createUnit',
  'derivative',
  'evaluate',
  'help',
  'identity',
  'import',
  'leafCount',
  'ones',
  'parse',
  'parser',
  'random',
  'randomInt',
  'rationalize',
  'replacer',
  'resize',
  'resolve',
  'reviver',
  'simplify',
  'simplifyConstant',
  'simplifyCore',
  'symbolicEqual',
  'typed',
  'zeros',
];

/** What the prompt computes with. */
export interface PromptMath {
  readonly math: MathJsInstance;
  readonly exact: Exact;
  readonly parse: (text: string) => MathNode;
  /** What an expression can name: functions, ours among them, and constants. */
  readonly names: readonly string[];
}

/** Loads mathjs, which takes longer than all the rest, and gives it our units and functions. */
export async function loadMath(
  system: () => UnitSystem,
  onCall: (call: DoneCall) => void,
): Promise<PromptMath> {
  const { all, create } = await import('mathjs');
  const math = create(all as FactoryFunctionMap, { matrix: 'Array' });
  const { parse } = math;
  const { exact, names } = importInto(math, system, onCall, false);
  math.import(names);
  math.import(readingFunctions(math, exact));
  // As calculators and worked formulas name it.
  math.import({ ln: (x: number) => math.log(x) });
  // What an expression can find; to ask what each is would load all of mathjs at once.
  const { mathWithTransform } = (math as unknown as Inside).expression;
  mathWithTransform.range = withinBounds(mathWithTransform.range);
  const known = Object.keys(mathWithTransform).filter(
    (name) => /^[a-z]/.test(name) && !OFF.includes(name),
  );
  return { math, exact, parse: (text) => parse(text), names: known };
}

type Range = (...args: readonly unknown[]) => unknown;

interface Inside {
  readonly expression: { readonly mathWithTransform: { range: Range } };
}

/** More numbers than anybody reads; a list of many millions would end the program. */
const MOST_LISTED = 10_000;

/** The numbers from one to another, as `1:3` lists them, where they are not too many. */
const withinBounds =
  (range: Range): Range =>
  (...args) => {
    const [start, end, step] = args;
    if (typeof start === 'string')
      throw new WrongStatement(`type ${start} without quotation marks`);
    const many = (Number(end) - Number(start)) / (typeof step === 'number' ? step : 1);
    if (many > MOST_LISTED) {
      throw new WrongStatement(`${start}:${end} lists too many numbers, at most ${MOST_LISTED}`);
    }
    return range(...args);
  };
