import { callOf, functions } from '../../mathjs/internal.js';

/** What is wrong with a text that cannot be read, in words: where it stops making sense, and the slip that it most likely is. */
export function whyUnreadable(typed: string, read: string, char: number | undefined): string {
  const [, command] = /^\s*\.([a-z]+)/.exec(typed) ?? [];
  if (command !== undefined) {
    return `.${command} is a command of the prompt, which crankwright repl begins`;
  }
  const comma = commaSlip(typed);
  if (comma !== undefined) return comma;
  const [, name, field] = /(\w+)\(\s*(\w+)\s*:/.exec(typed) ?? [];
  if (field !== undefined) return `put the sizes in braces: ${name}({${field}: …})`;
  const spelled = callSpelled(typed);
  if (spelled !== undefined) return spelled;
  const rest = read.slice(Math.max((char ?? 1) - 1, 0)).split('\n')[0] ?? '';
  if (/^=[^=]/.test(rest)) {
    return '= gives a value a name, as journal = 2.105 in; to compare two, write ==';
  }
  const short = rest.length > 20 ? `${rest.slice(0, 20)}…` : rest;
  return short.trim() === '' ? 'this cannot be read' : `this cannot be read from "${short}" on`;
}

/** How the function is called that words apart spell: `oil clearance 2.251 2.105`. */
export function callSpelled(typed: string): string | undefined {
  const words = typed.match(/[A-Za-z]+|[^A-Za-z\s]+/g) ?? [];
  const isMeant = (name: string) =>
    words.some((_, i) =>
      [2, 3, 4].some(
        (count) =>
          words
            .slice(i, i + count)
            .join('')
            .toLowerCase() === name.toLowerCase(),
      ),
    );
  const name = [...functions.keys()].find(isMeant);
  return name === undefined
    ? undefined
    : `it is one word, with its sizes in brackets: ${callOf(name)}`;
}

/** What to write for a number with a comma in it. */
export function commaSlip(text: string): string | undefined {
  const [, long] = /(?<![\w.])(\d{1,3}(?:,\d{3})+\.\d+)(?![\w.])/.exec(text) ?? [];
  if (long !== undefined) {
    return `${long} cannot be read; a number has no comma: write ${long.replaceAll(',', '')}`;
  }
  const [, whole, part] = /(?<![\w.])(\d+),(\d+)(?![\w.])/.exec(text) ?? [];
  return part === undefined
    ? undefined
    : `${whole},${part} cannot be read; if it is one number, write a point: ${whole}.${part}`;
}

/** A conversion that names no unit; it is not waited for. */
export const lacksUnit = (text: string): boolean => /\w\s+to\s*$/.test(text);
