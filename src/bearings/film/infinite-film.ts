import { rootOfFalling } from '../../numerics/index.js';
import type { RawFilm } from './film-numbers.js';

/**
 * The infinitely long bearing in closed form, in Sommerfeld's angle γ, where
 * cos γ = (e + cos θ) / (1 + e cos θ), with a film that breaks where its pressure and
 * the slope of it both come to zero.
 */
export function infiniteFilm(e: number): RawFilm {
  const s = Math.sqrt(1 - e * e);
  const rupture = ruptureOf(e);
  const gap = (angle: number) => (s * s) / (1 - e * Math.cos(angle));
  const last = gap(rupture);
  const first = 1 + e;
  // Integrals of 1/h and 1/h² from the widest gap to γ, over s/h of it.
  const once = (y: number) => (y - e * Math.sin(y)) / s ** 2;
  const twice = (y: number) =>
    (y - 2 * e * Math.sin(y) + (e * e * (y + Math.sin(y) * Math.cos(y))) / 2) / s ** 4;
  const pressure = (y: number) => (once(y) - last * twice(y)) / s;
  const across = (rupture - (1 + last) * once(rupture) + last * twice(rupture)) / (s * e);
  const along = (1 - last / first) ** 2 / (2 * e * last);
  // The pressure is greatest where the gap is again what it is at the rupture.
  const peak = 2 * Math.PI - rupture;
  return {
    along: along / 2,
    across: across / 2,
    inflow: last,
    outflow: 0,
    peak: pressure(peak),
    peakAt: angleFromWidest(e, peak),
    ruptureAt: angleFromWidest(e, rupture),
  };
}

/** Where the film of an infinitely long bearing breaks, from the widest gap on; a shorter one's breaks sooner. */
export function infiniteRupture(e: number): number {
  return angleFromWidest(e, ruptureOf(e));
}

/** θ of a place from its γ, on the same turn. */
function angleFromWidest(e: number, y: number): number {
  const theta = 2 * Math.atan(Math.sqrt((1 + e) / (1 - e)) * Math.tan(y / 2));
  return y > Math.PI ? theta + 2 * Math.PI : theta;
}

/** γ of the rupture: where the pressure is zero again. */
function ruptureOf(e: number): number {
  // Pressure at γ if the film broke there; it falls through zero once beyond the narrowest gap.
  const left = (y: number) =>
    2 * (Math.sin(y) - y * Math.cos(y)) - e * (y - Math.sin(y) * Math.cos(y));
  return rootOfFalling(left, Math.PI, 1.5 * Math.PI);
}
