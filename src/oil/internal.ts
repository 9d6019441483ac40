// What the other rooms use of this one and users never see.
export { dilutionThresholds } from './dilution.js';
export {
  dilutionLimit,
  dripRate,
  leakFlow,
  liquidDensity,
  liquidViscosity,
  oilTemperature,
  singleDrop,
  sumpVolume,
} from './domains.js';
export { filmOilAt, guardOil } from './oil.js';
export { flowOfDrops } from './sump.js';
export { alongLine, temperatureOn } from './viscosity.js';
