import { aroundBores, assemblyChecks } from '../assembly/index.js';
import { oilClearanceSpan } from '../bearings/index.js';
import { pistonClearanceSpan, ringFilingNeeded } from '../cylinders/index.js';
import { spanOf } from '../judging/internal.js';
import { boreShape, journalShape } from '../measuring/index.js';
import {
  accuracyOf,
  areSwapped,
  type Check,
  type FileProblem,
  type Gaps,
  guardClearanceLimits,
  guardEndPlayLimits,
  guardHousing,
  guardJournal,
  guardMinimum,
  guardRingGapLimits,
  guardWall,
  type JournalKind,
  placeIn,
  problemsFrom,
  refuseSwapped,
  type ShellPairs,
} from '../reading/index.js';
import { journalsOf } from './inspect-bearings.js';
import { boringOf } from './inspect-bores.js';
import { guardOilSheet } from './inspect-oil.js';
import type { BearingSheet, CylinderSheet, Sheet } from './sheet.js';

/** The part of an inspection sheet that could be read: its valid sections, and lists of the valid items. */
export type SoundSheet = {
  readonly [K in keyof Sheet]?: Sheet[K] extends readonly (infer Item)[] | undefined
    ? Gaps<Item>
    : Sheet[K];
};

/**
 * Finds readings that are each plausible but cannot all be true, each at its own path. Sections
 * that could not be read are skipped.
 */
export function contradictions(sheet: SoundSheet): readonly FileProblem[] {
  return problemsFrom([
    ...bearingChecks(sheet, 'rods'),
    ...bearingChecks(sheet, 'mains'),
    ...endPlayChecks(sheet),
    ...(sheet.cylinders ?? []).flatMap((cylinder, i) =>
      cylinder === undefined ? [] : cylinderChecks(sheet, cylinder, i),
    ),
    ...boringChecks(sheet),
    ...oilChecks(sheet),
    ...assemblyChecks('assembly', sheet.assembly, aroundBores(sheet.bores)),
  ]);
}

function bearingChecks(sheet: SoundSheet, kind: 'rods' | 'mains'): readonly Check[] {
  const field = kind === 'rods' ? 'rodJournals' : 'mainJournals';
  const { crankshaft = {}, [kind]: bearings, shells = [] } = sheet;
  const journals = crankshaft[field];
  if (!bearings) return [];
  if (!journals) {
    return [{ path: `crankshaft.${field}`, run: () => journalsOf({ crankshaft }, kind) }];
  }
  const ofKind = shells.filter((shell) => shell?.fits === kind);
  const housings = bearings.flatMap((bearing) => bearing?.housingBore ?? []);
  const limits = `crankshaft.${field}.oilClearance`;
  const wallCheck = (path: string, shell: ShellPairs): Check => ({
    path: `${path}.wall`,
    run: () => guardWall(shell, housings, journals),
  });
  const wrongWalls = ofKind.filter(
    (shell) => shell && problemsFrom([wallCheck('', shell)]).length > 0,
  );
  return [
    ...bearings.flatMap((bearing, i) =>
      bearing ? journalChecks(`${kind}[${i}]`, bearing, journals, ofKind, wrongWalls) : [],
    ),
    ...shells.flatMap((shell, i): readonly Check[] =>
      shell?.fits === kind ? [wallCheck(`shells[${i}]`, shell)] : [],
    ),
    { path: limits, run: () => guardClearanceLimits(journals) },
    { path: `crankshaft.${field}`, run: () => guardMinimum(journals) },
  ];
}

function journalChecks(
  path: string,
  { name, journal, housingBore, fittedShells }: BearingSheet,
  journals: JournalKind,
  shells: Gaps<ShellPairs>,
  wrongWalls: Gaps<ShellPairs>,
): readonly Check[] {
  const shape = journalShape(journal.readings);
  const measured = { min: shape.smallest, max: shape.largest };
  const fitted = shells.find((shell) => shell?.name === fittedShells);
  const ofJournal: Check = {
    path: (parameter) => placeIn(`${path}.journal`, parameter, journal),
    run: () => guardJournal({ name, ...shape, readings: journal.readings }, journals),
  };
  if (housingBore === undefined) return [ofJournal];
  if (areSwapped(spanOf(housingBore), measured, journals)) {
    return [{ path, run: () => refuseSwapped(spanOf(housingBore), measured) }];
  }
  const alone: readonly Check[] = [
    ofJournal,
    { path: `${path}.housingBore`, run: () => guardHousing(spanOf(housingBore), measured) },
  ];
  // A size that is wrong by itself is reported only once.
  const together = () =>
    fitted &&
    !wrongWalls.includes(fitted) &&
    problemsFrom(alone).length === 0 &&
    oilClearanceSpan({ housingBore, shellWall: fitted.wall, journal: measured });
  return [...alone, { path: `${path}.fittedShells`, run: together }];
}

function endPlayChecks({ crankshaft }: SoundSheet): readonly Check[] {
  const play = crankshaft?.endPlay;
  if (!play) return [];
  return [{ path: 'crankshaft.endPlay.limits', run: () => guardEndPlayLimits(play.limits) }];
}

function cylinderChecks(
  { cylinderLimits: allowed }: SoundSheet,
  { bore, piston, rings }: CylinderSheet,
  i: number,
): readonly Check[] {
  const { readings, ringTravel } = bore;
  const { smallest: min, largest: max } = boreShape(readings, ringTravel ? { ringTravel } : {});
  return [
    {
      path: `cylinders[${i}].piston`,
      run: () => piston !== undefined && pistonClearanceSpan({ bore: { min, max }, piston }),
    },
    ...(rings ?? []).map(({ gap, measuredIn }, j) => ({
      path: `cylinders[${i}].rings[${j}]`,
      run: () => ringFilingNeeded({ gap, measuredIn, smallestBore: min }),
    })),
    // The limits are the same for all cylinders, so the first one is enough to check them.
    ...(i === 0
      ? [
          {
            path: 'cylinderLimits.ringGap',
            run: () => guardRingGapLimits(min, allowed?.ringGap),
          },
        ]
      : []),
  ];
}

function boringChecks({ bores, cylinders, cylinderLimits, units }: SoundSheet): readonly Check[] {
  const sound = cylinders?.filter((cylinder) => cylinder !== undefined) ?? [];
  if (!bores || !units || sound.length < (cylinders?.length ?? 0)) return [];
  const run = () =>
    boringOf(
      { bores, units, cylinders: sound, ...(cylinderLimits && { cylinderLimits }) },
      accuracyOf({}),
    );
  return [{ path: (parameter) => parameter.replace(/^sheet\./, ''), run }];
}

function oilChecks({ oil }: SoundSheet): readonly Check[] {
  if (!oil) return [];
  return [{ path: (parameter) => `oil.${parameter}`, run: () => guardOilSheet(oil) }];
}
