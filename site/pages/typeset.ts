import { typeset } from '../../src/teaching/layout-of-formula.js';
import { inMath, mathml } from '../../src/teaching/mathml.js';

/** A symbol of a formula in MathML: `D_h` with its index below. */
export const symbolMathml = (symbol: string): string =>
  inMath(typeset(symbol, new Set([symbol]), mathml));
