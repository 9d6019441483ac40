import { type Finding, judge, type Span } from '../../judging/index.js';
import { isOutside, namedFrom } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import { accuracyOf, certaintyOf, own } from '../../reading/index.js';
import type { Part } from '../part.js';
import { rodsOf } from '../places-of.js';
import type { Section } from '../sections.js';
import type {
  HeadPart,
  PistonSetPart,
  RingSetPart,
  RodsPart,
  Shed,
  ShellPart,
  ThrustWasherPart,
  ValveSetPart,
} from '../shed.js';
import { mended } from './mended.js';
import { notKnown, notSized } from './not-measured.js';
import { readyHousings } from './ready-housings.js';
import { pistonsMisread } from './ready-pistons.js';
import { seenFaults } from './seen-faults.js';
import type { Job, TriageReason } from './triage-types.js';
import type { Readiness, Shop } from './ways.js';
import { whichSeized } from './which-seized.js';

/** How a rod, or a set of them, can be made ready. */
export interface ReadyRods {
  /** Big-end housings, after any resizing [m]. */
  readonly housings: readonly (Span<Length> | undefined)[];
  /** Repairs they need in any case. */
  readonly repairs: readonly Job[];
}

/** Works out how rods can be made ready, with findings and reasons. */
export function readyRods(part: RodsPart, shed: Shed): Readiness<ReadyRods> {
  const { engine } = shed;
  const seen = seenFaults('rods', part);
  const told = whichSeized(part, shed);
  const housings = namedFrom(
    () => ({ housings: 'part.rods', limits: 'engine.rodHousing' }),
    () =>
      readyHousings(
        'big ends',
        rodsOf(part, engine),
        engine.rodHousing,
        seen.works.includes('resize housings'),
        accuracyOf(shed),
      ),
  );
  const { findings } = housings;
  const because = [...seen.because, ...told, ...housings.because];
  const best = housings.ready ?? housings.atBest;
  if (seen.scrap || best === undefined) return { findings, because };
  const rods = { housings: best.sizes, repairs: [...seen.repairs, ...best.repairs] };
  if (told.some(({ cleared }) => !cleared)) {
    return { atBest: rods, aside: 'undecided', findings, because };
  }
  return housings.ready
    ? { ready: rods, findings, because }
    : { atBest: rods, aside: housings.aside ?? 'not as it is', findings, because };
}

/** How a part that needs no machining can be made ready. */
export interface ReadyWhole {
  /** Repairs it needs in any case. */
  readonly repairs: readonly Job[];
}

/** Works out how a head can be made ready, with findings and reasons. */
export function readyHead(part: HeadPart, shop: Shop): Readiness<ReadyWhole> {
  const seen = seenFaults('heads', part);
  const { limits, basis } = own(shop.engine.headFlatness);
  const value = part.flatness;
  const finding =
    value !== undefined && limits !== undefined && basis !== undefined
      ? namedFrom(
          () => ({ limits: 'engine.headFlatness' }),
          () =>
            judge({
              feature: 'face',
              dimension: 'length',
              value,
              limits,
              basis,
              ...certaintyOf('face', accuracyOf(shop)),
            }),
        )
      : undefined;
  const warped = finding !== undefined && isOutside(finding);
  const findings = finding ? [finding] : [];
  const because = [
    ...seen.because,
    ...measureAgain(finding),
    ...(warped ? [{ kind: 'face' as const, finding }] : []),
  ];
  if (seen.scrap) return { findings, because };
  const mend = mended(seen, shop);
  const skim = warped || seen.works.includes('skim head');
  const repairs = [
    ...mend.repairs,
    ...(skim ? [{ work: 'skim head' as const, places: [] }] : []),
    ...seen.repairs,
  ];
  return mend.aside
    ? { atBest: { repairs }, aside: 'not as it is', findings, because }
    : { ready: { repairs }, findings, because };
}

/** Works out how a set of valves can be made ready. Its margin is judged by the maker's limit only. */
export function readyValves(part: ValveSetPart, shop: Shop): Readiness<ReadyWhole> {
  const { engine } = shop;
  const { scrap, repairs, because } = seenFaults('valveSets', part);
  const { limits, basis } = own(engine.valveMargin);
  const value = part.margin;
  if (value === undefined || limits === undefined || basis === undefined) {
    return { ...(!scrap && { ready: { repairs } }), findings: [], because };
  }
  const finding = namedFrom(
    () => ({ limits: 'engine.valveMargin' }),
    () =>
      judge({
        feature: 'margin',
        dimension: 'length',
        value,
        limits,
        basis,
        ...certaintyOf('margin', accuracyOf(shop)),
      }),
  );
  const findings = [finding];
  if (!scrap && finding.verdict === 'undecided' && isOutside(finding)) {
    const again = [...because, ...measureAgain(finding)];
    return { atBest: { repairs }, aside: 'undecided', findings, because: again };
  }
  const thin = isOutside(finding);
  return {
    ...(!scrap && !thin && { ready: { repairs } }),
    findings,
    because: [
      ...because,
      ...measureAgain(finding),
      ...(thin ? [{ kind: 'margin' as const, finding }] : []),
    ],
  };
}

/** That a size is to be measured again, if it is nearer to a limit than it is measured to. */
function measureAgain(finding: Finding<'length'> | undefined): readonly TriageReason[] {
  return finding?.verdict === 'undecided' ? [{ kind: 'measure again', finding }] : [];
}

/** Works out whether any other part can be used: it can, unless a fault makes it scrap, or its size is not known. */
export function readyWhole(section: Section, part: Part, shop: Shop): Readiness<ReadyWhole> {
  const { scrap, look, repairs, because: seen } = seenFaults(section, part);
  const unread = unreadOf(section, part, shop);
  const because = [...seen, ...unread];
  if (scrap) return { findings: [], because };
  return look || unread.length > 0
    ? { atBest: { repairs }, aside: 'undecided', findings: [], because }
    : { ready: { repairs }, findings: [], because };
}

/** What of a piston set, ring set, pair of shells or thrust washer is not known and must be, or cannot be right. */
function unreadOf(section: Section, part: Part, shop: Shop): readonly TriageReason[] {
  switch (section) {
    case 'pistonSets': {
      const { oversize, pistons } = part as PistonSetPart;
      const sizes = pistons?.map(({ name, diameter: size }) => ({ name, size }));
      return [
        ...notKnown('oversize', oversize),
        ...(sizes ? notSized('pistons', sizes) : notKnown('pistons', pistons)),
        ...pistonsMisread(part as PistonSetPart, shop),
      ];
    }
    case 'ringSets':
      return notKnown('oversize', (part as RingSetPart).oversize);
    case 'shells': {
      const { fits, undersize, wall } = part as ShellPart;
      return [
        ...notKnown('bearings it is for', fits),
        ...notKnown('undersize', undersize),
        ...notKnown('walls', wall),
      ];
    }
    case 'thrustWashers':
      return notKnown('thickness', (part as ThrustWasherPart).thickness);
    default:
      return [];
  }
}
