import type { FactoryFunctionMap, MathJsInstance, MathNode } from 'mathjs';
import { type DoneCall, type Exact, importInto } from '../../mathjs/internal.js';
import type { UnitSystem } from '../../quantities/index.js';
import { readingFunctions } from './reading-functions.js';

/** Functions of mathjs that have no place at the prompt: they change it, or read text or formulas. */
export const OFF: readonly string[] = [
  'chain',
  'compile',
  'config',
  'createUnit',
  'derivative',
  'evaluate',
  'help',
  'import',
  'leafCount',
  'parse',
  'parser',
  'rationalize',
  'replacer',
  'resolve',
  'reviver',
  'simplify',
  'simplifyConstant',
  'simplifyCore',
  'symbolicEqual',
  'typed',
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
  const known = Object.keys(mathWithTransform).filter(
    (name) => /^[a-z]/.test(name) && !OFF.includes(name),
  );
  return { math, exact, parse: (text) => parse(text), names: known };
}

interface Inside {
  readonly expression: { readonly mathWithTransform: object };
}
