const SVG = 'http://www.w3.org/2000/svg';

/** Makes an element of a picture. */
export function svg(
  tag: string,
  attributes: Readonly<Record<string, string | number>>,
  contents: readonly (Node | string)[] = [],
): SVGElement {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
  made.append(...contents);
  return made;
}

/** Straight lines through points; where a point is missing, the line is broken. */
export const path = (points: readonly (readonly [number, number] | undefined)[]): string =>
  points
    .flatMap((point, i) =>
      point ? [`${points[i - 1] ? 'L' : 'M'}${point.map((n) => n.toFixed(1)).join(',')}`] : [],
    )
    .join('');
