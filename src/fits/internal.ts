// What the other rooms use of this one and users never see.
export { INCH_FIT_CLASSES } from './inch-fit.js';
