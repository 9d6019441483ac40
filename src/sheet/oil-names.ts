import type { Names } from '../judging/internal.js';
import type { OilSheet } from './sheet.js';

/** What the calculations of the oil call otherwise than the sheet does, part by part. */
export function oilNames(part: 'sample' | 'bearing' | 'leak', oil: OilSheet): Names {
  const { fuel, fuelViscosity } = oil;
  // Petrol is no field of the sheet: then it is the oil that does not go with it.
  const fuelLine = fuel === undefined ? 'line' : 'fuel.line';
  switch (part) {
    case 'sample':
      return {
        '': 'sample',
        line: 'line',
        oil: 'line',
        'oil.density': 'density',
        'oil.line': 'line',
        oilDensity: 'density',
        fuel: fuelViscosity === undefined ? fuelLine : 'fuelViscosity',
        'fuel.density': 'fuel.density',
        'fuel.line': fuelLine,
        fuelDensity: 'fuel.density',
        fuelViscosity: 'fuelViscosity',
        sample: 'sample.viscosity',
        viscosityAt100C: 'line',
        'options.thresholds': 'thresholds',
      };
    case 'bearing':
      return {
        '': 'bearing',
        bearing: 'bearing',
        'oil.density': 'density',
        'oil.line': 'line',
        fuel: 'fuel',
        'fuel.line': fuelLine,
        'options.thresholds': 'bearing.filmRatio',
      };
    case 'leak':
      return { '': 'leak', leak: 'leak', oil: 'sump', 'options.thresholds': 'thresholds' };
  }
}
