/**
 * Engine-rebuild calculations: from micrometer readings to findings, sizes,
 * fits and clearances. Quantities are plain SI numbers; wrap readings in their
 * unit, e.g. `inch(2.1248)`.
 *
 * @packageDocumentation
 */
export * from './bearings/index.js';
export * from './crankshaft/index.js';
export * from './cylinders/index.js';
export * from './fasteners/index.js';
export * from './fits/index.js';
export * from './judging/index.js';
export * from './measuring/index.js';
export * from './motion/index.js';
export * from './oil/index.js';
export * from './quantities/index.js';
export * from './timing/index.js';
export * from './valves/index.js';
