import { guardCrankTrain } from '../motion/internal.js';
import { type Force, type Length, newton, RebuildInputError } from '../quantities/index.js';
import {
  type AssemblyData,
  type Check,
  checkIfGiven,
  type FastenerData,
  type ValveData,
} from '../reading/index.js';
import { springTest } from '../valves/index.js';
import { FASTENERS } from './fastener-setting.js';
import { fitChecks } from './fit-checks.js';
import { type AroundAssembly, assemblySettings } from './settings.js';
import { VALVE_KINDS } from './valve-setting.js';

/** Checks that the figures of a file could be of one engine, each at its own path. What could not be read is passed over. */
export function assemblyChecks(
  path: string,
  data: AssemblyData | undefined,
  { bore, stroke }: Pick<AroundAssembly, 'bore' | 'stroke'>,
): readonly Check[] {
  if (data === undefined) return [];
  const { rodLength, fasteners = {}, valves = {}, compression, timing, fits } = data;
  const around = { ...(bore && { bore }), ...(stroke !== undefined && { stroke }) };
  return [
    ...checkIfGiven(`${path}.rodLength`, rodLength, (length: Length) =>
      stroke === undefined ? undefined : guardCrankTrain({ stroke, rodLength: length }),
    ),
    ...FASTENERS.flatMap((holds) =>
      checkIfGiven(`${path}.fasteners.${holds}`, fasteners[holds], (fastener) =>
        assemblySettings({ fasteners: { [holds]: alone(fastener) } }),
      ),
    ),
    ...VALVE_KINDS.flatMap((kind) =>
      checkIfGiven(`${path}.valves.${kind}.openSpring`, valves[kind], guardSprings),
    ),
    ...checkIfGiven(`${path}.compression`, compression, ({ rules: _, ...spaces }) => {
      // A rod that cannot belong to the stroke is told of once.
      if (!isSoundRod(stroke, rodLength)) return;
      const places = timing?.valves && { timing: { valves: timing.valves } };
      const rod = rodLength === undefined ? {} : { rodLength };
      assemblySettings({ ...rod, ...places, compression: spaces }, around);
    }),
    ...(fits ?? []).flatMap((fit, i) => (fit ? fitChecks(`${path}.fits[${i}]`, fit) : [])),
  ];
}

/** A fastener without the places of its bolts, which are checked as they are read, and of which one may be missing. */
function alone({ bolts: _, ...fastener }: FastenerData): FastenerData {
  return fastener;
}

/** Refuses a spring that is longer or weaker with its valve open, as the test of one does. */
function guardSprings({ closedSpring, openSpring }: ValveData): void {
  if (!closedSpring || !openSpring) return;
  const [closed, open] = [closedSpring, openSpring].map(({ force }) => force.min);
  const areKnown = closed !== undefined && open !== undefined;
  // Without both forces the heights alone can be wrong.
  const [less, more]: readonly Force[] = areKnown ? [closed, open] : [newton(100), newton(200)];
  springTest({
    closed: { height: closedSpring.height, force: less as Force },
    open: { height: openSpring.height, force: more as Force },
  });
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
