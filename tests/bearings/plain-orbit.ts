import type { BigEnd } from 'crankwright';

/** What the plain way finds of an orbit, in SI units and degrees. */
export interface PlainOrbit {
  readonly leastFilm: number;
  readonly atDegrees: number;
  readonly onShellDegrees: number;
  readonly greatestApproach: number;
  readonly shareThinner: number;
}

/** Booker's short bearing, along and across the load. */
const shortBearing = (x: number, y: number, lengthToDiameter: number): [number, number] => [
  (1 - x) ** 2.5 / Math.PI / lengthToDiameter ** 2,
  (-4 * y * (1 - x) ** 1.5) / Math.PI ** 2 / lengthToDiameter ** 2,
];

/**
 * The orbit of a big end again, the plain way and by code of its own: in the frame of the cylinder, where load and
 * rod turn, with straight lines between the loads, in time, and by ten thousands of even steps of
 * the classic Runge and Kutta formula. The steps must be short against the fastest drift, or it flies apart.
 */
export function plainOrbit(
  bigEnd: BigEnd,
  stepsInACycle: number,
  thinnerThan = 0,
  mobility = shortBearing,
): PlainOrbit {
  const { journal: D, length: L, clearance, viscosity, loads } = bigEnd;
  const radial = clearance / 2;
  const omega = loads.speed;
  const list = loads.loads;
  const cycle = 4 * Math.PI;
  const gap = cycle / list.length;
  const at = (angle: number, pick: (load: (typeof list)[number]) => number) => {
    const place = angle / gap;
    const i = Math.floor(place);
    const from = pick(list[i % list.length] as (typeof list)[number]);
    const to = pick(list[(i + 1) % list.length] as (typeof list)[number]);
    return from + (place - i) * (to - from);
  };
  const lean = (angle: number) => at(angle, ({ rodAngle }) => rodAngle);
  /** Speed of the journal's centre in the frame of the cylinder [m/s]; the axes are up and towards the turning crank. */
  const speedAt = (angle: number, [x, y]: readonly [number, number]): [number, number] => {
    const turn = -lean(angle);
    const along = at(angle, (load) => load.along);
    const across = at(angle, (load) => load.across);
    const force = [
      along * Math.cos(turn) - across * Math.sin(turn),
      along * Math.sin(turn) + across * Math.cos(turn),
    ] as const;
    const load = Math.hypot(...force);
    const direction = Math.atan2(force[1], force[0]);
    const offset = Math.atan2(y, x) - direction;
    const eccentricity = Math.hypot(x, y) / radial;
    const towards = eccentricity * Math.cos(offset);
    const beside = eccentricity * Math.sin(offset);
    const scale = (load * (2 * radial) ** 2 * radial) / (viscosity * L * D * D ** 2);
    const [ahead, aside] = mobility(towards, beside, L / D).map((one) => one * scale) as [
      number,
      number,
    ];
    const rodTurning = (-(lean(angle + 1e-4) - lean(angle - 1e-4 + cycle)) / 2e-4) * omega;
    const mean = (omega + rodTurning) / 2;
    return [
      ahead * Math.cos(direction) - aside * Math.sin(direction) - mean * y,
      ahead * Math.sin(direction) + aside * Math.cos(direction) + mean * x,
    ];
  };
  const step = cycle / stepsInACycle;
  const time = step / omega;
  let place: [number, number] = [0, 0];
  let least = { film: radial, angle: 0, place };
  let fastest = 0;
  let thinner = 0;
  for (let cycles = 0; cycles < 3; cycles++) {
    least = { film: radial, angle: 0, place };
    fastest = 0;
    thinner = 0;
    for (let i = 0; i < stepsInACycle; i++) {
      const angle = i * step;
      const moved = (by: readonly [number, number], share: number): [number, number] => [
        place[0] + share * time * by[0],
        place[1] + share * time * by[1],
      ];
      const a = speedAt(angle, place);
      const b = speedAt(angle + step / 2, moved(a, 0.5));
      const c = speedAt(angle + step / 2, moved(b, 0.5));
      const d = speedAt(angle + step, moved(c, 1));
      const before = Math.hypot(...place);
      place = [
        place[0] + (time / 6) * (a[0] + 2 * b[0] + 2 * c[0] + d[0]),
        place[1] + (time / 6) * (a[1] + 2 * b[1] + 2 * c[1] + d[1]),
      ];
      const film = radial - Math.hypot(...place);
      if (film < least.film) least = { film, angle: angle + step, place };
      if (film < thinnerThan) thinner++;
      fastest = Math.max(fastest, (Math.hypot(...place) - before) / time);
    }
  }
  const degrees = 180 / Math.PI;
  const onShell = Math.atan2(least.place[1], least.place[0]) + lean(least.angle);
  return {
    leastFilm: least.film,
    atDegrees: (least.angle * degrees) % 720,
    onShellDegrees: onShell * degrees,
    greatestApproach: fastest,
    shareThinner: thinner / stepsInACycle,
  };
}
