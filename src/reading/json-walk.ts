/** A step from an object to its field, or from a list to its item. */
export type PathStep = string | number;

/** A key given twice in one object. `JSON.parse` keeps the last and silently drops the others. */
export interface RepeatedKey {
  readonly path: readonly PathStep[];
  /** The places of its first and of its repeated use. */
  readonly places: readonly [first: TextPlace, again: TextPlace];
}

/** A place in the text. */
export interface TextPlace {
  readonly line: number;
  /** The character in that line, from 1. */
  readonly character: number;
}

/** The place where a text stops being JSON. */
export interface Break extends TextPlace {
  /** The text there, to the end of the line; empty at the end of the text. */
  readonly found: string;
  /** Whether it begins with a token that is valid elsewhere in JSON. */
  readonly isToken: boolean;
  /** What should be there. */
  readonly wanted: WantedPlace;
  /** The innermost bracket that is still open there, if one is. */
  readonly open?: TextPlace & { readonly bracket: '{' | '[' };
}

/** What can come next in JSON. */
export type WantedPlace =
  | 'a value'
  | 'a value or ]'
  | 'another value'
  | 'a name in double quotes or }'
  | 'another name in double quotes'
  | 'a colon'
  | 'a comma or ]'
  | 'a comma or }'
  | 'the end of the text'
  | 'fewer brackets';

/** The result of walking through a text, to its end or to where it breaks. */
export interface Walk {
  readonly repeated: readonly RepeatedKey[];
  readonly broken?: Break;
}

/** Walks through text that should be JSON and keeps the line numbers, which `JSON.parse` does not give. */
export function walkJson(text: string): Walk {
  const walker = new Walker();
  const { repeated } = walker;
  let at = 0;
  for (;;) {
    WHITE_SPACE.lastIndex = at;
    const [blank = ''] = WHITE_SPACE.exec(text) ?? [];
    walker.pass(blank, at);
    at += blank.length;
    walker.at = at;
    const token = tokenAt(text, at);
    if (token === '' || !walker.take(token)) {
      const { wanted, open } = walker;
      if (at === text.length && wanted === 'the end of the text') return { repeated };
      const [found = ''] = /^.*/.exec(text.slice(at, at + MOST_FOUND)) ?? [];
      const isToken = token !== '';
      const broken = { ...walker.place, found, isToken, wanted, ...(open && { open }) };
      return { repeated, broken };
    }
    at += token.length;
  }
}

/** White space, from a place on. */
export const WHITE_SPACE = /[ \t\r\n]*/y;
const MARK_WORD_OR_NUMBER =
  /[{}[\],:]|true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** The token at a place in the text; empty if there is none. */
export function tokenAt(text: string, at: number): string {
  if (text[at] === '"') return text.slice(at, textEnd(text, at));
  MARK_WORD_OR_NUMBER.lastIndex = at;
  return MARK_WORD_OR_NUMBER.exec(text)?.[0] ?? '';
}

/** The end of quoted text, or its start if it has no end. A regular expression would overflow on long text. */
function textEnd(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    const character = text[at] as string;
    if (character === '"') return at + 1;
    if (character < ' ') return start;
    if (character !== '\\') continue;
    ESCAPE.lastIndex = at;
    const [pair = ''] = ESCAPE.exec(text) ?? [];
    if (pair === '') return start;
    at += pair.length - 1;
  }
  return start;
}

/** The deepest nesting allowed. */
const DEEPEST = 50;

/** The most characters of the wrong text to show. */
const MOST_FOUND = 20;

/** An open object or list, and the current place in it. */
interface Open {
  /** Where it begins. */
  readonly place: TextPlace;
  /** Where every key of an object stands; absent for a list. */
  readonly keys?: Map<string, TextPlace>;
  step: PathStep;
}

class Walker {
  readonly repeated: RepeatedKey[] = [];
  wanted: WantedPlace = 'a value';
  /** Where the next token begins in the text. */
  at = 0;
  #line = 1;
  /** Where the line begins in the text. */
  #lineStart = 0;
  readonly #open: Open[] = [];

  /** Where the next token begins. */
  get place(): TextPlace {
    return { line: this.#line, character: this.at - this.#lineStart + 1 };
  }

  /** The innermost open bracket. */
  get open(): Break['open'] {
    const open = this.#open.at(-1);
    return open && { bracket: open.keys ? '{' : '[', ...open.place };
  }

  /** Passes white space. */
  pass(blank: string, start: number): void {
    for (const { index, 0: end } of blank.matchAll(/\r\n?|\n/g)) {
      this.#line++;
      this.#lineStart = start + index + end.length;
    }
  }

  /** Takes a token; false if it is not valid here. */
  take(token: string): boolean {
    const [first = ''] = token;
    switch (first) {
      case '{':
        return this.#enter(
          { place: this.place, keys: new Map(), step: '' },
          'a name in double quotes or }',
        );
      case '[':
        return this.#enter({ place: this.place, step: 0 }, 'a value or ]');
      case '}':
        return this.#leave('a name in double quotes or }', 'a comma or }');
      case ']':
        return this.#leave('a value or ]', 'a comma or ]');
      case ',':
        return this.#goOn();
      case ':':
        return this.#move('a colon', 'a value');
      default:
        return (first === '"' && this.#key(token)) || (this.#wantsValue() && this.#closeValue());
    }
  }

  #enter(open: Open, wanted: WantedPlace): boolean {
    if (!this.#wantsValue()) return false;
    if (this.#open.length === DEEPEST) {
      this.wanted = 'fewer brackets';
      return false;
    }
    this.#open.push(open);
    this.wanted = wanted;
    return true;
  }

  #leave(empty: WantedPlace, full: WantedPlace): boolean {
    if (this.wanted !== empty && this.wanted !== full) return false;
    this.#open.pop();
    return this.#closeValue();
  }

  #goOn(): boolean {
    const open = this.#open.at(-1);
    if (typeof open?.step === 'number') open.step++;
    return (
      this.#move('a comma or }', 'another name in double quotes') ||
      this.#move('a comma or ]', 'another value')
    );
  }

  #key(token: string): boolean {
    const open = this.#open.at(-1);
    if (!/name/.test(this.wanted) || open?.keys === undefined) return false;
    // Undoes escapes: "fa\u0075lts" is "faults".
    const key = JSON.parse(token) as string;
    open.step = key;
    const first = open.keys.get(key);
    if (first === undefined) open.keys.set(key, this.place);
    else
      this.repeated.push({ path: this.#open.map(({ step }) => step), places: [first, this.place] });
    this.wanted = 'a colon';
    return true;
  }

  #wantsValue(): boolean {
    return /value/.test(this.wanted);
  }

  /** After a value comes another, or the end of the object or list. */
  #closeValue(): boolean {
    const open = this.#open.at(-1);
    if (open === undefined) this.wanted = 'the end of the text';
    else this.wanted = open.keys ? 'a comma or }' : 'a comma or ]';
    return true;
  }

  #move(from: WantedPlace, to: WantedPlace): boolean {
    if (this.wanted !== from) return false;
    this.wanted = to;
    return true;
  }
}
