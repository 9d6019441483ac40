import type { Names } from '../judging/internal.js';
import type { Sheet } from './sheet.js';

type Kind = 'rods' | 'mains';

/** What the sheet calls all that is said of the journals of one kind. */
export const makerOf = (kind: Kind): string =>
  `sheet.crankshaft.${kind === 'rods' ? 'rodJournals' : 'mainJournals'}`;

/** What the sheet calls a journal. */
export const journalOf = (kind: Kind, i: number): string => `sheet.${kind}[${i}].journal`;

/** What of a bearing comes from where on the sheet. */
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
    // What was measured leaves it: most often it is the housing that is wrong.
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
