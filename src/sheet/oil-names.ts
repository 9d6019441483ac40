import type { Names } from '../judging/internal.js';
import type { OilSheet } from './oil-sheet.js';

/** The sheet's names for the inputs of the oil calculations, part by part. */
export function oilNames(part: 'sample' | 'bearing' | 'leak', oil: Partial<OilSheet>): Names {
  const { fuel, fuelViscosity } = oil;
  // Petrol is not a field of the sheet, so a mismatch is blamed on the oil.
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
        doubt: 'doubt',
        loadDoubt: 'doubt.load',
        'options.thresholds': 'bearing.filmRatio',
      };
    case 'leak':
      return { '': 'leak', leak: 'leak', oil: 'sump', 'options.thresholds': 'thresholds' };
  }
}
