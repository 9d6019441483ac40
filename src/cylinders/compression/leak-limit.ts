import type { BasedLimits } from '../../judging/index.js';
import type { GaugePressure, Length, Ratio } from '../../quantities/index.js';

/** The tester of AC 43.13-1B, 8-14: its pressure, the orifices, and the bore from which the wider one is used. */
const TESTER = {
  /** 80 psi. */
  supply: 551_580.583_453_893,
  /** 2 psi: as near as a regulator is set. */
  near: 13_789.514_586_347,
  /** 0.040 in. */
  orifice: 0.001_016,
  /** 0.060 in. */
  wideOrifice: 0.001_524,
  /** 5.00 in. */
  wideFrom: 0.127,
} as const;

const CIRCULAR: BasedLimits<'ratio'> = {
  limits: { max: 0.25 as Ratio },
  limitsOf: 'service',
  basis: {
    kind: 'published',
    source:
      'AC 43.13-1B, 8-14, for aircraft engines without a figure of their maker: a loss of more than 25 % of 80 psi is cause to suspect the cylinder, to be read again after a run',
    forAnotherEngine: true,
  },
};

/** The limit of that circular, if the readings are of its tester. */
export function leakageByCircular(readings: {
  readonly supply: GaugePressure;
  readonly orifice?: Length;
  readonly bore?: Length;
}): BasedLimits<'ratio'> | undefined {
  const { supply, orifice, bore = 0 } = readings;
  if (orifice === undefined || Math.abs(supply - TESTER.supply) > TESTER.near) return undefined;
  const right = bore >= TESTER.wideFrom ? TESTER.wideOrifice : TESTER.orifice;
  return Math.abs(orifice - right) <= 0.02 * right ? CIRCULAR : undefined;
}
