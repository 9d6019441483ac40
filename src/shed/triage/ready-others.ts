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
  /** Big-end housings, after any resizing [m]. */
  readonly housings: readonly Span<Length>[];
  /** Repairs they need in any case. */
  readonly repairs: readonly Job[];
}

/** Works out how rods can be made ready, with findings and reasons. */
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

/** How a part that needs no machining can be made ready. */
export interface ReadyWhole {
  /** Repairs it needs in any case. */
  readonly repairs: readonly Job[];
}

/** Works out how a head can be made ready, with findings and reasons. */
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
  const faulty = because.length > 0;
  return {
    ...(!scrap && {
      ready: { repairs: warped || faulty ? [{ work: 'skim head', places: [] }] : [] },
    }),
    findings: finding ? [finding] : [],
    because: [...because, ...(warped ? [{ kind: 'face' as const, finding }] : [])],
  };
}

/** Works out whether any other part can be used: it can, unless a fault makes it scrap. */
export function readyWhole(section: Section, part: Part): Readiness<ReadyWhole> {
  const { scrap, because } = seenFaults(section, part);
  return { ...(!scrap && { ready: { repairs: [] } }), findings: [], because };
}
