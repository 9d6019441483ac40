import { MPa, psi } from '../quantities/index.js';

// Moduli of elasticity as tables round them, each about 1e11 or 2e11 Pa. common practice, from memory.

/** Steel. */
export const ofSteel = {
  metric: [MPa(200_000), MPa(205_000), MPa(210_000)],
  inch: [psi(29e6), psi(29.5e6), psi(30e6)],
} as const;
/** Grey iron and bronze. */
export const ofGreyIron = {
  metric: [MPa(100_000), MPa(105_000), MPa(110_000)],
  inch: [psi(14.5e6), psi(15e6), psi(16e6)],
} as const;
