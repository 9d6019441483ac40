/**
 * For tools that compute with mathjs: the units and functions of this library for an instance of your own. Nothing of
 * that library is loaded here.
 *
 * @packageDocumentation
 */
export { crankwright, type MathImport, type MathOptions } from './import.js';
export type { MathInstance, MathUnit } from './instance.js';
