import { guardCrankTrain } from '../motion/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { type AssemblyData, type Check, checkIfGiven } from '../reading/index.js';
import { type AroundAssembly, assemblySettings } from './settings.js';

/** Checks that the figures of a file could be of one engine, each at its own path. */
export function assemblyChecks(
  path: string,
  data: AssemblyData | undefined,
  { bore, stroke }: Pick<AroundAssembly, 'bore' | 'stroke'>,
): readonly Check[] {
  if (data === undefined) return [];
  const { rodLength, fasteners = {}, compression, timing, dipper } = data;
  const around = { ...(bore && { bore }), ...(stroke !== undefined && { stroke }) };
  const rod = rodLength === undefined ? {} : { rodLength };
  return [
    ...checkIfGiven(`${path}.rodLength`, rodLength, (length: Length) =>
      stroke === undefined ? undefined : guardCrankTrain({ stroke, rodLength: length }),
    ),
    ...(['mainCaps', 'rodCaps', 'head', 'flywheel'] as const).flatMap((holds) =>
      checkIfGiven(`${path}.fasteners.${holds}`, fasteners[holds], (fastener) =>
        assemblySettings({ fasteners: { [holds]: fastener } }),
      ),
    ),
    // A rod that cannot belong to the stroke is told of once.
    ...(isSoundRod(stroke, rodLength)
      ? [
          ...checkIfGiven(`${path}.compression`, compression, (spaces) =>
            assemblySettings({ ...rod, compression: spaces }, around),
          ),
          ...checkIfGiven(`${path}.timing`, timing, (events) =>
            assemblySettings({ ...rod, timing: events }, around),
          ),
          ...checkIfGiven(`${path}.dipper`, dipper, (trough) =>
            assemblySettings({ ...rod, dipper: trough }, around),
          ),
        ]
      : []),
  ];
}

function isSoundRod(stroke: Length | undefined, rodLength: Length | undefined): boolean {
  if (stroke === undefined || rodLength === undefined) return true;
  try {
    guardCrankTrain({ stroke, rodLength });
    return true;
  } catch (error) {
    if (error instanceof RebuildInputError) return false;
    throw error;
  }
}
