import { describe, type Finding, type Wording } from '../../judging/index.js';
import { isMultiple } from '../../judging/internal.js';
import {
  type DoneCall,
  type Exact,
  functions,
  isMathUnit,
  readValue,
  type ValueShape,
} from '../../mathjs/internal.js';
import { type Dimension, tradeUnit, type UnitSystem } from '../../quantities/index.js';
import { cautionOn, headOn, remarkOn } from './remarks.js';
import { sayPath } from './say-path.js';
import { sayIn, sayNumber, sayRatio, sayResult, sayResultIn, unitToSay } from './show-quantity.js';

/** What showing a value needs to know. */
export interface Showing {
  readonly exact: Exact;
  readonly units: UnitSystem;
  /** The call that a value came of, if it is a result as it was given. */
  readonly callOf: (value: unknown) => DoneCall | undefined;
  /** Whether a plain number is one that a function gave, by itself or within a result. */
  readonly isGiven: (value: number) => boolean;
  /** Whether only what fits on a screen is shown. */
  readonly inShort?: boolean;
  /** Whether such ratios stand beside a finding, which says its own in percent. */
  readonly inPercent?: boolean;
}

/** A value as a person reads it: sentences first, sizes in trade units. */
export function show(value: unknown, showing: Showing): string {
  const call = showing.callOf(value);
  const said = call && sentencesOf(call, showing.units);
  const caution = call && cautionOn(call);
  const below = caution === undefined ? '' : `\n${caution}`;
  if (said) return `${said.join('\n')}${below}`;
  const remark = call && remarkOn(call, showing.units);
  const head = call && headOn(call);
  const text = showToFit(value, showing);
  return `${head === undefined ? '' : `${head}\n`}${text}${remark ?? ''}${below}`;
}

/** What fits on a screen. */
const MOST_LINES = 40;

/** The whole value, or what fits: parts of parts by their names alone. */
function showToFit(value: unknown, showing: Showing): string {
  const whole = showPart(value, showing, '');
  if (whole.split('\n').length <= MOST_LINES) return whole;
  const lengths = Object.entries(value as object).map(
    ([key, part]) => [key, showPart(part, showing, '').length] as const,
  );
  const [[key] = ['']] = lengths.sort(([, one], [, other]) => other - one);
  const part = Array.isArray(value) ? `ans[${Number(key) + 1}]` : `ans.${key}`;
  const short = showPart(value, { ...showing, inShort: true }, '');
  return `${short}\nThis is the short of it; type a part to see all of that, as ${part}`;
}

/** What the library says of a result, if it has words for it. */
function sentencesOf({ name, result }: DoneCall, units: UnitSystem): readonly string[] | undefined {
  const gives = functions.get(name)?.signature.gives;
  if (gives === undefined) return undefined;
  if (isFinding(result)) return describe(result, { units });
  const describer = describerOf(gives);
  if (!describer) return undefined;
  const said = describer(result, { units });
  return Array.isArray(said) ? (said as readonly string[]) : [String(said)];
}

type Describer = (result: unknown, wording: Wording) => unknown;

/** The function that describes results of a type: the one that takes it first and a wording after it, and no more. */
function describerOf(gives: ValueShape): Describer | undefined {
  if (typeof gives !== 'string' || !gives.startsWith('#')) return undefined;
  const found = [...functions.values()].find(({ name, signature: { takes } }) => {
    const [first, wording] = takes;
    return name.startsWith('describe') && first?.shape === gives && wording?.name === 'wording';
  });
  return found?.run as Describer | undefined;
}

const isFinding = (value: unknown): value is Finding<Dimension> =>
  typeof value === 'object' &&
  value !== null &&
  ['feature', 'verdict', 'limits', 'basis', 'dimension'].every((field) => field in value);

const isShare = (finding: Finding<Dimension>) =>
  finding.dimension === 'ratio' && !isMultiple(finding);

const sayFunction = (name: string): string =>
  functions.has(name) ? `a function: .about ${name} tells what it takes` : 'a function';

function showPart(value: unknown, showing: Showing, indent: string): string {
  if (isMathUnit(value)) return showUnit(value, showing);
  if (typeof value === 'number') return showNumber(value, showing);
  if (typeof value === 'string') return /^[\w.]+\[\d+\]$/.test(value) ? sayPath(value) : value;
  if (typeof value === 'function') return sayFunction(value.name);
  if (typeof value !== 'object' || value === null) return String(value);
  const finding = findingOf(value, showing);
  if (finding !== undefined) return finding;
  if (Array.isArray(value)) return showList(value, showing, indent);
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  if (entries.length === 0) return '{}';
  const inside = entries.some(([, item]) => isFinding(item) && isShare(item))
    ? { ...showing, inPercent: true }
    : showing;
  const span = spanOf(entries, showing);
  if (span && showing.inShort) return `${span[0].slice(5)} to ${span[1].slice(5)}`;
  if (span) return span.map((line) => `${indent}${line}`).join('\n');
  if (showing.inShort && indent.length >= 4 && entries.length > 3) {
    const names = entries.map(([key]) => String(key));
    return `{ ${names.slice(0, 4).join(', ')}${names.length > 4 ? ', …' : ''} }`;
  }
  const lines = entries
    .filter(([, item]) => item !== undefined)
    .map(([key, item]) => {
      const text = showPart(item, inside, `${indent}  `);
      return `${indent}${key}:${text.includes('\n') ? '\n' : ' '}${text}`;
    });
  return lines.join('\n');
}

/** Both ends of a span in one unit, that of the larger, so that they can be compared. */
function spanOf(
  entries: readonly (readonly [unknown, unknown])[],
  { exact, units }: Showing,
): readonly [min: string, max: string] | undefined {
  const ends = entries.map(([key, item]) => {
    // A product of a result has no unit of ours, and is one too.
    if (!isMathUnit(item) || (!exact.isResult(item) && exact.named(item)[0])) return undefined;
    const dimension = exact.dimensionOf(item);
    return dimension && { key, dimension, value: exact.valueOf(item, dimension) };
  });
  const [min, max, more] = ends;
  if (min?.key !== 'min' || max?.key !== 'max' || more || min.dimension !== max.dimension)
    return undefined;
  const largest = Math.max(Math.abs(min.value), Math.abs(max.value));
  const unit = unitToSay(largest, min.dimension, units);
  return [`min: ${sayResultIn(min.value, unit)}`, `max: ${sayResultIn(max.value, unit)}`];
}

/** A plain number: what stands beside a finding is said as the finding says it, so that both can be compared. */
function showNumber(value: number, { isGiven, inPercent, units }: Showing): string {
  if (!isGiven(value)) return sayNumber(value);
  return inPercent ? sayResultIn(value, tradeUnit('ratio', units)) : sayRatio(value);
}

/** So many of a long list tell what the others are like. */
const MOST_ITEMS = 6;

function showList(list: readonly unknown[], showing: Showing, indent: string): string {
  const items = list.map((item) => showPart(item, showing, `${indent}  `));
  const line = `[${items.join(', ')}]`;
  if (line.length <= 72 && !line.includes('\n')) return line;
  const shown = showing.inShort ? items.slice(0, MOST_ITEMS) : items;
  const more = items.length - shown.length;
  return shown
    .map((item) => `${indent}- ${item.replace(new RegExp(`^${indent}  `), '')}`)
    .concat(more > 0 ? `${indent}- … and ${more} more` : [])
    .join('\n');
}

const FINDING = '#Finding<anything>';

/** A finding within a result, in its sentence. */
function findingOf(value: object, { exact, units }: Showing): string | undefined {
  if (!isFinding(value)) return undefined;
  try {
    const finding = readValue(exact, value, FINDING, 'finding', {}) as Finding<Dimension>;
    return describe(finding, { units }).join();
  } catch {
    // It was put together by hand, and is shown field by field.
    return undefined;
  }
}

/** What mathjs says of a unit besides. */
interface Converted {
  /** Whether somebody asked for this very unit. */
  readonly fixPrefix: boolean;
}

function showUnit(value: Parameters<Exact['named']>[0], { exact, units }: Showing): string {
  if (value.value === null) return `the unit ${String(value)}`;
  const dimension = exact.dimensionOf(value);
  if (dimension === undefined) return value.toString();
  const quantity = exact.valueOf(value, dimension);
  const [own] = exact.named(value);
  if (exact.isResult(value)) return sayResult(quantity, dimension, units);
  if (own) {
    // A sum or a half in the unit of sizes may have become as small as a clearance.
    const isSize = !exact.isMade(value) && own === tradeUnit(dimension, units);
    return sayIn(quantity, isSize ? unitToSay(quantity, dimension, units) : own);
  }
  const [first, ...others] = value.units;
  const isPower = others.length > 0 && others.every(({ unit }) => unit.name === first?.unit.name);
  if (isPower) return sayIn(quantity, unitToSay(quantity, dimension, units));
  const { fixPrefix } = value as unknown as Converted;
  // The root of an area is a length again, in the root of a unit.
  const isRoot = first !== undefined && !Number.isInteger(first.power);
  if (!fixPrefix || isRoot) return sayResult(quantity, dimension, units);
  // It was converted to a unit that has no name of ours.
  return exact.text(value);
}
