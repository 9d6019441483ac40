import { degree, valueIn } from '../quantities/index.js';
import type { Follow } from './cycle-planes.js';
import { dot, inked, mark, written } from './ink.js';
import { EDGE, LINE_HEIGHT, type Strip, straight } from './picture.js';
import { element, stroke, words } from './svg.js';

/** Where along the cycle the path is marked, in degrees. */
export const ORBIT_MARKS = [0, 180, 360, 540] as const;

/** The path of the journal inside its clearance circle; the rod points up. */
export function orbitCircle({ path, leastFilm }: Follow, width: number): Strip {
  const radius = Math.min(150, width / 2 - EDGE - 20);
  return {
    height: 2 * radius + 2 * LINE_HEIGHT,
    draw: (top) => {
      const [cx, cy] = [width / 2, top + radius + LINE_HEIGHT / 2];
      const at = ({ along, across }: Follow['path'][number]) =>
        [cx + radius * across, cy - radius * along] as const;
      const nearest = (degrees: number) => {
        const far = (point: Follow['path'][number]) =>
          Math.abs(valueIn(point.crankAngle, degree) - degrees);
        return path.reduce((best, point) => (far(point) < far(best) ? point : best));
      };
      const thinnest = at(nearest(valueIn(leastFilm.crankAngle, degree)));
      return [
        element('circle', {
          class: 'clearance',
          cx,
          cy,
          r: radius,
          'stroke-width': 2,
          ...inked({ stroke: 'ink' }),
        }),
        stroke([cx - radius, cy], [cx + radius, cy], AXIS),
        stroke([cx, cy - radius], [cx, cy + radius], AXIS),
        words('rod', cx + 6, cy - radius + 14, written('soft')),
        words('cap', cx + 6, cy + radius - 8, written('soft')),
        element('path', {
          class: 'orbit',
          d: straight(path.map(at)),
          'stroke-width': 1.5,
          ...inked({ stroke: 'mark' }),
        }),
        ...ORBIT_MARKS.map((degrees, i) => mark(i, ...at(nearest(degrees)))),
        dot(...thinnest),
      ].join('');
    },
  };
}

const AXIS = /* @__PURE__ */ axis();

function axis() {
  return { 'stroke-width': 0.5, ...inked({ stroke: 'soft' }) };
}
