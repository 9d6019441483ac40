import { unitByName } from '../../mathjs/internal.js';

/** `inch(2.1248)` in a message as it is typed here: `2.1248 inch`. */
export function asTyped(message: string): string {
  return message
    .replace(
      /\b([A-Za-z]\w*)\((-?[\d.]+(?:e-?\d+)?)\)/g,
      (written, name: string, number: string) =>
        unitByName.has(name) ? `${number} ${name}` : written,
    )
    .replace(
      / (?:Lengths|Angles|Pressures) are \w+ here; wrap (?:the reading|it) in its unit/,
      ' Check the unit and the decimal point',
    )
    .replace('Give it as a number, and wrap it in its unit', 'Every size has its unit');
}
