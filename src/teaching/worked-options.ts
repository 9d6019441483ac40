import { guardFields } from '../judging/internal.js';
import type { UnitSystem } from '../quantities/index.js';
import { guardSystem } from '../quantities/internal.js';

/** How to work a formula. */
export interface WorkedOptions {
  /** The units that the shop reads; by default `'inch'`. */
  readonly units?: UnitSystem;
}

/** The units that are asked for. */
export function unitsAsked(options: WorkedOptions): UnitSystem {
  guardFields('options', options, ['units']);
  return systemOr('options.units', options.units);
}

/** The units that are asked for, or else those of the prompt. */
export function systemOr(parameter: string, units: UnitSystem = 'inch'): UnitSystem {
  guardSystem(parameter, units);
  return units;
}
