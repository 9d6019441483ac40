// What the other rooms use of this one and users never see.
export {
  guardDensity,
  guardDrop,
  guardFlow,
  guardFraction,
  guardRate,
  guardTemperature,
  guardViscosity,
  guardVolume,
} from './guards.js';
export { filmOilAt, guardOil } from './oil.js';
export { alongLine, temperatureOn } from './viscosity.js';
