/**
 * The sheet for the bench: what to do to build the engines of a plan, in the order of the
 * work.
 *
 * @packageDocumentation
 */
export { type BuildSheetOptions, buildSheet } from './build-sheet.js';
