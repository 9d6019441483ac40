/**
 * The build sheet: how to build the engines of a plan, step by step in the order of the work.
 *
 * @packageDocumentation
 */
export { type BuildSheetOptions, buildSheet } from './build-sheet.js';
