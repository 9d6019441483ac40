import {
  canHold,
  gapOf,
  type Known,
  marginOf,
  own,
  ringsFit,
  sameStep,
  widthOf,
} from '../reading/index.js';
import { type Brief, kindsFor, needs, otherKinds } from './brief.js';
import type { Batch, Bores, Draft } from './draft.js';
import { isAllowed, levelOf } from './levels.js';

/** Pistons and rings in bores, and heads with their valves. */
export function topEnds(draft: Draft, brief: Brief, batch: Batch): void {
  for (const [key, bores] of boresOf(draft, batch)) {
    pistonsFor(draft, brief, batch, key, bores);
    ringsFor(draft, brief, batch, key, bores);
  }
  headsAndValves(draft, brief, batch);
  othersFor(draft, brief, batch);
}

function boresOf(draft: Draft, batch: Batch): ReadonlyMap<string, Bores> {
  const all = new Map<string, Bores>();
  for (const use of draft.uses) {
    if (use.use === 'block' && use.batch === batch) all.set(use.bores, use.way);
  }
  return all;
}

function pistonsFor(draft: Draft, brief: Brief, batch: Batch, key: string, bores: Bores): void {
  const { engine, stock, fits } = brief;
  const { limits } = own(engine.bores.pistonClearance);
  const standard = engine.bores.standard.max;
  const guardOf = (bore: Known) => fits.bandOf('piston clearance', bore?.max ?? standard);
  for (const kind of kindsFor(stock.pistonSets, batch)) {
    const { step, sizes } = kind.ready;
    if (step !== undefined && !sameStep(step, bores.step)) continue;
    const holds = (bore: Known) => canHold(widthOf(bore), limits, guardOf(bore));
    const missing = bores.sizes.every(holds) ? NO_FIT : undefined;
    const fit = kind.lacking ? missing : fits.pistons(bores.sizes, sizes);
    if (!fit?.margins.every((margin) => isAllowed(margin, brief))) continue;
    const variable = draft.take(batch, kind, { use: 'pistons', kind, bores: key });
    for (const margin of fit.margins) draft.tight(variable, levelOf(margin, brief));
    draft.flow(batch, `pistons ${key}`, variable, -1);
  }
}

/** Pistons that are missing have whatever sizes fit. */
const NO_FIT = { margins: [] } as const;

function ringsFor(
  draft: Draft,
  { engine, stock }: Brief,
  batch: Batch,
  key: string,
  bores: Bores,
): void {
  for (const kind of kindsFor(stock.ringSets, batch)) {
    const { step, rings } = kind.ready;
    const isForIt = step === undefined || sameStep(step, bores.step);
    if (!isForIt || !ringsFit(rings, bores.sizes, engine)) continue;
    const variable = draft.take(batch, kind, { use: 'rings', kind, bores: key });
    draft.flow(batch, `rings ${key}`, variable, -1);
  }
}

/** A head and valves for every engine that needs them, with enough clearance between stems and guides. */
function headsAndValves(draft: Draft, brief: Brief, batch: Batch): void {
  const { stock } = brief;
  const [head, valves] = [needs(brief, 'head'), needs(brief, 'valve set')];
  const engines = draft.termsOf(draft.engines, batch);
  const wanted = (place: string) => {
    for (const [variable, amount] of engines) draft.flow(batch, place, variable, amount);
  };
  const guides = new Set<string>();
  const stems = new Set<string>();
  if (head) {
    wanted('heads');
    for (const kind of kindsFor(stock.heads, batch)) {
      const guide = JSON.stringify(kind.ready.guide ?? null);
      guides.add(guide);
      const variable = draft.take(batch, kind, { use: 'head', kind, guide });
      draft.flow(batch, 'heads', variable, -1);
      if (valves) draft.flow(batch, `guide ${guide}`, variable, 1);
    }
  }
  if (valves) {
    wanted('valves');
    for (const kind of kindsFor(stock.valveSets, batch)) {
      const stem = JSON.stringify(kind.ready.stem ?? null);
      stems.add(stem);
      const variable = draft.take(batch, kind, { use: 'valves', kind, stem });
      draft.flow(batch, 'valves', variable, -1);
      if (head) draft.flow(batch, `stem ${stem}`, variable, 1);
    }
  }
  for (const guide of guides) {
    for (const stem of stems) {
      const margin = stemMargin(brief, JSON.parse(guide), JSON.parse(stem));
      if (margin === undefined || !isAllowed(margin, brief)) continue;
      const variable = draft.count(batch, { use: 'stems in guides', guide, stem });
      draft.tight(variable, levelOf(margin, brief));
      draft.flow(batch, `guide ${guide}`, variable, -1);
      draft.flow(batch, `stem ${stem}`, variable, -1);
    }
  }
}

/** As many other parts of every kind as an engine needs. */
function othersFor(draft: Draft, { needed, stock }: Brief, batch: Batch): void {
  for (const { part, count } of otherKinds(needed)) {
    for (const [variable, amount] of draft.termsOf(draft.engines, batch)) {
      draft.flow(batch, `other ${part}`, variable, amount * count);
    }
    for (const kind of kindsFor(stock.otherParts, batch)) {
      if (kind.ready.of !== part) continue;
      const variable = draft.take(batch, kind, { use: 'other part', kind });
      draft.flow(batch, `other ${part}`, variable, -1);
    }
  }
}

/** The margin of stems in guides; infinite if it is not judged, undefined if they do not fit [nm]. */
export function stemMargin(
  { engine, fits }: Pick<Brief, 'engine' | 'fits'>,
  guide: Known | null,
  stem: Known | null,
): number | undefined {
  const { limits } = own(engine.guideClearance);
  if (!limits || !guide || !stem) return Infinity;
  return marginOf(gapOf(guide, stem), limits, fits.bandOf('guide clearance', guide.max));
}
