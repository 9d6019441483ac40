import type { SizeOrSpan, Span } from '../../judging/index.js';
import { spanOf } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import { largestOf, smallestOf } from '../../quantities/internal.js';
import { type EngineKind, own, type StatedLimits } from '../../reading/index.js';
import type { Part } from '../part.js';
import type { Section } from '../sections.js';
import type { HousingPlace, Parts } from '../shed.js';
import type { NeededTest } from './needed-test.js';
import type { JudgedWhat, NotJudged } from './not-judged-types.js';
import { worstRunout } from './runouts.js';

type Read = SizeOrSpan<Length> | undefined;

/** Something to judge a part by. */
interface ToJudge {
  readonly what: JudgedWhat;
  /** What was read of it. */
  readonly read: readonly Read[];
  /** The limits of the engine section; `known` where there is always a limit. */
  readonly limits: StatedLimits<'length'> | 'known' | undefined;
  /** Whether to say that it was not measured. */
  readonly isAsked: boolean;
}

/**
 * What of a part no verdict is given on, though nothing keeps it from use: what was not measured, what has no limit in
 * the engine section, and what only a test shows. What must be measured before a part is used is a reason to leave it
 * undecided instead.
 */
export function notJudgedOf(
  section: Section,
  part: Part,
  engine: EngineKind,
  tests: readonly Pick<NeededTest, 'test'>[],
): readonly NotJudged[] {
  if (section === 'otherParts') return [{ why: 'not tested' }];
  return toJudge(section, part, engine, tests).flatMap(
    ({ what, read, limits, isAsked }): readonly NotJudged[] => {
      const known = spanOfAll(read);
      if (known === undefined) return isAsked ? [{ why: 'not measured', what }] : [];
      const hasLimit = limits === 'known' || own(limits).limits !== undefined;
      return hasLimit ? [] : [{ why: 'no limit', what, read: known }];
    },
  );
}

function toJudge(
  section: Section,
  part: Part,
  engine: EngineKind,
  tests: readonly Pick<NeededTest, 'test'>[],
): readonly ToJudge[] {
  const { endPlay, guideClearance } = engine;
  /** What is always said where it was not measured. */
  const asked = (what: JudgedWhat, limits: ToJudge['limits'], ...read: readonly Read[]) => ({
    ...{ what, limits, read, isAsked: true },
  });
  /** What a part is undecided without. */
  const needed = (what: JudgedWhat, limits: ToJudge['limits'], read: readonly Read[]) => ({
    ...{ what, limits, read, isAsked: false },
  });
  const thrust = ({ thrustWidth }: { readonly thrustWidth?: Length }): ToJudge => ({
    ...asked('thrust width', endPlay, thrustWidth),
    // Without limits of the end play it serves nothing.
    isAsked: own(endPlay).limits !== undefined,
  });
  switch (section) {
    case 'blocks': {
      const block = part as Parts['blocks'][number];
      return [
        needed('main housings', engine.mainHousing, boresIn(block.mainHousings)),
        thrust(block),
      ];
    }
    case 'crankshafts': {
      const crankshaft = part as Parts['crankshafts'][number];
      const bent = part.faults?.includes('bent') ?? false;
      const runout = asked('runout', 'known', worstRunout(crankshaft)?.runout);
      // A bent one is undecided until it is straight and read.
      return [{ ...runout, isAsked: !bent }, thrust(crankshaft)];
    }
    case 'rods':
      return [needed('big ends', engine.rodHousing, boresIn((part as Parts['rods'][number]).rods))];
    case 'pistonSets': {
      const { pistons = [] } = part as Parts['pistonSets'][number];
      const sizes = pistons.map(({ diameter }) => diameter);
      return [needed('diameters', engine.bores.pistonClearance, sizes)];
    }
    case 'ringSets': {
      const { rings = [] } = part as Parts['ringSets'][number];
      return [
        asked('ring gaps', 'known', ...rings.map(({ gap }) => gap)),
        asked('ring side clearance', 'known'),
      ];
    }
    case 'thrustWashers':
      return [needed('thickness', endPlay, [(part as Parts['thrustWashers'][number]).thickness])];
    case 'heads': {
      const { flatness, guideBore } = part as Parts['heads'][number];
      return [
        asked('face', engine.headFlatness, flatness),
        asked('guides', guideClearance, guideBore),
      ];
    }
    case 'valveSets': {
      const { stem, margin } = part as Parts['valveSets'][number];
      // A test says what margin refacing must leave.
      const isTested = tests.some(({ test }) => test === 'measure its margins');
      return [
        asked('stems', guideClearance, stem),
        { ...asked('margin', engine.valveMargin, margin), isAsked: !isTested },
      ];
    }
    default:
      return [];
  }
}

const boresIn = (places: readonly HousingPlace[] = []): readonly Read[] =>
  places.map(({ housingBore }) => housingBore);

/** The smallest and the largest of what was read; undefined if nothing was. */
function spanOfAll(read: readonly Read[]): Span<Length> | undefined {
  const spans = read.flatMap((each) => (each === undefined ? [] : [spanOf(each)]));
  if (spans.length === 0) return undefined;
  return {
    min: smallestOf(spans.map(({ min }) => min)) as Length,
    max: largestOf(spans.map(({ max }) => max)) as Length,
  };
}
