import type { Dimension } from '../quantities/index.js';
import { mathjsUnit } from '../quantities/internal.js';
import { math } from './evaluate.js';

const POWERS: Readonly<Record<string, string>> = { '²': '^2', '³': '^3', '⁻¹': '^-1', '⁻²': '^-2' };

/** A number and a unit built of others, as a working ends on it: `547 N/mm²`, `2.4 s⁻¹`, `146 strokes/min`. */
export function builtQuantity(text: string, dimension: Dimension): number | undefined {
  const unit = mathjsUnit[dimension];
  const [, number, built] = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(\S.*)$/i.exec(text) ?? [];
  // A temperature counts from a zero of its own.
  if (unit === '' || number === undefined || built === undefined || dimension === 'temperature') {
    return undefined;
  }
  const plain = built
    .replace(/[²³]|⁻[¹²]/g, (power) => POWERS[power] ?? power)
    .replace(/^(?:strokes|drops|turns|cycles)\b\s*/i, '')
    .replace(/\bper\b/i, '/')
    .replace(/[·⋅*]/g, ' ')
    .replace(/\bthou\b/g, 'mil')
    .replace(/\bmin\b/g, 'minute')
    .replace(/^\/\s*(\w+)$/, '$1^-1');
  try {
    const read = math.unit(`${number} ${plain}`);
    return read.equalBase(math.unit(unit)) ? read.toNumber(unit) : undefined;
  } catch {
    return undefined;
  }
}
