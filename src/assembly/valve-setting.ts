import type { BasedLimits, Span } from '../judging/index.js';
import { meanExpansion } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import {
  type SpringData,
  statedBasis,
  type TrainData,
  type TrainPieceData,
  type TrainSideData,
  type ValveData,
} from '../reading/index.js';
import { type LashGrowth, lashGrowth } from '../valves/index.js';

/** The kinds of valve, in the order they are told. */
export const VALVE_KINDS = ['inlet', 'exhaust'] as const;

/** What valves of one kind are set to. */
export interface ValveSetting {
  /** Which. */
  readonly valve: 'inlet' | 'exhaust';
  /** The maker's lash; absent if it is not known. */
  readonly lash?: BasedLimits<'length'>;
  /** Whether that is set cold or hot; absent if it is not known. */
  readonly set?: 'cold' | 'hot';
  /** What to set cold for the least lash that is wanted hot, where the maker tells a hot one. */
  readonly cold?: ColdLash;
  /** How it is set. */
  readonly setBy?: 'screw' | 'shims' | 'stem';
  /** What its spring should press with, at each height that is known. */
  readonly springs: readonly SpringSetting[];
}

/** A lash to set cold, computed from a hot one. */
export interface ColdLash {
  /** What to set; the most is the safe end, as a valve without lash burns. Where that is nothing or less, it is set hot only [m]. */
  readonly lash: Span<Length>;
  /** Pieces that run outside the temperatures that their coefficients are means over. */
  readonly outsideRange: LashGrowth['outsideRange'];
}

/** What a spring should press with at one height. */
export interface SpringSetting {
  /** Whether the valve is closed or open at it. */
  readonly at: 'closed' | 'open';
  /** The height [m]. */
  readonly height: Length;
  /** The force. */
  readonly force: BasedLimits<'force'>;
}

/** What valves of one kind are set to, as far as the file tells. */
export function valveSetting(valve: 'inlet' | 'exhaust', data: ValveData): ValveSetting {
  const { set, setBy, train } = data;
  const lash = statedBasis(data.lash);
  // Of the most alone, nobody knows the least that the valve needs.
  const hot = set === 'hot' ? lash?.limits.min : undefined;
  return {
    valve,
    ...(lash && { lash }),
    ...(set && { set }),
    ...(hot !== undefined && train && { cold: coldLash(train, hot) }),
    ...(setBy && { setBy }),
    springs: [...springAt('closed', data.closedSpring), ...springAt('open', data.openSpring)],
  };
}

function coldLash({ carrier, train, rocker }: TrainData, hotLash: Length): ColdLash {
  const { coldLash: lash, outsideRange } = lashGrowth({
    ...sideOf({ carrier, train }),
    ...(rocker && { rocker: { ...sideOf(rocker), ratio: rocker.ratio } }),
    hotLash,
  });
  return { lash: lash as Span<Length>, outsideRange };
}

const sideOf = ({ carrier, train }: TrainSideData) => ({
  carrier: carrier.map(pieceOf),
  train: train.map(pieceOf),
});

const pieceOf = ({ length, material, temperature }: TrainPieceData) => ({
  length,
  expansion: meanExpansion(material),
  temperature,
});

function springAt(at: 'closed' | 'open', data: SpringData | undefined): readonly SpringSetting[] {
  const force = statedBasis(data?.force);
  return data && force ? [{ at, height: data.height, force }] : [];
}
