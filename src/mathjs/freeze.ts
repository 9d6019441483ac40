import { isMathUnit } from './instance.js';

/** Keeps every part of a value as it is; what mathjs makes is its own. */
export function freeze(value: unknown): void {
  if (typeof value !== 'object' || value === null || isMathUnit(value)) return;
  Object.freeze(value);
  for (const item of Object.values(value)) freeze(item);
}
