import type { FormulaCard } from 'crankwright/teaching';
import { bareFormula } from './bare-formula.js';
import { distFile } from './built.js';
import { type Runner, race } from './race.js';
import type { Section } from './report.js';
import { ratioOf, spreadOf } from './spread.js';

const { cards }: typeof import('crankwright/teaching') = await import(
  new URL('teaching.js', distFile).href
);

/** How many different calls are timed. */
const CALLS = 200;

/** What does more than its formulas say: it fits, searches, integrates or looks at a list of readings. */
const NOT_CLOSED = new Set([
  'bigEndLoads',
  'borePlan',
  'boreShape',
  'gasTrace',
  'grindPlan',
  'guideWear',
  'journalShape',
  'ringGapAlongBore',
  'sumpLog',
]);

interface Timed {
  readonly name: string;
  /** Time of one call, and of the bare arithmetic of its formulas [ns]. */
  readonly ours: number;
  readonly bare: number;
  readonly ratio: number;
}

/** Every closed-form function of the library beside the bare arithmetic of its formulas. */
export function raceFormulas(): Section {
  const timed = byFunction().flatMap(timeOf);
  timed.sort((a, b) => b.ratio - a.ratio);
  return {
    title: `closed formulas beside their bare arithmetic: ${timed.length} functions`,
    rows: [
      ['', 'one call', 'bare', 'ratio'],
      ...timed.map(({ name, ours, bare, ratio }) => [
        name,
        `${ours.toFixed(1)} ns`,
        `${bare.toFixed(1)} ns`,
        `${ratio.toFixed(1)} ×`,
      ]),
    ],
    targets: [],
  };
}

/** The cards of each function that take the same letters: a call works all of them out. */
function byFunction(): readonly (readonly FormulaCard[])[] {
  const groups = new Map<string, FormulaCard[]>();
  for (const card of Object.values(cards)) {
    if (NOT_CLOSED.has(card.of.name)) continue;
    const key = `${card.of.name} ${Object.keys(card.letters).join()} ${card.call}`;
    groups.set(key, [...(groups.get(key) ?? []), card]);
  }
  // The fullest group stands for the function.
  const fullest = new Map<string, FormulaCard[]>();
  for (const group of groups.values()) {
    const name = group[0]?.of.name ?? '';
    if (group.length > (fullest.get(name)?.length ?? 0)) fullest.set(name, group);
  }
  return [...fullest.values()];
}

function timeOf(group: readonly FormulaCard[]): readonly Timed[] {
  const [first] = group as readonly [FormulaCard];
  const { name } = first.of;
  const formulas = group.map((card, i) => bareFormula(card, `${name} ${i}`));
  const calls = Array.from({ length: CALLS }, (_, i) => valuesOf(first, i)).flatMap((values) => {
    const args = soundCall(first, values);
    const isSound = formulas.every((formula) => Number.isFinite(formula(values)));
    return args && isSound ? [{ values, args }] : [];
  });
  if (calls.length < CALLS / 4) throw new Error(`Hardly any usual values suit ${name}.`);
  const ours: Runner = { name, pass: passOver(name, first.of, calls) };
  const bare: Runner = { name: 'bare', pass: barePass(name, formulas, calls) };
  const times = race([ours, bare]);
  const [mine = [], theirs = []] = [times.get(name), times.get('bare')];
  const one = (all: readonly number[]) => (spreadOf(all).median / calls.length) * 1e6;
  return [{ name, ours: one(mine), bare: one(theirs), ratio: ratioOf(mine, theirs).median }];
}

type Values = Readonly<Record<string, number>>;
interface Call {
  readonly values: Values;
  readonly args: readonly unknown[];
}

/** Usual values, another set for every call. They are parsed, so that V8 lays them out like any object. */
function valuesOf({ letters }: FormulaCard, call: number): Values {
  const entries = Object.entries(letters).map(
    (
      [
        letter,
        {
          usual: [least, most],
        },
      ],
      i,
    ) => {
      const share = (call * 0.618_034 + i * 0.414_214) % 1;
      return [letter, least + share * (most - least)] as const;
    },
  );
  return JSON.parse(JSON.stringify(Object.fromEntries(entries))) as Values;
}

function soundCall(card: FormulaCard, values: Values): readonly unknown[] | undefined {
  const args = JSON.parse(JSON.stringify(card.call(values))) as readonly unknown[];
  try {
    card.of(...(args as never[]));
    return args;
  } catch {
    return undefined;
  }
}

// Each loop is code of its own, as race.ts says: one shared loop would stop V8 from inlining.

function passOver(name: string, of: FormulaCard['of'], calls: readonly Call[]): () => number {
  const given = (calls[0]?.args ?? []).map((_, i) => `args[${i}]`).join(', ');
  const body = `/* ${name} */ let n = 0; for (const args of all) { const got = of(${given}); n += typeof got === 'number' ? got : 1; } return n;`;
  const pass = new Function('of', 'all', body);
  const all = calls.map(({ args }) => args);
  return () => pass(of, all);
}

function barePass(
  name: string,
  formulas: readonly ReturnType<typeof bareFormula>[],
  calls: readonly Call[],
): () => number {
  const given = formulas.map((_, i) => `f${i}`);
  const sum = given.map((f) => `n += ${f}(values);`).join(' ');
  const body = `/* bare ${name} */ let n = 0; for (const values of all) { ${sum} } return n;`;
  const pass = new Function(...given, 'all', body);
  const all = calls.map(({ values }) => values);
  return () => pass(...formulas, all);
}
