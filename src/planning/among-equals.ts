import { assemble } from './assemble.js';
import type { Assembly } from './assembly.js';
import type { Brief } from './brief.js';
import { TimeUp } from './clock.js';
import type { Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import { workOf } from './least-work.js';
import { type Counted, leximin, type Settled, settledIn } from './leximin.js';
import { type Row, sumOfTerms, type Term } from './model.js';
import { outOfOrder, strangers } from './origins.js';
import type { Proof } from './plan-types.js';
import type { Preference } from './preferences.js';
import type { Question, Solution, Solver } from './solver.js';
import { batchesByBlock, toldApart } from './told-apart.js';

/** How many of the tightest clearances are compared between plans. */
const DEPTH = 24;

/** The most engines, one for each block and interchange group, that are treated one by one. */
const MOST_ONE_BY_ONE = 8;

/** The plan that an owner wants among equal plans. */
export interface Among {
  readonly brief: Brief;
  readonly assemblies: readonly Assembly[];
  readonly proof: Proof;
  /** What it was compared by beyond engines, cost and tightest margin. */
  readonly compared: readonly Preference[];
}

/**
 * Among the plans with as many engines, at the same cost, with the same tightest margin, finds the one that an owner
 * wants: by the next tightest margins, then the work, and then, if there are few blocks, by where parts are from.
 */
export function amongEquals(start: Counted, solver: Solver): Among {
  const compared: Preference[] = [];
  let best = start;
  let stopped: Solution['status'] | undefined;
  try {
    const won = sameAs(start);
    const widened = leximin(start, DEPTH, won, solver);
    best = widened;
    stopped = widened.stopped;
    if (!stopped) {
      compared.push('next tightest margins');
      const same = (draft: Draft) => [...won(draft), ...settledIn(draft, widened.settled)];
      const asked = asking(widened, same, solver);
      stopped = asked.ask('least work', workOf);
      best = asked.best();
      compared.push(...asked.compared());
      if (!stopped) {
        const work = sumOfTerms(workOf(best.draft), best.values);
        const apart = oneByOne(best, widened.settled);
        if (apart) {
          const its = asking(
            apart,
            (draft) => [...same(draft), { terms: workOf(draft), min: -Infinity, max: work }],
            solver,
          );
          stopped = its.ask('origin', strangers) ?? its.ask('order of the file', outOfOrder);
          if (its.best().values.length > 0) best = its.best();
          compared.push(...its.compared());
        }
      }
    }
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    stopped = 'time limit';
  }
  const assemblies = assemble(best.brief, best.draft, best.values);
  return { brief: best.brief, assemblies, proof: proofOf(stopped, assemblies.length), compared };
}

function proofOf(stopped: Solution['status'] | undefined, engines: number): Proof {
  if (stopped === undefined) return { kind: 'optimal' };
  const kind = stopped === 'time limit' ? 'time limit' : 'solver failure';
  return { kind, stage: 'equal plans', found: engines, bound: engines };
}

/** Rows: as many engines, and of the blocks that must be built, at no more cost. */
function sameAs({ draft: of, values }: Counted): (draft: Draft) => readonly Row[] {
  const exactly = (terms: readonly Term[], before: readonly Term[]): Row => {
    const sum = sumOfTerms(before, values);
    return { terms, min: sum, max: sum };
  };
  const cost = sumOfTerms(of.cost, values);
  return (draft) => [
    exactly(draft.mustBuild, of.mustBuild),
    exactly(draft.engines, of.engines),
    { terms: draft.cost, min: -Infinity, max: cost },
  ];
}

/** The same plan in a model of one engine for each block; undefined if there are too many. */
function oneByOne({ brief }: Counted, settled: readonly Settled[]): Counted | undefined {
  const stock = toldApart(brief.stock);
  const batches = batchesByBlock(stock, brief.batches);
  if (batches.length > MOST_ONE_BY_ONE) return undefined;
  const fits = new FitTable(brief.engine, stock.shells, brief.fits.bandOf);
  const levels = settled.map(({ margin }) => margin);
  const above = levels.at(-1) ?? -Infinity;
  const { upTo: _, ...before } = brief;
  const fine: Brief = { ...before, stock, fits, batches, levels, above };
  return { brief: fine, draft: formulate(fine), values: [] };
}

/** Asks for the least of one sum after another. What was asked before stays as good. */
function asking(start: Counted, same: (draft: Draft) => readonly Row[], solver: Solver) {
  const { brief, draft } = start;
  const rows = [...same(draft)];
  const compared: Preference[] = [];
  let { values } = start;
  return {
    /** Asks for the least of a sum; returns why it was not proven, if it was not. */
    ask(preference: Preference, sumIn: (draft: Draft) => readonly Term[]) {
      const of = sumIn(draft);
      const isAsked = values.length === 0 || sumOfTerms(of, values) > 0;
      if (isAsked) {
        const from = values.length > 0 ? { from: values } : {};
        const question: Question = { goal: 'least', of, where: rows, ...from };
        const found = solver.solve('equal plans', draft.model, question);
        if (found.status !== 'optimal') return found.status;
        values = found.values;
      }
      const max = sumOfTerms(of, values);
      rows.push({ terms: of, min: -Infinity, max });
      compared.push(preference);
      return undefined;
    },
    best: (): Counted => ({ brief, draft, values }),
    compared: (): readonly Preference[] => compared,
  };
}
