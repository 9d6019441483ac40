// What the other rooms use of this one and users never see.
export { dilutionThresholds } from './dilution.js';
export {
  clearanceSpace,
  dilutionLimit,
  dripRate,
  evaporationRate,
  leakFlow,
  liquidDensity,
  liquidViscosity,
  oilTemperature,
  pouredVolume,
  singleDrop,
  sumpVolume,
  thinningLimit,
} from './domains.js';
export { flowOfDrops } from './drip.js';
export { LAWS } from './laws.js';
export { filmOilAt, guardOil } from './oil.js';
export { THICKENED } from './thinning.js';
export { alongLine, doubleLog, guardLine, temperatureOn } from './viscosity.js';
