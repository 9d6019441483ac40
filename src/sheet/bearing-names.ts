import type { Names } from '../judging/internal.js';
import type { Sheet } from './sheet.js';

type Kind = 'rods' | 'mains';

/** Where the sheet keeps the maker's data on the journals of one kind. */
export const makerOf = (kind: Kind): string =>
  `sheet.crankshaft.${kind === 'rods' ? 'rodJournals' : 'mainJournals'}`;

/** Where the sheet keeps a journal. */
export const journalOf = (kind: Kind, i: number): string => `sheet.${kind}[${i}].journal`;

/** Where on the sheet each input of a bearing's calculations comes from. */
export function bearingNames(
  { shells = [], ...sheet }: Pick<Sheet, Kind | 'shells'>,
  kind: Kind,
  i: number,
): Names {
  const maker = makerOf(kind);
  const limits = `${maker}.oilClearance`;
  const ofKind = [...shells.entries()].filter(([, { fits }]) => fits === kind);
  const { fittedShells } = sheet[kind]?.[i] ?? {};
  const [fitted] = ofKind.find(([, { name }]) => name === fittedShells) ?? [];
  return {
    readings: `${journalOf(kind, i)}.readings`,
    housingBore: `sheet.${kind}[${i}].housingBore`,
    // The readings give the clearance; usually the housing is the one that is wrong.
    clearance: `sheet.${kind}[${i}].housingBore`,
    shellWall: `sheet.shells[${fitted}].wall`,
    ...Object.fromEntries(ofKind.map(([at], n) => [`shells[${n}]`, `sheet.shells[${at}]`])),
    steps: `${maker}.steps`,
    'shape.limits': `${maker}.shape`,
    'search.limits': limits,
    'question.limits': limits,
    limits,
  };
}
