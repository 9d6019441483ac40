// What the other rooms use of this one; users never see it.

export { loadsOf } from './inspect-film.js';
export { leftWaiting } from './left-waiting.js';
export { readingsAsJudged } from './readings-of.js';
export { reportSections } from './report.js';
