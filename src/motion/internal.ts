// What the other rooms use of this one and users never see.
export { CYCLE, guardCycle, guardDegrees, guardSpeed } from './guards.js';
