/**
 * The build sheet: how to build the engines of a plan, step by step in the order of the work.
 *
 * @packageDocumentation
 */
export { buildBoxes, type CheckBox, type EngineBoxes, type SizeBox } from './build-boxes.js';
export { type BuildSheetOptions, buildSheet } from './build-sheet.js';
