import type { BasedLimits } from '../../judging/index.js';
import {
  type GaugePressure,
  inch,
  type Length,
  psi,
  psiGauge,
  type Ratio,
} from '../../quantities/index.js';

// The tester of AC 43.13-1B, 8-14: its air, the orifices, and the bore from which the wider one is used.
const FED = /* @__PURE__ */ psiGauge(80);
/** As near as a regulator is set. */
const NEAR = /* @__PURE__ */ psi(2);
const ORIFICE = /* @__PURE__ */ inch(0.04);
const WIDE_ORIFICE = /* @__PURE__ */ inch(0.06);
const WIDE_FROM = /* @__PURE__ */ inch(5);

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
  if (orifice === undefined || Math.abs(supply - FED) > NEAR) return undefined;
  const right = bore >= WIDE_FROM ? WIDE_ORIFICE : ORIFICE;
  return Math.abs(orifice - right) <= 0.02 * right ? CIRCULAR : undefined;
}
