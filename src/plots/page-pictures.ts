/** The width that a picture of a page is drawn for: that of a phone, and half of a sheet of paper. */
export const NARROW = 340;
/** The width of the page. */
export const WIDE = 720;

/**
 * A picture twice: for wide pages and paper, and for a phone. The page shows one of them, so that letters are of one size
 * on both.
 */
export const twice = (draw: (size: { width: number; id: string }) => string, id: string): string =>
  [
    draw({ width: WIDE, id: `${id}-wide` }).replace('<svg ', '<svg class="wide" '),
    draw({ width: NARROW, id: `${id}-narrow` }).replace('<svg ', '<svg class="narrow" '),
  ].join('');
