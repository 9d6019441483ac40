import { judge, type Span } from '../../judging/index.js';
import { namedFrom } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import { type EngineKind, own } from '../../reading/index.js';
import type { Section } from '../sections.js';
import type { HeadPart, Part, RodsPart } from '../shed.js';
import { readyHousings } from './ready-housings.js';
import { seenFaults } from './seen-faults.js';
import type { Job } from './triage-types.js';
import type { Readiness } from './ways.js';

/** How a rod, or a set of them, can be made ready. */
export interface ReadyRods {
  /** Big-end housings as they are used [m]. */
  readonly housings: readonly Span<Length>[];
  /** What is done to them in any case. */
  readonly repairs: readonly Job[];
}

/** How rods can be made ready, what was judged of them, and why. */
export function readyRods(part: RodsPart, engine: EngineKind): Readiness<ReadyRods> {
  const seen = seenFaults('rods', part);
  const { ready, findings, because } = namedFrom(
    () => ({ housings: 'part.rods', limits: 'engine.rodHousing' }),
    () => readyHousings(part.rods, engine.rodHousing, seen.spun),
  );
  return {
    ...(!seen.scrap &&
      ready && { ready: { housings: ready.sizes, repairs: [...seen.repairs, ...ready.repairs] } }),
    findings,
    because: [...seen.because, ...because],
  };
}

/** What a part takes that is used as it is, or repaired as a whole. */
export interface ReadyWhole {
  /** What is done to it in any case. */
  readonly repairs: readonly Job[];
}

/** How a head can be made ready, what was judged of it, and why. */
export function readyHead(part: HeadPart, engine: EngineKind): Readiness<ReadyWhole> {
  const { scrap, because } = seenFaults('heads', part);
  const { limits, basis } = own(engine.headFlatness);
  const value = part.flatness;
  const finding =
    value !== undefined && limits !== undefined && basis !== undefined
      ? namedFrom(
          () => ({ limits: 'engine.headFlatness' }),
          () => judge({ feature: 'face', dimension: 'length', value, limits, basis }),
        )
      : undefined;
  const warped = finding !== undefined && finding.verdict !== 'within';
  const spoilt = because.length > 0;
  return {
    ...(!scrap && {
      ready: { repairs: warped || spoilt ? [{ work: 'skim head', places: [] }] : [] },
    }),
    findings: finding ? [finding] : [],
    because: [...because, ...(warped ? [{ kind: 'face' as const, finding }] : [])],
  };
}

/** Whether any other part can be used: it is, unless a fault condemns it. */
export function readyWhole(section: Section, part: Part): Readiness<ReadyWhole> {
  const { scrap, because } = seenFaults(section, part);
  return { ...(!scrap && { ready: { repairs: [] } }), findings: [], because };
}
