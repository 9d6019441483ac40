import type { WrenchScale } from '../fasteners/index.js';
import type { Certainty } from '../judging/index.js';
import type { AssemblyData } from '../reading/index.js';
import { type FastenerSetting, fastenerSetting } from './fastener-setting.js';
import { type FitSetting, fitSetting } from './fit-setting.js';
import { type ValveSetting, valveSetting } from './valve-setting.js';

/** What an engine is set to as it goes together. */
export interface AssemblySettings {
  /** What the torque wrench is marked in, if that was said. */
  readonly wrench?: WrenchScale;
  /** What is tightened, in the order of the work. */
  readonly fasteners: readonly FastenerSetting[];
  /** What the valves are set to. */
  readonly valves: readonly ValveSetting[];
  /** What runs or presses in what. */
  readonly fits: readonly FitSetting[];
}

const FASTENERS = ['mainCaps', 'rodCaps', 'head', 'flywheel'] as const;

/** What an engine is set to as it goes together, as far as its file tells. `certainty` is that of a clearance of two parts. */
export function assemblySettings(
  { wrench, fasteners = {}, valves = {}, fits = [] }: AssemblyData,
  certainty: Certainty<'length'> = {},
): AssemblySettings {
  return {
    ...(wrench && { wrench }),
    fasteners: FASTENERS.flatMap((holds) => {
      const data = fasteners[holds];
      return data ? [fastenerSetting(holds, data)] : [];
    }),
    valves: (['inlet', 'exhaust'] as const).flatMap((valve) => {
      const data = valves[valve];
      return data ? [valveSetting(valve, data)] : [];
    }),
    fits: fits.map((fit) => fitSetting(fit, certainty)),
  };
}
