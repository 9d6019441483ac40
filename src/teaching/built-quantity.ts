import type { Dimension } from '../quantities/index.js';
import { mathjsUnit } from '../quantities/internal.js';
import { math } from './evaluate.js';

const POWERS: Readonly<Record<string, string>> = { '²': '^2', '³': '^3', '⁻¹': '^-1', '⁻²': '^-2' };

/** A number and a unit built of others, as a working ends on it: `547 N/mm²`, `2.4 s⁻¹`, `146 strokes/min`. */
export function builtQuantity(text: string, dimension: Dimension): number | undefined {
  const unit = mathjsUnit[dimension];
  const [, number, built] = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(\S.*)$/i.exec(text) ?? [];
  // A temperature counts from a zero of its own.
  if (number === undefined || built === undefined || dimension === 'temperature') return undefined;
  if (dimension === 'ratio') return ratioIn(Number(number), built);
  if (unit === '') return undefined;
  const perTurn = dimension === 'rotationalSpeed' ? 'cycle' : '';
  const plain = built
    .replace(/[²³]|⁻[¹²]/g, (power) => POWERS[power] ?? power)
    .replace(/^(?:sq|square)\.?\s*(.+)$/i, '$1^2')
    .replace(/\bper\b/i, '/')
    // Strokes and turns are counted alike.
    .replace(/^(?:[rs]pm|min\^-1)$/i, '/min')
    .replace(/^(?:strokes|drops|turns|revs?|cycles|1)?\s*\/\s*(?=min)/i, `${perTurn}/`)
    .replace(/^(?:strokes|drops|turns|cycles)\b\s*/i, '')
    .replace(/[·⋅*]/g, ' ')
    .replace(/µ|μ/g, 'u')
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

/** A strain as gauges tell it. */
function ratioIn(number: number, unit: string): number | undefined {
  if (/^(?:[µμu]ε|micro-?strain|[µμu]in\/in|[µμu]m\/m)$/i.test(unit)) return number * 1e-6;
  return /^(?:strain|in\/in|mm\/mm)$/i.test(unit) ? number : undefined;
}
