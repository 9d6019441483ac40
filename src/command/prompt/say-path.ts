/** `carrier[0].expansion` as a person counts: `carrier 1, expansion`. */
export const sayPath = (path: string): string =>
  path
    .replace(/\[(\d+)\]/g, (_, index: string) => ` ${Number(index) + 1}`)
    .replace(/( \d+)\./g, '$1, ');
