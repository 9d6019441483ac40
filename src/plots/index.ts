/**
 * Pictures of what was measured and found: SVG images as text, the same in Node and in a browser.
 *
 * @packageDocumentation
 */

export { bigEndPicture, type ShownBigEnd } from './big-end-picture.js';
export { borePicture } from './bore-picture.js';
export type { ShownClearance } from './clearance-row.js';
export { clearancesOf } from './clearances-of.js';
export { clearancesPicture } from './clearances-picture.js';
export { fuelPicture, type SumpBetween } from './fuel-picture.js';
export { journalPicture } from './journal-picture.js';
export { measureFirstPicture } from './measure-first-picture.js';
export type { PictureOptions } from './options.js';
export { planPage } from './plan-page.js';
export { planPicture } from './plan-picture.js';
export type { ReadBore, ReadPart } from './read-parts.js';
export { reportPage } from './report-page.js';
export { triagePage } from './triage-page.js';
export { type ShownOils, viscosityPicture } from './viscosity-picture.js';
