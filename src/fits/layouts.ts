// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';

export const inchFitClassLayout = { oneOf: ['FN1', 'FN2', 'FN3', 'FN4', 'FN5', 'LC1', 'LC10', 'LC11', 'LC2', 'LC3', 'LC4', 'LC5', 'LC6', 'LC7', 'LC8', 'LC9', 'LN1', 'LN2', 'LN3', 'LT1', 'LT2', 'LT3', 'LT4', 'LT5', 'LT6', 'RC1', 'RC2', 'RC3', 'RC4', 'RC5', 'RC6', 'RC7', 'RC8', 'RC9'] } satisfies Layout;
