import type { MathNode } from 'mathjs';
import { functions, unitByName } from '../../mathjs/internal.js';
import { ambiguousSpellings } from '../../quantities/internal.js';
import type { PromptMath } from './load-math.js';
import { BEHIND_NUMBERS } from './spelled-units.js';
import { WrongStatement } from './wrong-statement.js';

/**
 * Refuses to give a value or a parameter the name of a unit, a constant or a function of the library: readings after
 * it would be wrong.
 */
export function refuseTaken(node: MathNode, loaded: PromptMath): void {
  node.traverse((at) => {
    for (const name of namesGiven(at)) {
      const what = whatHas(name, loaded);
      if (what === undefined) continue;
      const other = at.type === 'FunctionAssignmentNode' ? 'choose' : 'give the value';
      throw new WrongStatement(`${name} is ${what}; ${other} another name`);
    }
  });
}

/** What has a name already: `a unit`. */
export function whatHas(name: string, { math, names }: PromptMath): string | undefined {
  if (
    unitByName.has(name) ||
    Object.hasOwn(BEHIND_NUMBERS, name) ||
    Object.hasOwn(ambiguousSpellings, name)
  ) {
    return 'a unit';
  }
  if (functions.has(name)) return 'a function';
  if (!names.includes(name)) return undefined;
  const known = (math as unknown as Readonly<Record<string, unknown>>)[name];
  // The functions of mathjs have names that people give to sizes: size, range, mean.
  return typeof known === 'function' ? undefined : 'a constant';
}

/** The names that a node gives to values. */
function namesGiven(node: MathNode): readonly string[] {
  if (node.type === 'AssignmentNode') {
    const { object, index } = node as unknown as {
      readonly object: { readonly name: string };
      readonly index: unknown;
    };
    return index === null ? [object.name] : [];
  }
  if (node.type !== 'FunctionAssignmentNode') return [];
  const { name, params } = node as unknown as {
    readonly name: string;
    readonly params: readonly string[];
  };
  return [name, ...params];
}
