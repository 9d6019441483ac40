import type { EvalFunction, MathNode, Unit } from 'mathjs';
import type { Dimension, UnitSystem } from '../quantities/index.js';
import { mathjsUnit } from '../quantities/internal.js';
import { math } from './evaluate.js';
import type { FormulaCard } from './formula-card.js';
import { countsRadians, type FormulaLine, unfold } from './unfold.js';
import { type Exponents, type WorkingUnits, workingUnits } from './working-units.js';

/** A line that is ready to be worked out. */
export interface PlannedLine extends FormulaLine {
  readonly exponents: Exponents;
  readonly compiled: EvalFunction;
}

/** A quantity of the formula, in SI. */
export interface PlannedQuantity {
  readonly written: string;
  readonly size: number;
  readonly exponents: Exponents;
}

/** A formula, taken apart, with the dimension of every part. */
export interface FormulaPlan {
  readonly lines: readonly PlannedLine[];
  readonly functions: readonly string[];
  readonly quantities: ReadonlyMap<string, PlannedQuantity>;
  readonly letters: ReadonlyMap<string, Exponents>;
  readonly inRadians: boolean;
  readonly units: Readonly<Record<UnitSystem, WorkingUnits>>;
}

/** Plans are made once: taking a formula apart costs more than working it out. */
const plans = /* @__PURE__ */ new WeakMap<FormulaCard, FormulaPlan>();

/** The plan of a card. */
export function planOf(card: FormulaCard): FormulaPlan {
  const known = plans.get(card);
  if (known !== undefined) return known;
  const plan = makePlan(card);
  plans.set(card, plan);
  return plan;
}

function makePlan(card: FormulaCard): FormulaPlan {
  const { lines, functions, quantities } = unfold(card);
  const letters = Object.entries(card.letters);
  const scope = new Map<string, unknown>(
    letters.map(([letter, { domain }]) => [letter, unitOf(card.example[letter], domain.dimension)]),
  );
  const planned = new Map(
    [...quantities].map(([symbol, written]) => {
      const quantity = math.evaluate(written) as Unit;
      scope.set(symbol, quantity);
      // A unit alone is one of it.
      const one = quantity.value === null ? math.unit(1, written) : quantity;
      return [symbol, { written, size: one.toSI().toJSON().value, exponents: exponentsOf(one) }];
    }),
  );
  return {
    lines: lines.map((line) => {
      const compiled = line.node.compile();
      const result: unknown = compiled.evaluate(scope as never);
      scope.set(line.symbol, result);
      return { ...line, compiled, exponents: exponentsOf(result) };
    }),
    functions,
    quantities: planned,
    letters: new Map(
      letters.map(([letter, { domain }]) => [letter, exponentsOf(unitOf(1, domain.dimension))]),
    ),
    inRadians: lines.some(({ node }) => node.filter(isOfAngles).length > 0),
    units: { inch: unitsOf(card, 'inch'), metric: unitsOf(card, 'metric') },
  };
}

const unitOf = (value: number | undefined, dimension: Dimension): unknown =>
  mathjsUnit[dimension] === '' ? value : math.unit(value ?? 1, mathjsUnit[dimension]);

/** What mathjs counts besides is of no use here: current, light, amounts, bits. */
function exponentsOf(value: unknown): Exponents {
  const [m = 0, l = 0, t = 0, , k = 0, , , a = 0] =
    (value as { readonly dimensions?: readonly number[] }).dimensions ?? [];
  return [m, l, t, k, a];
}

const ANGLES: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
]);

const isOfAngles = (node: MathNode): boolean =>
  node.type === 'SymbolNode' && ANGLES.has((node as unknown as { readonly name: string }).name);

function unitsOf(card: FormulaCard, system: UnitSystem): WorkingUnits {
  const { letters, gives, where, expression } = card;
  const text = [...where, expression].join('\n');
  return workingUnits(
    {
      dimensions: [
        gives.dimension,
        ...Object.values(letters).map(({ domain }) => domain.dimension),
      ],
      isOfWholeTurns: !/\b(?:a?sin|a?cos|a?tan)\(/.test(text) && !countsRadians(text),
      isFar: Object.values(letters).some(
        ({ domain, usual }) => domain.dimension === 'length' && usual[1] > 2,
      ),
    },
    system,
  );
}
