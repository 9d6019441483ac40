import type { EngineKind } from '../reading/index.js';
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
export const boresOf = ({ bores }: BlockPart, { cylinders }: Engine): readonly BorePlace[] =>
  bores ?? numbered('cylinder', cylinders);

/** The main housings of a block. */
export const mainHousingsOf = (
  { mainHousings }: BlockPart,
  { mains }: Engine,
): readonly HousingPlace[] => mainHousings ?? numbered('main', mains);

/** The rod journals of a crankshaft. */
export const rodJournalsOf = (
  { rodJournals }: CrankshaftPart,
  { cylinders, rodsPerJournal = 1 }: Engine,
): readonly JournalPlace[] => rodJournals ?? numbered('rod journal', cylinders / rodsPerJournal);

/** The main journals of a crankshaft. */
export const mainJournalsOf = (
  { mainJournals }: CrankshaftPart,
  { mains }: Engine,
): readonly JournalPlace[] => mainJournals ?? numbered('main journal', mains);

/** The rods of a set, or the one rod. */
export const rodsOf = ({ rods }: RodsPart, { cylinders }: Engine): readonly HousingPlace[] =>
  rods ?? numbered('rod', cylinders);

/** The pistons of a set. */
export const pistonsOf = (
  { pistons }: PistonSetPart,
  { cylinders }: Engine,
): readonly PistonPlace[] => pistons ?? numbered('piston', cylinders);

const numbered = (what: string, count: number): readonly { readonly name: string }[] =>
  Array.from({ length: count }, (_, i) => ({ name: `${what} ${i + 1}` }));
