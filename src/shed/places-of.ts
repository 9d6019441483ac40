import { type EngineKind, numbered } from '../reading/index.js';
import type {
  BlockPart,
  BorePlace,
  CrankshaftPart,
  HousingPlace,
  JournalPlace,
  PistonPlace,
  PistonSetPart,
  RodsPart,
} from './shed.js';

/** The places of parts; those that are not listed get a number for a name, and nothing of them was measured. */
type Engine = Pick<EngineKind, 'cylinders' | 'mains' | 'rodsPerJournal'>;

/** The bores of a block. */
export const boresOf = ({ bores }: BlockPart, engine: Engine): readonly BorePlace[] =>
  bores ?? unlistedIn('bores', engine);

/** The main housings of a block. */
export const mainHousingsOf = (
  { mainHousings }: BlockPart,
  engine: Engine,
): readonly HousingPlace[] => mainHousings ?? unlistedIn('mainHousings', engine);

/** The rod journals of a crankshaft. */
export const rodJournalsOf = (
  { rodJournals }: CrankshaftPart,
  engine: Engine,
): readonly JournalPlace[] => rodJournals ?? unlistedIn('rodJournals', engine);

/** The main journals of a crankshaft. */
export const mainJournalsOf = (
  { mainJournals }: CrankshaftPart,
  engine: Engine,
): readonly JournalPlace[] => mainJournals ?? unlistedIn('mainJournals', engine);

/** The rods of a set, or the one rod. */
export const rodsOf = ({ rods }: RodsPart, engine: Engine): readonly HousingPlace[] =>
  rods ?? unlistedIn('rods', engine);

/** The pistons of a set. */
export const pistonsOf = ({ pistons }: PistonSetPart, engine: Engine): readonly PistonPlace[] =>
  pistons ?? unlistedIn('pistons', engine);

/** What a place is called that is not listed, by the field it would be listed in. */
const CALLED = {
  bores: 'cylinder',
  mainHousings: 'main',
  rodJournals: 'rod journal',
  mainJournals: 'main journal',
  rods: 'rod',
  pistons: 'piston',
} as const;

/** Whether places that are not listed there have names all the same. */
export const isNumbered = (list: string): list is keyof typeof CALLED =>
  Object.hasOwn(CALLED, list);

/** The places of a part that are not listed: as many as the engine has, by their numbers. */
export function unlistedIn(
  list: keyof typeof CALLED,
  { cylinders, mains, rodsPerJournal = 1 }: Engine,
): readonly { readonly name: string }[] {
  const counts = {
    bores: cylinders,
    mainHousings: mains,
    rodJournals: cylinders / rodsPerJournal,
    mainJournals: mains,
    rods: cylinders,
    pistons: cylinders,
  };
  return numbered(CALLED[list], counts[list]);
}
