// What the other rooms use of this one; users never see it.

export { loadsOf } from './inspect-film.js';
export { readingsOf } from './readings-of.js';
export { reportSections } from './report.js';
