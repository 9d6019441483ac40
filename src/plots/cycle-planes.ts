import type { BigEndOrbit } from '../bearings/index.js';
import type { LoadDiagram } from '../motion/index.js';
import {
  type Angle,
  degree,
  type Force,
  format,
  type Length,
  micrometre,
  tradeUnit,
  valueIn,
} from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import { dot, haloed, inked } from './ink.js';
import type { Drawn } from './options.js';
import { type Strip, straight } from './picture.js';
import { type Axis, plane } from './plane.js';
import { element, stroke, words } from './svg.js';

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
  { width }: Drawn,
): Strip {
  const films = path.map(({ crankAngle, film }) => ({
    angle: valueIn(crankAngle, degree),
    film: valueIn(film, micrometre),
  }));
  const wanted = needed === undefined ? [] : [valueIn(needed, micrometre)];
  const most = largestOf([...films.map(({ film }) => film), ...wanted]);
  return plane(
    {
      x: CRANK,
      y: { label: `thinnest film [${micrometre.symbol}]`, from: 0, to: most * 1.08 },
      height: HEIGHT,
      width,
    },
    (field) => {
      const [x, y] = [
        field.x(valueIn(leastFilm.crankAngle, degree)),
        field.y(valueIn(leastFilm.film, micrometre)),
      ];
      return [
        curve(
          films
            .filter(({ angle }) => angle <= 720)
            .map(({ angle, film }) => [field.x(angle), field.y(film)] as const),
          'film',
        ),
        ...wanted.map((value) =>
          [
            stroke([field.left, field.y(value)], [field.right, field.y(value)], {
              'stroke-width': 1.5,
              'stroke-dasharray': '7 3',
              ...inked({ stroke: 'alarm' }),
            }),
            words('needed', field.right - 4, field.y(value) - 5, {
              'text-anchor': 'end',
              ...haloed('alarm'),
            }),
          ].join(''),
        ),
        dot(x, y),
        words(format(leastFilm.film, micrometre), x, y - 10, {
          'text-anchor': x > (field.left + field.right) / 2 ? 'end' : 'start',
          ...haloed(),
        }),
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
