// What the command uses of this room and users never see.
export type { Exact } from './exact.js';
export { freeze } from './freeze.js';
export { constants, functions } from './functions.js';
export { type DoneCall, importInto } from './import.js';
export { isMathUnit, type MathUnit } from './instance.js';
export { readValue } from './read-value.js';
export { callOf } from './say-example.js';
export { choicesOf, fieldsOf, isDimension, withArticle, wordsIn, wrongUnit } from './say-shape.js';
export type { ValueShape } from './shapes.js';
export { shortNumber } from './short-number.js';
export { nameOfUnit, unitByName } from './unit-names.js';
