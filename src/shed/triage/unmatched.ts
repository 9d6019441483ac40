import { clearanceLeft, shellWall } from '../../bearings/internal.js';
import { guardSpan, spanOf } from '../../judging/internal.js';
import {
  gapOf,
  type Known,
  marginOf,
  oilLimits,
  own,
  pistonsInBores,
  ringsFit,
  sameStep,
} from '../../reading/index.js';
import { groupsIn } from '../groups.js';
import type { Part } from '../part.js';
import type { Section } from '../sections.js';
import type { Parts, Shed } from '../shed.js';
import { matesMissing } from './mates-missing.js';
import { ofPart } from './of-part.js';
import { readyBlock } from './ready-block.js';
import { readyCrankshaft } from './ready-crankshaft.js';
import { readyRods } from './ready-others.js';
import { pistonSizes } from './ready-pistons.js';
import type { Readiness } from './ways.js';

/** The section without a part that fits a given part, if there is one. */
export type Unmatched = (section: Section, part: Part) => Section | undefined;

/**
 * Finds parts that no other part fits, in the shed or to buy, whatever is machined. An empty
 * section does not count: its parts are still to be found.
 */
export function unmatchedIn(shed: Shed): Unmatched {
  const { engine } = shed;
  const all = <S extends Section>(section: S) =>
    [...(shed[section] ?? []), ...(shed.toBuy?.[section] ?? [])] as readonly Parts[S][number][];
  const ready = <P extends Part, R>(parts: readonly P[], get: (part: P) => R | undefined) =>
    parts.flatMap((part) => ofPart(shed, part, () => get(part)) ?? []);
  // A part that is kept aside or undecided may still be put right, so its mates are no spares.
  const best = <R>({ ready: now, atBest }: Readiness<R>) => now ?? atBest;
  const blocks = ready(all('blocks'), (part) => best(readyBlock(part, shed)));
  const shafts = ready(all('crankshafts'), (part) => best(readyCrankshaft(part, shed)));
  const bigEnds = ready(all('rods'), (part) => best(readyRods(part, shed))?.housings).flat();
  for (const part of all('shells')) {
    if (part.wall === undefined) continue;
    const { wall } = part;
    ofPart(shed, part, () => guardSpan('part.wall', wall, shellWall));
  }

  const groupsOf = groupsIn(shed);
  const mates = matesMissing(shed);

  const fitsShaft = (
    { fits, undersize, wall }: Parts['shells'][number],
    housings: readonly Known[],
  ): boolean => {
    // What is not known of shells may be what fits.
    if (fits === undefined || undersize === undefined || wall === undefined) return true;
    const journals = fits === 'rods' ? engine.rodJournals : engine.mainJournals;
    const ways = shafts.flatMap((shaft) => shaft[fits]);
    return ways.some(
      ({ step, sizes }) =>
        sameStep(step, undersize) &&
        sizes.some(
          (size) =>
            size === undefined ||
            housings.length === 0 ||
            housings.some((housing) => {
              if (housing === undefined) return true;
              const clearance = clearanceLeft(housing, spanOf(wall), size);
              return journals && marginOf(clearance, oilLimits(journals, size.max)) !== undefined;
            }),
        ),
    );
  };

  /** The section of the mate, unless it is empty or has a part that fits. */
  const withMate = (_section: Section, mate: Section, has: () => boolean) =>
    all(mate).length === 0 || has() ? undefined : mate;

  return (section, part) => {
    const castings = section === 'blocks' ? 'crankshafts' : 'blocks';
    const groups = groupsOf(section, part);
    const alone = withMate(section, castings, () =>
      all(castings).some((other) => sharesGroup(groups, groupsOf(castings, other))),
    );
    if (alone) return alone;
    const mate = mates(part);
    if (mate) return mate;
    switch (section) {
      case 'shells': {
        const shell = part as Parts['shells'][number];
        const housings =
          shell.fits === 'rods' ? bigEnds : blocks.flatMap((block) => block.housings);
        return withMate(section, 'crankshafts', () => fitsShaft(shell, housings));
      }
      case 'rods': {
        const housings: readonly Known[] =
          readyRods(part as Parts['rods'][number], shed).ready?.housings ?? [];
        const shells = all('shells').filter(({ fits }) => fits !== 'mains');
        const served = () =>
          housings.every((housing) => shells.some((shell) => fitsShaft(shell, [housing])));
        return shells.length === 0 || all('crankshafts').length === 0 || served()
          ? undefined
          : 'shells';
      }
      case 'pistonSets': {
        const set = part as Parts['pistonSets'][number];
        const { oversize } = set;
        const sizes = pistonSizes(set, shed);
        const { limits } = own(engine.bores.pistonClearance);
        return withMate(section, 'blocks', () =>
          blocks.some(({ bores }) =>
            bores.some(
              (way) =>
                (oversize === undefined || sameStep(way.step, oversize)) &&
                pistonsInBores(way.sizes, sizes, limits, -Infinity) !== undefined,
            ),
          ),
        );
      }
      case 'ringSets': {
        const { oversize, rings = [] } = part as Parts['ringSets'][number];
        return withMate(section, 'blocks', () =>
          blocks.some(({ bores }) =>
            bores.some(
              (way) =>
                (oversize === undefined || sameStep(way.step, oversize)) &&
                ringsFit(rings, way.sizes, engine),
            ),
          ),
        );
      }
      case 'valveSets': {
        const { stem } = part as Parts['valveSets'][number];
        const { limits } = own(engine.guideClearance);
        return withMate(section, 'heads', () =>
          all('heads').some(
            ({ guideBore }) =>
              limits === undefined ||
              stem === undefined ||
              guideBore === undefined ||
              marginOf(gapOf(spanOf(guideBore), spanOf(stem)), limits) !== undefined,
          ),
        );
      }
      default:
        return undefined;
    }
  };
}

function sharesGroup(
  one: readonly string[] | undefined,
  other: readonly string[] | undefined,
): boolean {
  return one === undefined || other === undefined || one.some((group) => other.includes(group));
}
