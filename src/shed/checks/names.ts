import { type FileProblem, type Given, isObject, rawItems } from '../../reading/index.js';
import { SECTIONS, type Section } from '../sections.js';
import { PLACES } from './places.js';

/** A part of the raw file, valid or not, and its path. */
export interface RawPart {
  readonly section: Section;
  readonly path: string;
  readonly part: Given;
}

/** Every part of the raw file; the parts to buy come last. */
export function rawParts(given: Given): readonly RawPart[] {
  const toBuy = isObject(given['toBuy']) ? given['toBuy'] : {};
  const partsOf = (from: Given, before: string) =>
    SECTIONS.flatMap((section) =>
      rawItems(from[section]).map((part, i) => ({
        section,
        path: `${before}${section}[${i}]`,
        part,
      })),
    );
  return [...partsOf(given, ''), ...partsOf(toBuy, 'toBuy.')];
}

/** Parts of the whole shed, or places of one part, that share a name: a name must mean one thing. */
export function repeatedNames(parts: readonly RawPart[]): readonly FileProblem[] {
  return [
    ...repeated(parts, 'give each part of the shed its own name'),
    ...parts.flatMap(({ section, path, part }) => {
      const places = PLACES[section].flatMap(({ list }) =>
        rawItems(part[list]).map((place, i) => ({ path: `${path}.${list}[${i}]`, part: place })),
      );
      return repeated(places, 'give each place of a part its own name');
    }),
  ];
}

function repeated(
  named: readonly Pick<RawPart, 'path' | 'part'>[],
  advice: string,
): readonly FileProblem[] {
  const first = new Map<string, string>();
  return named.flatMap(({ path, part }) => {
    const name = nameOf(part);
    if (name === undefined) return [];
    const other = first.get(name);
    if (other === undefined) {
      first.set(name, path);
      return [];
    }
    const message = `"${name}" is also the name of ${other}; ${advice}`;
    return [{ path: `${path}.name`, message }];
  });
}

/** The trimmed name of a part or place, if it has one. */
export function nameOf({ name }: Given): string | undefined {
  return typeof name === 'string' && name.trim() !== '' ? name.trim() : undefined;
}
