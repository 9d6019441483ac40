// What the other rooms use of this one; users never see it.

export { reportSections } from './report.js';
