import { assemble } from './assemble.js';
import type { Assembly } from './assembly.js';
import type { Brief } from './brief.js';
import { TimeUp } from './clock.js';
import type { Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import { workOf } from './least-work.js';
import { leximin, type Settled, type SolvedPlan, settledIn } from './leximin.js';
import { exactly, type Row, sumOfTerms, type Term, upTo } from './model.js';
import type { Preference } from './preferences.js';
import type { Proof } from './proof-types.js';
import type { Solution, Solver } from './solver.js';
import { batchesByBlock, toldApart } from './told-apart.js';
import { type Wish, wishesIn } from './wishes.js';

/** How many of the tightest clearances are compared between plans: of few blocks, and of more. */
const DEPTH = { few: 24, many: 6 };

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
export function amongEquals(start: SolvedPlan, solver: Solver): Among {
  let compared: readonly Preference[] = [];
  let best = start;
  let stopped: Stopped;
  try {
    const won = sameAs(start);
    const fine = fineStock(start);
    const widened = leximin(start, fine ? DEPTH.few : DEPTH.many, won, solver);
    best = widened;
    stopped = widened.stopped;
    if (!stopped) {
      const same = (draft: Draft) => [...won(draft), ...settledIn(draft, widened.settled)];
      const asked = leastOf(best, [['least work', workOf(best.draft)]], same(best.draft), solver);
      best = asked.best;
      stopped = asked.stopped;
      compared = ['next tightest margins', ...asked.compared];
      const work = sumOfTerms(workOf(best.draft), best.values);
      const apart = stopped || !fine ? undefined : oneByOne(best, fine, widened.settled);
      if (apart) {
        const sameWork = upTo(workOf(apart.draft), work);
        const rows = [...same(apart.draft), sameWork];
        const its = leastOf(apart, wishesIn(apart.draft), rows, solver);
        if (its.best.values.length > 0) best = its.best;
        stopped = its.stopped;
        compared = [...compared, ...its.compared];
      }
    }
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    stopped = 'time limit';
  }
  const assemblies = assemble(best.brief, best.draft, best.values);
  return { brief: best.brief, assemblies, proof: proofOf(stopped, assemblies.length), compared };
}

/** Why the comparison ended, if it did not come to its end. */
type Stopped = Solution['status'] | undefined;

function proofOf(stopped: Stopped, engines: number): Proof {
  if (stopped === undefined) return { outcome: 'optimal' };
  const outcome = stopped === 'time limit' ? 'time limit' : 'solver failure';
  return { outcome, stage: 'equal plans', found: engines, bound: engines };
}

/** Rows: as many engines, and of the blocks that must be built, at no more cost. */
function sameAs({ draft: of, values }: SolvedPlan): (draft: Draft) => readonly Row[] {
  const before = (terms: readonly Term[]) => sumOfTerms(terms, values);
  return (draft) => [
    exactly(draft.mustBuild, before(of.mustBuild)),
    exactly(draft.engines, before(of.engines)),
    upTo(draft.cost, before(of.cost)),
  ];
}

/** A stock of parts told apart, and a batch for each block; undefined if there are too many. */
function fineStock({ brief }: SolvedPlan): Pick<Brief, 'stock' | 'batches'> | undefined {
  const stock = toldApart(brief.stock);
  const batches = batchesByBlock(stock, brief.batches);
  return batches.length > MOST_ONE_BY_ONE ? undefined : { stock, batches };
}

/** The same plan in a model of one engine for each block, not solved yet. */
function oneByOne(
  { brief: { upTo: _, ...brief } }: SolvedPlan,
  fine: Pick<Brief, 'stock' | 'batches'>,
  settled: readonly Settled[],
): SolvedPlan {
  const fits = new FitTable(brief.engine, fine.stock.shells, brief.fits.bandOf);
  const levels = settled.map(({ margin }) => margin);
  const whole: Brief = { ...brief, ...fine, fits, levels, above: levels.at(-1) ?? -Infinity };
  return { brief: whole, draft: formulate(whole), values: [] };
}

/** Asks for the least of one sum after another. What was asked before stays as good. */
function leastOf(
  start: SolvedPlan,
  wishes: readonly Wish[],
  same: readonly Row[],
  solver: Solver,
): {
  readonly best: SolvedPlan;
  readonly compared: readonly Preference[];
  readonly stopped: Stopped;
} {
  const { brief, draft } = start;
  const where = [...same];
  const compared: Preference[] = [];
  let { values } = start;
  let stopped: Stopped;
  for (const [preference, of] of wishes) {
    // Nothing is less than none.
    if (values.length === 0 || sumOfTerms(of, values) > 0) {
      const from = values.length > 0 ? { from: values } : {};
      const found = solver.solve('equal plans', draft.model, { goal: 'least', of, where, ...from });
      if (found.status !== 'optimal') {
        stopped = found.status;
        break;
      }
      values = found.values;
    }
    where.push(upTo(of, sumOfTerms(of, values)));
    compared.push(preference);
  }
  return { best: { brief, draft, values }, compared, stopped };
}
