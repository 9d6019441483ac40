import { commaSlip } from './wrong-text.js';

const CLOSES: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };

/** A bracket that is open, and how far the field in it has got. */
interface Open {
  readonly bracket: string;
  /** The name of the function or the field that it belongs to. */
  readonly behind: string;
  /** The field of a brace that is read. */
  field: string | undefined;
  hasColon: boolean;
  /** What stands right before the field and the comma before it. */
  last: string;
  isChoice: boolean;
}

/** A string, a comment, a number, a word, or a sign by itself. */
const TOKEN =
  /"(?:[^"\\]|\\.)*"?|'(?:[^'\\]|\\.)*'?|#[^\n]*|(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?|\w+|[=!<>]=|\S/g;

/** What is wrong with the brackets of a text and the fields in its braces, in words; nothing if they are sound. */
export function bracketSlip(text: string): string | undefined {
  const open: Open[] = [];
  let before = '';
  const tokens = [...text.matchAll(TOKEN)].map(([token]) => token).filter((one) => one[0] !== '#');
  for (const [i, token] of tokens.entries()) {
    const at = open.at(-1);
    if (CLOSES[token] !== undefined) {
      const behind =
        token === '{' && at?.bracket === '('
          ? at.behind
          : before === ':'
            ? (at?.field ?? '')
            : before;
      open.push({
        bracket: token,
        behind,
        field: undefined,
        hasColon: false,
        last: '',
        isChoice: false,
      });
    } else if (Object.values(CLOSES).includes(token)) {
      if (at === undefined) return `there is one ${token} too many`;
      const wanted = CLOSES[at.bracket];
      if (wanted !== token) return `a ${wanted} is missing before this ${token}: ${stillOpen(at)}`;
      open.pop();
    } else if (at?.bracket === '{') {
      const wrong = slipInBraces(at, token, before, tokens[i + 1] ?? '');
      if (wrong !== undefined) return wrong;
    }
    before = token;
  }
  return undefined;
}

/** What to put at the end of a text whose brackets are not all closed. */
export function whatIsOpen(text: string): string | undefined {
  const open: string[] = [];
  for (const [token] of text.matchAll(TOKEN)) {
    if (CLOSES[token] !== undefined) open.push(token);
    else if (Object.values(CLOSES).includes(token)) open.pop();
  }
  if (open.length === 0) return undefined;
  const closing = open.map((bracket) => CLOSES[bracket]).reverse();
  return `the ${open.at(-1)} is not closed; put ${closing.join('')} at its end`;
}

const stillOpen = ({ bracket, behind }: Open): string =>
  /^\w/.test(behind) ? `the ${bracket} of ${behind} is still open` : `a ${bracket} is still open`;

/** Reads on in braces, and tells what is wrong there. */
function slipInBraces(at: Open, token: string, before: string, next: string): string | undefined {
  if (at.field === undefined) {
    if (/^[\w"']/.test(token)) at.field = token;
    // No field begins with a digit, so this is the rest of a number.
    return /^\d/.test(token) ? commaSlip(`${at.last},${token}`) : undefined;
  }
  if (!at.hasColon) {
    if (token === ':') {
      at.hasColon = true;
      return undefined;
    }
    if (token === '=') return `in braces a colon stands behind a name, not =: write ${at.field}: …`;
    if (/^[A-Za-z]/.test(token) && next === ':') {
      const [first = '', ...others] = token;
      return `a name is one word: is ${at.field}${first.toUpperCase()}${others.join('')} meant?`;
    }
    return /^[\w.(]/.test(token)
      ? `a colon is missing behind ${at.field}: write ${at.field}: …`
      : undefined;
  }
  if (token === '?') at.isChoice = true;
  if (token === ',') {
    at.last = before;
    at.field = undefined;
    at.hasColon = false;
    at.isChoice = false;
  }
  if (token === ';') {
    return `in braces a comma stands between two sizes, not a semicolon: put a comma before ${next}`;
  }
  const isName = /^[A-Za-z_]/.test(token) && (next === ':' || next === '=') && !at.isChoice;
  return isName && /[\w)\]}"']$/.test(before) ? `a comma is missing before ${token}` : undefined;
}
