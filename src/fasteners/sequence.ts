/** A point in a plane. */
interface Point {
  readonly along: number;
  readonly across: number;
}

/** Bolts as far from the middle as this share of the farthest count as equally far: places are measured with a rule. */
const AS_FAR = 0.05;

/**
 * Orders points from the middle of them all outwards. Within a ring, every second one is the farthest from the one before,
 * so that the order goes crosswise, and the others are the farthest from all that went before. Of equals, the first given.
 */
export function middleOutwards<P extends Point>(points: readonly P[]): readonly P[] {
  const middle = {
    along: mean(points.map((p) => p.along)),
    across: mean(points.map((p) => p.across)),
  };
  const rest = points.map((point) => ({ point, out: apart(point, middle), near: Infinity }));
  const farthest = rest.reduce((most, { out }) => Math.max(most, out), 0);
  const order: P[] = [];
  while (rest.length > 0) {
    const innermost = rest.reduce((least, { out }) => Math.min(least, out), Infinity);
    const ring = rest.filter(({ out }) => out <= innermost + AS_FAR * farthest);
    for (let crosswise = false; ring.length > 0; crosswise = !crosswise) {
      const last = order.at(-1);
      const fromLast = ({ point }: { readonly point: P }) => (last ? apart(point, last) : 0);
      const next = ring.reduce((best, one) => {
        const byNear = crosswise ? 0 : compare(one.near, best.near, farthest);
        return (byNear || compare(fromLast(one), fromLast(best), farthest)) > 0 ? one : best;
      });
      ring.splice(ring.indexOf(next), 1);
      rest.splice(rest.indexOf(next), 1);
      order.push(next.point);
      for (const one of rest) one.near = Math.min(one.near, apart(one.point, next.point));
    }
  }
  return order;
}

/** Which of two distances is the greater; those that differ by less than measuring tells are equal. */
function compare(a: number, b: number, scale: number): number {
  if (a === b || Math.abs(a - b) <= AS_FAR * scale) return 0;
  return a > b ? 1 : -1;
}

const apart = (a: Point, b: Point) => Math.hypot(a.along - b.along, a.across - b.across);

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
