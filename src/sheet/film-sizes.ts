import { mostApart } from '../bearings/internal.js';
import type { Finding, Span } from '../judging/index.js';
import { NANOMETRE } from '../judging/internal.js';
import { type Length, thou } from '../quantities/index.js';
import type { BearingGroupReport } from './inspect-bearings.js';
import type { FilmSheet } from './oil-sheet.js';
import { finishedJournal } from './shells-for.js';

/** A bearing of the sheet that was measured: as it was found, or as it will be with the shells it gets. */
export interface MeasuredBearing {
  /** Its name on the bench. */
  readonly name: string;
  /** As it was found, or as it will be. */
  readonly as: 'found' | 'planned';
  /** Name of its shells. */
  readonly shells: string;
  /** Its journal [m]. */
  readonly journal: Span<Length>;
  /** Its diametral clearance, with what it is not known to [m]. */
  readonly clearance: Span<Length>;
}

/** The clearance that a film is judged at, and how it stands to what was measured. */
export interface FilmSizes {
  /**
   * Which bearing it is: the one found, or the one planned, whichever has the journal typed in; or only what was
   * typed in, because no such bearing was measured.
   */
  readonly as: MeasuredBearing['as'] | 'typed';
  /** Name of the shells it was measured with. */
  readonly shells?: string;
  /** The clearance it is judged at, at the worse end [m]. */
  readonly clearance: Span<Length>;
  /** The clearance typed in [m]. */
  readonly typed: Length;
  /** The clearance that the bearing was found with, where the one judged is another [m]. */
  readonly found?: Span<Length>;
}

/** Every bearing of a sheet with measured shells, but for those whose journal was misread. */
export function measuredBearings(
  groups: readonly (BearingGroupReport | undefined)[],
): readonly MeasuredBearing[] {
  return groups.flatMap((group) =>
    (group?.bearings ?? []).flatMap(
      ({ name, shape, fitted, shells, readAgain }): MeasuredBearing[] => {
        if (readAgain) return [];
        const journal = { min: shape.smallest, max: shape.largest };
        return [
          ...(fitted
            ? [
                {
                  name,
                  as: 'found',
                  shells: fitted.shells,
                  journal,
                  clearance: atWorst(fitted.clearance, fitted.explanation.finding),
                } as const,
              ]
            : []),
          ...(shells && group && group.plan.outcome !== 'none'
            ? [
                {
                  name,
                  as: 'planned',
                  shells: shells.shell.name,
                  journal: finishedJournal(group.plan, name, shape),
                  clearance: atWorst(shells.clearance, shells.finding),
                } as const,
              ]
            : []),
        ];
      },
    ),
  );
}

/** A clearance with what it is not known to, either way. */
const atWorst = (
  { min, max }: Span<Length>,
  { uncertainty = 0 as Length }: Finding<'length'>,
): Span<Length> => ({ min: (min - uncertainty) as Length, max: (max + uncertainty) as Length });

/**
 * The clearance to judge a film at: that of the measured bearing whose journal was typed in, to 2.5 thou; else
 * the one typed in.
 */
export function filmSizes(
  { name, journal, clearance: typed }: FilmSheet,
  measured: readonly MeasuredBearing[],
): FilmSizes {
  const same = measured.filter((bearing) => bearing.name === name);
  const found = same.find(({ as }) => as === 'found')?.clearance;
  const meant = same.find(
    (bearing) => awayFrom(bearing.journal, journal) <= thou(2.5) && turns(bearing, journal),
  );
  if (meant === undefined) {
    const differs = found && awayFrom(found, typed) > NANOMETRE;
    return {
      as: 'typed',
      clearance: { min: typed, max: typed },
      typed,
      ...(differs && { found }),
    };
  }
  const { as, shells, clearance } = meant;
  return { as, shells, clearance, typed, ...(as === 'planned' && found && { found }) };
}

/** Whether the clearance typed in is one that was measured. */
export const agrees = ({ clearance, typed }: FilmSizes): boolean =>
  awayFrom(clearance, typed) <= NANOMETRE;

const awayFrom = ({ min, max }: Span<Length>, size: Length): number =>
  Math.max(min - size, size - max, 0);

/** Whether a film can be computed in it: it has play at both ends, and was one bearing. */
const turns = ({ clearance }: MeasuredBearing, journal: Length): boolean =>
  clearance.min >= Math.max(1e-7, journal * 1e-5) && clearance.max <= mostApart(journal);
