/**
 * Engine-rebuild calculations: from micrometer readings to findings, sizes,
 * fits and clearances. Quantities are plain SI numbers; wrap readings in their
 * unit, e.g. `inch(2.1248)`.
 *
 * @packageDocumentation
 */
export * from './bearings/index.js';
export * from './core.js';
