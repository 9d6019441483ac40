import { NANOMETRE, sizeStep } from '../judging/internal.js';
import { type Length, mm, thou, type UnitSystem } from '../quantities/index.js';
import { guardSystem } from '../quantities/internal.js';

/** The steps in order, standard first whether it was named or not: a good journal is never ground. */
export function withStandard(steps: readonly Length[]): readonly Length[] {
  const named = steps.map((step, i) => sizeStep(`steps[${i}]`, step));
  return [0 as Length, ...named.filter((step) => step > NANOMETRE)].sort((a, b) => a - b);
}

/** The steps of the trade: 0, 10, 20, 30 thou or 0, 0.25, 0.50, 0.75 mm, up to a largest one. */
export function sizeSteps(system: UnitSystem, largest: Length | undefined): readonly Length[] {
  guardSystem('system', system);
  const step = (n: number) => (system === 'inch' ? thou(10 * n) : mm(0.25 * n));
  const last = sizeStep('largest', largest ?? step(3));
  const count = Math.floor(last / step(1) + 1e-6) + 1;
  return Array.from({ length: count }, (_, n) => step(n));
}
