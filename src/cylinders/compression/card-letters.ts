import { airPressure } from '../../motion/internal.js';

/** The air that the gauges of this room count from. */
export const p_a = {
  field: 'airPressure',
  meaning: 'absolute pressure of the air',
  domain: airPressure,
  usual: [8e4, 1.02e5],
} as const;
