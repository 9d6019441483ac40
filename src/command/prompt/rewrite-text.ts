import { fractionLacksUnit } from './lacks-unit.js';
import {
  BARE_MIXED,
  BROKEN_MIXED,
  MIXED,
  readableName,
  SPACED_MIXED,
  SPELLED,
  WANTED,
} from './spelled-units.js';
import { WrongStatement } from './wrong-statement.js';

/** Text that mathjs can read, and what was understood that a reader might have meant otherwise. */
export interface Rewritten {
  readonly text: string;
  readonly notes: readonly string[];
  /** What may not be what was meant, to be said every time. */
  readonly warnings: readonly string[];
}

/** Signs as a text editor writes them, and as mathjs reads them. */
const SIGNS: Readonly<Record<string, string>> = { '×': '*', '÷': '/', '−': '-' };

/** mathjs reads `+-` as a minus, and gives the smaller end without a word. */
const PLUS_OR_MINUS = /±|\+\/-|\+-/y;

/** A share of something in words. */
const SHARE_OF = /((?:\d+\.?\d*|\.\d+)\s*(?:%|percent))\s*of\b\s*/y;

/** A mixed number with a space between, which can be nothing else, needs no note. */
const noteOf = (written: string, value: number): string =>
  `note: ${written} is read as ${value}; for a difference, write it with spaces around the minus`;

/**
 * Text as people type it, for mathjs to read: mixed numbers (`2-1/8 in`), units that it cannot spell (`18 ft-lb`,
 * `85 °F`), and units that are words of its own (`2 in`, `10 min`). Strings and comments stay as they are.
 */
export function rewriteText(typed: string): Rewritten {
  const notes: string[] = [];
  const warnings: string[] = [];
  let text = '';
  let at = 0;
  const take = (pattern: RegExp) => {
    pattern.lastIndex = at;
    const found = pattern.exec(typed);
    if (found) at += found[0].length;
    return found;
  };
  while (at < typed.length) {
    if (take(PLUS_OR_MINUS)) {
      throw new WrongStatement('a size and what it may be off is a span: write {min: …, max: …}');
    }
    const from = at;
    const share = take(SHARE_OF);
    if (share) {
      const written = `${typed.slice(0, from)}${share[1]} * ${typed.slice(at)}`;
      throw new WrongStatement(`of: for of write *, as ${written.trim()}`);
    }
    const broken = take(BROKEN_MIXED);
    if (broken) {
      const [written, inches, , over, under] = broken;
      throw new WrongStatement(
        `${written}: the fraction stands before the unit; write ${inches}-${over}/${under} in`,
      );
    }
    const mixed = take(MIXED);
    const [, whole, between, over, under] = mixed ?? [];
    if (mixed && Number(over) < Number(under)) {
      const sum = Number(whole) * Number(under) + Number(over);
      text += `(${sum}/${under})`;
      if (between === '-') notes.push(noteOf(mixed[0], sum / Number(under)));
      const [unit, name] = unitBehind(typed, at);
      text += name;
      at += unit;
      continue;
    }
    if (mixed) throw new WrongStatement(noFraction(mixed, typed.slice(at)));
    const spaced = take(SPACED_MIXED);
    if (spaced) throw fractionLacksUnit(spaced[0]);
    const bare = take(BARE_MIXED);
    if (bare) {
      const [written, from, less, by] = bare;
      if (Number(less) >= Number(by)) {
        text += written;
        continue;
      }
      const value = Number(from) - Number(less) / Number(by);
      warnings.push(
        `note: ${written} without a unit is a difference, ${value}; a mixed number has its unit: ${written} in`,
      );
      text += written;
      continue;
    }
    const spelled = take(SPELLED);
    if (spelled) {
      text += `${spelled[1]} ${readableName(spelled[2] ?? '')}`;
      continue;
    }
    const wanted = take(WANTED);
    if (wanted) {
      text += `to${wanted[1]}${readableName(wanted[2] ?? '')}`;
      continue;
    }
    const apart = take(
      /"(?:[^"\\]|\\.)*"?|'(?:[^'\\]|\\.)*'?|#[^\n]*|(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?|\w+|[\s\S]/y,
    );
    text += SIGNS[apart?.[0] ?? ''] ?? apart?.[0] ?? '';
  }
  return { text, notes, warnings };
}

/** Why `2-9/8 in` is no mixed number, and what to write instead. */
function noFraction(mixed: RegExpExecArray, behind: string): string {
  const [written, whole, between, over, under] = mixed;
  const [unit = ''] = /^\s*[^\s\d()[\]{},;]+/.exec(behind) ?? [];
  const said = `${written}${unit}: ${over}/${under} is not a fraction below one`;
  if (Number(under) === 0) return said;
  const more = Number(whole) + Math.floor(Number(over) / Number(under));
  const rest = Number(over) % Number(under);
  const meant = rest === 0 ? `${more}` : `${more}${between}${rest}/${under}`;
  return `${said}; write ${meant}${unit}, or ${whole}${unit} - ${over}/${under}${unit} for a difference`;
}

/** How long the unit behind a fraction is that mathjs cannot spell, and what it can. */
function unitBehind(typed: string, at: number): readonly [length: number, name: string] {
  // As if a number stood before it.
  SPELLED.lastIndex = 0;
  const found = SPELLED.exec(`1${typed.slice(at)}`);
  return found ? [found[0].length - 1, ` ${readableName(found[2] ?? '')}`] : [0, ''];
}
