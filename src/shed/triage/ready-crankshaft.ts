import { isOutside } from '../../judging/internal.js';
import { repeatsIn } from '../../measuring/internal.js';
import { accuracyOf } from '../../reading/index.js';
import { mainJournalsOf, rodJournalsOf } from '../places-of.js';
import type { CrankshaftPart } from '../shed.js';
import type { JudgedWithRunout } from './ground-journals.js';
import { journalsReady, NO_MAINS, waysOf } from './ready-journals.js';
import { runoutsOutside, worstRunout } from './runouts.js';
import { seenFaults } from './seen-faults.js';
import type { Job, TriageReason } from './triage-types.js';
import type { Readiness, Shop, Way } from './ways.js';

/** How a crankshaft can be made ready: a way for its rod journals and one for its mains. */
export interface ReadyCrankshaft {
  /** One way for every step that serves the rod journals, smallest first. */
  readonly rods: readonly Way[];
  /** One way for every step that serves the mains, smallest first; one empty way if no main has shells. */
  readonly mains: readonly Way[];
  /** Repairs it needs in any case. */
  readonly repairs: readonly Job[];
}

/**
 * Works out how a crankshaft can be made ready, with findings and reasons. What was read of the
 * journals of a bent one, or of one that reads as bent, does not show how they will clean up. They are judged with the runout that
 * the shop promises once it is straight; without a promise it is undecided, and the steps are those
 * that would serve if it came back true.
 */
export function readyCrankshaft(part: CrankshaftPart, shop: Shop): Readiness<ReadyCrankshaft> {
  const { engine, units } = shop;
  const [rodJournals, mainJournals] = [rodJournalsOf(part, engine), mainJournalsOf(part, engine)];
  const accuracy = accuracyOf(shop, {
    micrometer: [...rodJournals, ...mainJournals].map(({ readings = [] }) => repeatsIn(readings)),
  });
  const seen = seenFaults('crankshafts', part);
  const listed = seen.works.includes('straighten');
  const worst = worstRunout(part);
  const runouts = listed ? [] : runoutsOutside(part, engine, accuracy);
  const reads = runouts.find(({ finding }) => finding.verdict !== 'undecided');
  const bent = listed || reads !== undefined;
  const promised = part.runoutOnceStraight;
  const judged: JudgedWithRunout = {
    seen,
    units,
    accuracy,
    ...(bent && { runout: promised }),
    ifTrue: bent && promised === undefined,
  };
  const mains =
    engine.mains > 0 && engine.mainJournals
      ? journalsReady('mains', mainJournals, engine.mainJournals, judged)
      : NO_MAINS;
  const rods = journalsReady('rods', rodJournals, engine.rodJournals, judged);
  const findings = [...mains.findings, ...rods.findings];
  const because = [...seen.because, ...mains.because, ...rods.because];
  const lost = [mains, rods].filter(({ ways }) => ways.length === 0);
  if (seen.scrap || !lost.every(({ atBest }) => atBest)) return { findings, because };
  const repairs: readonly Job[] = reads
    ? [{ work: 'straighten', places: [] }, ...seen.repairs]
    : seen.repairs;
  const ready = { rods: waysOf(rods), mains: waysOf(mains), repairs };
  if (lost.length > 0) {
    return { atBest: { ...ready, repairs: [] }, aside: 'undecided', findings, because };
  }
  if (judged.ifTrue) {
    const unknown: TriageReason = reads
      ? { kind: 'reads as bent', ...reads }
      : { kind: 'runout not known', ...worst };
    return { atBest: ready, aside: 'undecided', findings, because: [...because, unknown] };
  }
  const near = bent ? [] : runouts;
  const again = near.map(({ place, finding }): TriageReason => {
    const { feature } = finding;
    return { kind: 'measure again', finding: { ...finding, feature: `${place}: ${feature}` } };
  });
  const all = [...because, ...again];
  // By the best estimate it runs true, or it does not: then nothing is decided before it is read again.
  return near.some(({ finding }) => isOutside(finding))
    ? { atBest: ready, aside: 'undecided', findings, because: all }
    : { ready, findings, because: all };
}
