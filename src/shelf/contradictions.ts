import { explainClearance } from '../bearings/explain.js';
import { endPlay } from '../crankshaft/end-play.js';
import { grindPlan } from '../crankshaft/grind-plan.js';
import { undersizeSteps } from '../crankshaft/undersize.js';
import { pistonClearanceSpan } from '../cylinders/piston-clearance.js';
import { ringFilingNeeded } from '../cylinders/ring-gap.js';
import { showLength } from '../judging/guards.js';
import type { SizeOrSpan, Span } from '../judging/limits.js';
import { boreShape } from '../measuring/bore.js';
import { journalShape } from '../measuring/journal.js';
import type { Length } from '../quantities/dimensions.js';
import { RebuildInputError } from '../quantities/error.js';
import { journalsOf } from './inspect-bearings.js';
import { inspectOil } from './inspect-oil.js';
import { own } from './own.js';
import type { BearingSheet, CylinderSheet, JournalSheet, Sheet, ShellSheet } from './sheet.js';
import { problemAt, type SheetProblem } from './sheet-error.js';

/** Something to try, and where in the sheet it stands. */
interface Check {
  readonly path: string | ((parameter: string) => string);
  readonly run: () => unknown;
}

/**
 * Readings that are each sound but cannot all be true: every one is found, at its own
 * place. Sections that could not be read are passed over.
 */
export function contradictions(sheet: Partial<Sheet>): readonly SheetProblem[] {
  const checks = [
    ...bearingChecks(sheet, 'rods'),
    ...bearingChecks(sheet, 'mains'),
    ...endPlayChecks(sheet),
    ...(sheet.cylinders ?? []).flatMap((cylinder, i) => cylinderChecks(sheet, cylinder, i)),
    ...oilChecks(sheet),
  ];
  return checks.flatMap(({ path, run }) => {
    try {
      run();
      return [];
    } catch (error) {
      if (!(error instanceof RebuildInputError)) throw error;
      return [problemAt(typeof path === 'string' ? path : path(error.parameter), error)];
    }
  });
}

function bearingChecks(sheet: Partial<Sheet>, kind: 'rods' | 'mains'): readonly Check[] {
  const field = kind === 'rods' ? 'rodJournals' : 'mainJournals';
  const journals = sheet.crankshaft?.[field];
  const bearings = sheet[kind];
  if (!bearings) return [];
  if (!journals) return [{ path: `crankshaft.${field}`, run: () => journalsOf(sheet, kind) }];
  const shells = (sheet.shells ?? []).map((shell, i) => ({ shell, path: `shells[${i}].wall` }));
  const limits = `crankshaft.${field}.oilClearance`;
  return [
    ...bearings.flatMap((bearing, i) => journalChecks(`${kind}[${i}]`, bearing, journals)),
    ...shells
      .filter(({ shell }) => shell.fits === kind)
      .map(({ shell, path }) => ({ path, run: () => guardWall(shell, bearings, journals) })),
    { path: limits, run: () => guardClearanceLimits(journals) },
    { path: `crankshaft.${field}`, run: () => grindPlan(planOf(journals, unworn(journals))) },
  ];
}

function journalChecks(
  path: string,
  bearing: BearingSheet,
  journals: JournalSheet,
): readonly Check[] {
  const shape = journalShape(bearing.journal.readings);
  const { smallest, largest, outOfRound, taper } = shape;
  const journal = { name: bearing.name, smallest, largest, outOfRound, taper };
  return [
    {
      path: `${path}.journal`,
      run: () => grindPlan(planOf({ standard: journals.standard }, journal)),
    },
    {
      path: `${path}.housingBore`,
      run: () => guardHousing(spanOf(bearing.housingBore), { min: smallest, max: largest }),
    },
  ];
}

type GrindRequest = Parameters<typeof grindPlan>[0];

/** The least that a plan of one journal is refused by. */
function planOf(
  { standard, minimum }: Pick<JournalSheet, 'standard' | 'minimum'>,
  journal: GrindRequest['journals'][number],
): GrindRequest {
  const steps = undersizeSteps('inch');
  return { journals: [journal], standard, steps, ...(minimum !== undefined && { minimum }) };
}

/** A journal that nothing is wrong with, so that only the maker's sizes can be. */
function unworn({ standard }: JournalSheet): GrindRequest['journals'][number] {
  const size = standard.max;
  const none = 0 as Length;
  return { name: 'standard', smallest: size, largest: size, outOfRound: none, taper: none };
}

/** A housing holds the journal and two walls: thin ones, or up to a fifth of the journal each. */
function guardHousing(housing: Span<Length>, journal: Span<Length>): void {
  const [least, most] = [journal.max + 2 * 0.0002, journal.min * 1.4];
  if (housing.min > least && housing.max < most) return;
  throw implausible(housing, `${showLength(least)} … ${showLength(most)} round that journal`);
}

/** The wall fills what some housing of its kind and the journal leave, to a few undersizes. */
function guardWall(
  shell: ShellSheet,
  bearings: readonly BearingSheet[],
  { standard }: JournalSheet,
): void {
  const { min, max } = spanOf(shell.wall);
  const walls = bearings.map(
    ({ housingBore }) => (spanOf(housingBore).max - standard.max + shell.undersize) / 2,
  );
  const near = (wall: number) => Math.abs(min - wall) < 0.0015 && Math.abs(max - wall) < 0.0015;
  if (walls.some(near)) return;
  const expected = walls.map(showLength).join(' or ');
  throw implausible({ min, max }, `near ${expected}, which the housings leave for it`);
}

function implausible({ min, max }: Span<Length>, expected: string): RebuildInputError {
  return new RebuildInputError({
    parameter: 'size',
    value: { min, max },
    shown: min === max ? showLength(min) : `${showLength(min)} … ${showLength(max)}`,
    expected,
    hint: 'Check the digits and the unit.',
  });
}

function guardClearanceLimits({ standard, oilClearance }: JournalSheet): void {
  const clearance = 0 as Length;
  explainClearance({ clearance, journal: standard.max, ...own(oilClearance) });
}

function endPlayChecks({ crankshaft }: Partial<Sheet>): readonly Check[] {
  const play = crankshaft?.endPlay;
  if (!play) return [];
  const run = () => endPlay(play.readings, own(play.limits));
  return [{ path: 'crankshaft.endPlay.limits', run }];
}

function cylinderChecks(
  { cylinderLimits: allowed }: Partial<Sheet>,
  { bore, piston, rings }: CylinderSheet,
  i: number,
): readonly Check[] {
  const { readings, ringTravel } = bore;
  const { smallest: min, largest: max } = boreShape(readings, ringTravel ? { ringTravel } : {});
  const size = { gap: 0 as Length, measuredIn: min };
  return [
    {
      path: `cylinders[${i}].piston`,
      run: () => piston !== undefined && pistonClearanceSpan({ bore: { min, max }, piston }),
    },
    ...(rings ?? []).map(({ gap, measuredIn }, j) => ({
      path: `cylinders[${i}].rings[${j}]`,
      run: () => ringFilingNeeded({ gap, measuredIn, smallestBore: min }),
    })),
    // The limits are the same for all; one cylinder is enough to refuse them by.
    ...(i === 0
      ? [
          {
            path: 'cylinderLimits.ringGap',
            run: () => ringFilingNeeded({ ...size, ...own(allowed?.ringGap) }),
          },
        ]
      : []),
  ];
}

function oilChecks({ oil }: Partial<Sheet>): readonly Check[] {
  if (!oil) return [];
  const path = (parameter: string) =>
    parameter === 'sample' ? 'oil.sample.viscosity' : `oil.${parameter}`;
  return [{ path, run: () => inspectOil(oil) }];
}

function spanOf(size: SizeOrSpan<Length>): Span<Length> {
  return typeof size === 'number' ? { min: size, max: size } : size;
}
