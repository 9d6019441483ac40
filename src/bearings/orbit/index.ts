export { bigEndOrbit } from './big-end-orbit.js';
export { type JournalMobility, type PlaceInBearing, shortBearingMobility } from './mobility.js';
export type {
  Approach,
  BigEnd,
  BigEndOrbit,
  LeastFilm,
  OrbitPoint,
  OrbitRange,
} from './orbit-types.js';
