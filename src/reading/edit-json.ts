import { withoutMark } from './file-text.js';
import { isObject } from './given.js';
import { type JsonNode, nodesOf } from './json-nodes.js';
import { asJson, byName, byPlace, matched } from './match-items.js';
import { type JsonStyle, printJson, printOnOneLine } from './print-json.js';
import { isSameData } from './same-data.js';

/**
 * Edits JSON text so that it reads as the value given. What reads as it did keeps its characters:
 * only what differs is printed anew, in the indent and with the line ends of what is around it.
 */
export function editJson(written: string, value: unknown): string {
  const text = withoutMark(written);
  const mark = written.slice(0, written.length - text.length);
  const root = nodesOf(text);
  const [newline = '\n'] = /\r\n|\r|\n/.exec(text) ?? [];
  const [, step = '  '] = /(?:\r\n|\r|\n)([ \t]+)/.exec(text) ?? [];
  const edited = new Editor(text, { indent: '', step, newline }).textOf(root, value, '');
  return mark + text.slice(0, root.start) + edited + text.slice(root.end);
}

/** A field or item of the new value, printed; the child of the old one that it was, if it was there. */
interface Entry {
  readonly text: string;
  readonly from?: number | undefined;
}

class Editor {
  readonly #text: string;
  readonly #style: JsonStyle;

  constructor(text: string, style: JsonStyle) {
    this.#text = text;
    this.#style = style;
  }

  /** The text of a node once it has the value. */
  textOf(node: JsonNode, value: unknown, indent: string): string {
    if (isSameData(node.value, value)) return this.#text.slice(node.start, node.end);
    const sameKind =
      (isObject(node.value) && isObject(value)) ||
      (Array.isArray(node.value) && Array.isArray(value));
    const isEmpty = typeof value === 'object' && value !== null && Object.keys(value).length === 0;
    if (!sameKind || isEmpty || node.children.length === 0) {
      return printJson(value, { ...this.#style, indent });
    }
    const lead = this.#text.slice(node.start + 1, node.children[0]?.start);
    const isOnOneLine = !/[\r\n]/.test(lead);
    const inner = isOnOneLine ? indent : (/[^\r\n]*$/.exec(lead)?.[0] ?? '');
    const print = (each: unknown) =>
      isOnOneLine ? printOnOneLine(each) : printJson(each, { ...this.#style, indent: inner });
    const entries = Array.isArray(value)
      ? this.#items(node, value, print, inner)
      : this.#fields(node, value as Readonly<Record<string, unknown>>, print, inner);
    return this.#joined(node, entries, lead);
  }

  #fields(
    { children }: JsonNode,
    value: Readonly<Record<string, unknown>>,
    print: (value: unknown) => string,
    indent: string,
  ): readonly Entry[] {
    const places = new Map(children.map(({ name = '' }, i) => [name, i]));
    return Object.entries(value).map(([name, each]) => {
      const from = places.get(name);
      const child = from === undefined ? undefined : children[from];
      if (child === undefined) return { text: `${JSON.stringify(name)}: ${print(each)}` };
      const head = this.#text.slice(child.start, child.node.start);
      return { text: head + this.textOf(child.node, each, indent), from };
    });
  }

  #items(
    { children }: JsonNode,
    value: readonly unknown[],
    print: (value: unknown) => string,
    indent: string,
  ): readonly Entry[] {
    const was = children.map(({ node }) => node.value);
    return matched(was, value, [asJson, byName, ...byPlace(was, value)]).map((from, i) => {
      const child = from === undefined ? undefined : children[from];
      if (child === undefined) return { text: print(value[i]) };
      return { text: this.textOf(child.node, value[i], indent), from };
    });
  }

  /** Neighbours that were neighbours keep what stood between them. */
  #joined({ start, end, children }: JsonNode, entries: readonly Entry[], lead: string): string {
    const [first, second] = children;
    const usual = second
      ? this.#text.slice(first?.node.end, second.start)
      : `,${lead === '' ? ' ' : lead}`;
    const all = entries.map(({ text, from }, i) => {
      if (i === 0) return text;
      const before = entries[i - 1]?.from;
      const were = before !== undefined && from === before + 1;
      const between = were
        ? this.#text.slice(children[before]?.node.end, children[from]?.start)
        : usual;
      return between + text;
    });
    const tail = this.#text.slice(children.at(-1)?.node.end, end);
    return this.#text.slice(start, start + 1) + lead + all.join('') + tail;
  }
}
