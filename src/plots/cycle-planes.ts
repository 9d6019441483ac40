import type { BigEndOrbit } from '../bearings/index.js';
import { sayFilm } from '../judging/internal.js';
import type { LoadDiagram } from '../motion/index.js';
import {
  type Angle,
  degree,
  type Force,
  type Length,
  tradeUnit,
  valueIn,
} from '../quantities/index.js';
import { filmUnit, largestOf } from '../quantities/internal.js';
import { clearLabel } from './clear-label.js';
import { dot, inked } from './ink.js';
import type { Drawn } from './options.js';
import { limitLine, type Strip, straight } from './picture.js';
import { type Axis, plane } from './plane.js';
import { element, stroke } from './svg.js';

/** An orbit that came back to where it started. */
export type Follow = Extract<BigEndOrbit, { readonly outcome: 'settled' }>;

const HEIGHT = 150;

const CRANK = {
  label: 'crank past the firing top centre [°]',
  from: 0,
  to: 720,
  marked: [
    { value: 0, text: '0' },
    { value: 180, text: '180' },
    { value: 360, text: '360' },
    { value: 540, text: '540' },
    { value: 720, text: '720' },
  ],
} as const satisfies Axis;

/** `372`, of an angle of the crank. */
export const crankDegrees = (angle: number): string => valueIn(angle as Angle, degree).toFixed(0);

/** The load over the cycle; it comes again after the last angle. */
export function loadPlane({ loads }: LoadDiagram, { units, width }: Drawn): Strip {
  const unit = tradeUnit('force', units);
  const forces = loads.map(({ crankAngle, along, across }) => ({
    angle: valueIn(crankAngle, degree),
    force: valueIn(Math.hypot(along, across) as Force, unit),
  }));
  const most = largestOf([1e-9, ...forces.map(({ force }) => force)]);
  const [first] = forces;
  const all = first ? [...forces, { ...first, angle: first.angle + 720 }] : forces;
  return plane(
    {
      x: CRANK,
      y: { label: `load on the big end [${unit.symbol}]`, from: 0, to: most * 1.08 },
      height: HEIGHT,
      width,
    },
    (field) =>
      curve(
        all
          .filter(({ angle }) => angle <= 720)
          .map(({ angle, force }) => [field.x(angle), field.y(force)] as const),
        'load',
      ),
  );
}

/** The thinnest film over the cycle, with the one that is needed. */
export function filmPlane(
  { path, leastFilm }: Follow,
  needed: Length | undefined,
  { units, width }: Drawn,
): Strip {
  const unit = filmUnit(units);
  const films = path.map(({ crankAngle, film }) => ({
    angle: valueIn(crankAngle, degree),
    film: valueIn(film, unit),
  }));
  const wanted = needed === undefined ? [] : [valueIn(needed, unit)];
  const most = largestOf([...films.map(({ film }) => film), ...wanted]);
  return plane(
    {
      x: CRANK,
      y: { label: `thinnest film [${unit.symbol}]`, from: 0, to: most * 1.08 },
      height: HEIGHT,
      width,
    },
    (field) => {
      const [x, y] = [
        field.x(valueIn(leastFilm.crankAngle, degree)),
        field.y(valueIn(leastFilm.film, unit)),
      ];
      const path = films
        .filter(({ angle }) => angle <= 720)
        .map(({ angle, film }) => [field.x(angle), field.y(film)] as const);
      const level = wanted.map(
        (value) =>
          [
            [field.left, field.y(value)],
            [field.right, field.y(value)],
          ] as const,
      );
      return [
        curve(path, 'film'),
        ...level.map(([from, to]) => stroke(from, to, { class: 'needed', ...limitLine(0) })),
        dot(x, y),
        clearLabel(sayFilm(leastFilm.film, units), [x, y], [path, ...level], field),
      ].join('');
    },
  );
}

const curve = (places: readonly (readonly [number, number])[], name: string): string =>
  element('path', {
    class: name,
    d: straight(places),
    'stroke-width': 1.5,
    ...inked({ stroke: 'ink' }),
  });
