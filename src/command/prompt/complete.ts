import {
  choicesOf,
  constants,
  fieldsOf,
  functions,
  unitByName,
  type ValueShape,
} from '../../mathjs/internal.js';

/** What may be typed next, and the end of the line that it takes the place of; as `node:readline` asks for it. */
export type Completion = [found: string[], typed: string];

/**
 * Completes a line: fields of a function that are not given yet inside its braces, words in quotes behind a field that
 * takes some, names everywhere else.
 */
export function complete(line: string, names: readonly string[]): Completion {
  const [typed = ''] = /"?[\w]*$/.exec(line) ?? [];
  const command = /^\s*\.(\w*)$/.exec(line);
  if (command) return [matching(COMMANDS, `.${command[1]}`), `.${command[1]}`];
  const about = /^\s*\.about\s+(\w*)$/.exec(line);
  if (about)
    return [matching([...functions.keys(), ...constants.keys()], about[1] ?? ''), about[1] ?? ''];
  const system = /^\s*\.units\s+(\w*)$/.exec(line);
  if (system) return [matching(['inch', 'metric'], system[1] ?? ''), system[1] ?? ''];
  if (/(?:(?<![\w.])(?:\d+\.?\d*|\.\d+)\s*|\bto\s+)[A-Za-z]\w*$/.test(line)) {
    const word = /[A-Za-z]\w*$/.exec(line)?.[0] ?? '';
    return [matching([...unitByName.keys()], word), word];
  }
  const place = placeIn(line.slice(0, line.length - typed.length));
  if (place) {
    if (place.field !== undefined) {
      const words = wordsFor(place.shape, place.field);
      if (words.length > 0) return [matching(words, typed), typed];
    } else {
      const left = Object.keys(fieldsOf(place.shape)).map((key) => key.replace('?', ''));
      const open = left.filter((field) => !place.given.includes(field));
      return [matching(open, typed).map((field) => `${field}: `), typed];
    }
  }
  return typed === '' ? [[], ''] : [matching(names, typed), typed];
}

const COMMANDS = ['.about', '.units', '.ts', '.save', '.load', '.help', '.exit', '.break'];

const matching = (words: readonly string[], typed: string): string[] =>
  words.filter((word) => word.startsWith(typed)).sort();

interface Place {
  readonly shape: ValueShape;
  readonly given: readonly string[];
  /** The field whose value is typed. */
  readonly field?: string;
}

/** The braces that the end of a text stands in, and what is known of them. */
function placeIn(text: string): Place | undefined {
  const open: {
    bracket: string;
    shape: ValueShape;
    given: string[];
    field?: string;
    argument: number;
  }[] = [];
  const shapeAt = (): ValueShape => {
    const at = open.at(-1);
    if (!at) return 'anything';
    if (at.bracket === '{') return shapeOf(at.shape, at.field ?? '');
    if (at.bracket !== '[') return at.shape;
    const list = choicesOf(at.shape).find((one) => typeof one === 'object' && 'list' in one);
    return typeof list === 'object' && 'list' in list ? list.list : 'anything';
  };
  for (const [token] of text.matchAll(/"(?:[^"\\]|\\.)*"?|\w+|[^\s\w]/g)) {
    const at = open.at(-1);
    if (token === '(') {
      open.push({ bracket: token, shape: argumentOf(text, open.length), given: [], argument: 0 });
    } else if (token === '{' || token === '[') {
      open.push({ bracket: token, shape: shapeAt(), given: [], argument: 0 });
    } else if (')]}'.includes(token)) open.pop();
    else if (at?.bracket === '{') {
      if (token === ',') delete at.field;
      else if (at.field === undefined && token !== ':') at.given.push(token.replace(/"/g, ''));
      else if (token === ':') at.field = at.given.at(-1) ?? '';
      if (token !== ':' && token !== ',' && at.field === undefined) continue;
    }
  }
  const at = open.at(-1);
  if (at?.bracket !== '{') return undefined;
  return {
    shape: at.shape,
    given: at.given,
    ...(at.field !== undefined && { field: at.field }),
  };
}

/** The shape of the first argument of the function whose parenthesis is the innermost that is open there. */
function argumentOf(text: string, depth: number): ValueShape {
  let level = 0;
  let shape: ValueShape = 'anything';
  for (const found of text.matchAll(/(\w+)?\s*\(|[[{)\]}]/g)) {
    const [token] = found;
    if (')]}'.includes(token)) level--;
    else {
      const name = found[1];
      if (level === depth) {
        shape = functions.get(name ?? '')?.signature.takes[0]?.shape ?? 'anything';
      }
      level++;
    }
  }
  return shape;
}

function shapeOf(shape: ValueShape, field: string): ValueShape {
  const fields = fieldsOf(shape);
  return fields[field] ?? fields[`${field}?`] ?? 'anything';
}

function wordsFor(shape: ValueShape, field: string): readonly string[] {
  return choicesOf(shapeOf(shape, field)).flatMap((one) =>
    typeof one === 'object' && 'oneOf' in one ? one.oneOf.map((word) => JSON.stringify(word)) : [],
  );
}
