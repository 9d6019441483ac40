// The rooms that are light to load: all of the core but the bearings, whose maps of the oil film are large.
// `scripts/doors.ts` makes an entry point of each out of this one.
export * from './crankshaft/index.js';
export * from './cylinders/index.js';
export * from './judging/index.js';
export * from './measuring/index.js';
export * from './motion/index.js';
export * from './oil/index.js';
export * from './quantities/index.js';
