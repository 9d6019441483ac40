import { type CrankTrain, positionAt } from './piston-motion.js';

/** All that the trace is drawn from, nothing left open. */
export interface GasLaw extends CrankTrain {
  readonly compressionRatio: number;
  readonly intakePressure: number;
  readonly exhaustPressure: number;
  readonly compressionExponent: number;
  readonly expansionExponent: number;
  readonly ignition: number;
  readonly peakAngle: number;
  readonly peakPressure: number;
  readonly exhaustOpens: number;
  readonly valveOverlap: number;
}

/** Pressure in the cylinder, absolute, at an angle of the crank from 0 to 720 degrees past firing top centre. */
export function pressureAt(law: GasLaw, crankAngle: number): number {
  // From half a cycle before the firing top centre to half a cycle after it.
  const angle = crankAngle > 2 * Math.PI ? crankAngle - 4 * Math.PI : crankAngle;
  if (Math.abs(angle) > Math.PI) return breathing(law, angle);
  if (angle <= -law.ignition) return compressed(law, angle);
  if (angle <= law.peakAngle) {
    const burnt = ease((angle + law.ignition) / (law.peakAngle + law.ignition));
    return (1 - burnt) * compressed(law, angle) + burnt * law.peakPressure;
  }
  const expanded =
    law.peakPressure *
    (volumeAt(law, law.peakAngle) / volumeAt(law, angle)) ** law.expansionExponent;
  const out = ease((angle - law.exhaustOpens) / (Math.PI - law.exhaustOpens));
  return (1 - out) * expanded + out * law.exhaustPressure;
}

/** What compression alone gives: the polytrope from bottom dead centre. */
export function compressed(
  law: Pick<
    GasLaw,
    keyof CrankTrain | 'compressionRatio' | 'intakePressure' | 'compressionExponent'
  >,
  angle: number,
): number {
  const shrunk = volumeAt(law, Math.PI) / volumeAt(law, angle);
  return law.intakePressure * shrunk ** law.compressionExponent;
}

/** Exhaust up to the top centre of gas exchange, intake after it, one going over into the other while both valves stand open. */
function breathing(law: GasLaw, angle: number): number {
  const pastTop = angle > 0 ? angle - 2 * Math.PI : angle + 2 * Math.PI;
  const changed = ease(pastTop / law.valveOverlap + 0.5);
  return (1 - changed) * law.exhaustPressure + changed * law.intakePressure;
}

/** Volume above the piston, in volumes swept. */
function volumeAt(law: CrankTrain & { readonly compressionRatio: number }, angle: number): number {
  return 1 / (law.compressionRatio - 1) + positionAt(law, angle) / law.stroke;
}

/** From 0 to 1 along half a cosine; 0 before and 1 after. */
function ease(share: number): number {
  return (1 - Math.cos(Math.PI * Math.min(1, Math.max(0, share)))) / 2;
}
