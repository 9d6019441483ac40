import type { WrenchScale } from '../fasteners/internal.js';
import type { BasedLimits, Certainty, Span } from '../judging/index.js';
import { type CrankTrain, type DipperDip, dipperDip } from '../motion/index.js';
import type { Length } from '../quantities/index.js';
import {
  type AssemblyData,
  type DipperData,
  own,
  type RingsData,
  statedBasis,
} from '../reading/index.js';
import { type CompressionSetting, compressionSetting } from './compression-setting.js';
import { FASTENERS, type FastenerSetting, fastenerSetting } from './fastener-setting.js';
import { type FitSetting, fitSetting } from './fit-setting.js';
import { type TimingSetting, timingSetting } from './timing-setting.js';
import { VALVE_KINDS, type ValveSetting, valveSetting } from './valve-setting.js';

/** What an engine is set to as it goes together. */
export interface AssemblySettings {
  /** What the torque wrench is marked in, if that was said. */
  readonly wrench?: WrenchScale;
  /** What is tightened, in the order of the work. */
  readonly fasteners: readonly FastenerSetting[];
  /** What the valves are set to. */
  readonly valves: readonly ValveSetting[];
  /** Rings in their grooves. */
  readonly rings: RingsSetting;
  /** What runs or presses in what. */
  readonly fits: readonly FitSetting[];
  /** How far the cylinders compress, and what their test is judged by. */
  readonly compression?: CompressionSetting;
  /** Where valves and spark come. */
  readonly timing?: TimingSetting;
  /** How the dippers run through their oil; absent unless stroke and rod are known besides. */
  readonly dipper?: DipperDip;
}

/** The room of the rings in their grooves, as far as it is known. */
export interface RingsSetting {
  /** Side clearance of a ring in its groove. */
  readonly sideClearance?: BasedLimits<'length'>;
  /** How far a ring that is pushed right in lies below its land. */
  readonly backClearance?: BasedLimits<'length'>;
}

/** What is known of the engine besides. */
export interface AroundAssembly {
  /** Bore, as the maker made it or as it will be [m]. */
  readonly bore?: Span<Length>;
  /** Stroke of the piston [m]. */
  readonly stroke?: Length;
  /** How well a clearance of two parts was read. */
  readonly certainty?: Certainty<'length'>;
}

/** What the data of the bores tells of that. */
export function aroundBores(
  bores:
    | { readonly standard?: Span<Length> | undefined; readonly stroke?: Length | undefined }
    | undefined,
): Pick<AroundAssembly, 'bore' | 'stroke'> {
  const { standard, stroke } = bores ?? {};
  return { ...(standard && { bore: standard }), ...(stroke !== undefined && { stroke }) };
}

/** What an engine is set to as it goes together, as far as its file tells. */
export function assemblySettings(
  data: AssemblyData,
  { bore, stroke, certainty = {} }: AroundAssembly = {},
): AssemblySettings {
  const { wrench, fasteners = {}, valves = {}, fits = [], rodLength } = data;
  const crank = stroke === undefined || rodLength === undefined ? undefined : { stroke, rodLength };
  const { inletCloses, within } = data.timing?.valves ?? {};
  return {
    ...(wrench && { wrench }),
    fasteners: FASTENERS.flatMap((holds) => {
      const fastener = fasteners[holds];
      return fastener ? [fastenerSetting(holds, fastener)] : [];
    }),
    valves: VALVE_KINDS.flatMap((kind) => {
      const valve = valves[kind];
      return valve ? [valveSetting(kind, valve)] : [];
    }),
    rings: ringsOf(data.rings),
    fits: fits.map((fit) => fitSetting(fit, certainty)),
    ...(data.compression && {
      compression: compressionSetting(data.compression, {
        ...(bore && { bore }),
        ...(stroke !== undefined && { stroke }),
        ...(rodLength !== undefined && { rodLength }),
        ...(inletCloses && { inletCloses }),
        ...(within !== undefined && { within }),
      }),
    }),
    ...(data.timing && { timing: timingSetting(data.timing, crank) }),
    ...(data.dipper && crank && { dipper: dipperOf(data.dipper, crank) }),
  };
}

function ringsOf(rings: RingsData = {}): RingsSetting {
  const [sideClearance, backClearance] = [rings.sideClearance, rings.backClearance].map((stated) =>
    statedBasis(stated),
  );
  return { ...(sideClearance && { sideClearance }), ...(backClearance && { backClearance }) };
}

function dipperOf({ dip, clearance, ...trough }: DipperData, crank: CrankTrain): DipperDip {
  return dipperDip({
    ...crank,
    ...trough,
    ...(dip && { dipLimits: own(dip) }),
    ...(clearance && { clearanceLimits: own(clearance) }),
  });
}
