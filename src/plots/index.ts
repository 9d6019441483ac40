/**
 * Pictures of what was measured and found: SVG images as text, the same in Node and in a browser.
 *
 * @packageDocumentation
 */
export { borePicture } from './bore-picture.js';
export { journalPicture } from './journal-picture.js';
export type { PictureOptions } from './options.js';
export type { ReadBore, ReadPart } from './read-parts.js';
