import type { Length, Pressure } from '../quantities/index.js';

/** Stresses at one place of a wall; pulled is positive, pressed negative. */
export interface WallStress {
  /** Stress around [Pa]. */
  readonly hoop: Pressure;
  /** Stress along the radius [Pa]. */
  readonly radial: Pressure;
  /** Pull of a plain rod that shears it as much, by Tresca; never negative [Pa]. */
  readonly equivalent: Pressure;
}

/** Stresses of a hub under a pressure in its bore. */
export function hubStresses(pressure: Pressure, d: Length, outside: Length) {
  const share = (d / outside) ** 2;
  return {
    hubBore: stressOf((pressure * (1 + share)) / (1 - share), -pressure),
    hubOutside: stressOf((pressure * 2 * share) / (1 - share), 0),
  };
}

/** Stresses of a shaft under a pressure from outside. */
export function shaftStresses(
  pressure: Pressure,
  d: Length,
  bore: Length | undefined,
): { readonly shaftSurface: WallStress; readonly shaftBore?: WallStress } {
  const share = ((bore ?? 0) / d) ** 2;
  const shaftSurface = stressOf((-pressure * (1 + share)) / (1 - share), -pressure);
  if (share === 0) return { shaftSurface };
  return { shaftSurface, shaftBore: stressOf((-pressure * 2) / (1 - share), 0) };
}

/** Nothing pulls along the axis, so its stress is none. */
function stressOf(hoop: number, radial: number): WallStress {
  const most = Math.max(hoop, radial, 0);
  const least = Math.min(hoop, radial, 0);
  return {
    hoop: (hoop + 0) as Pressure,
    radial: (radial + 0) as Pressure,
    equivalent: (most - least) as Pressure,
  };
}
