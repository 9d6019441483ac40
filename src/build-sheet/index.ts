/**
 * The build sheet: how to build the engines of a plan, step by step in the order of the work.
 *
 * @packageDocumentation
 */
export type { CheckBox, EngineBoxes, SizeBox } from './boxes.js';
export { buildBoxes } from './build-boxes.js';
export { type BuildSheetOptions, buildSheet } from './build-sheet.js';
