/**
 * A second solution of the Reynolds equation, which shares no code and no method with the library. Vogelpohl's
 * u = h^(3/2) p turns it into u_tt + (D/L)² u_zz - g u = -6 e sin t / h^(3/2) with g = (h^(3/2))″ / h^(3/2).
 * Plain differences on an even grid, u never below zero, relaxed until what is left of the equations is small.
 */
export interface PlainFilm {
  readonly sommerfeld: number;
  /** Degrees. */
  readonly attitude: number;
  readonly friction: number;
  readonly flow: number;
  readonly sideFlow: number;
  readonly pressureRatio: number;
  /** Degrees. */
  readonly peakAngle: number;
  /** Degrees. */
  readonly ruptureAngle: number;
}

/** What is summed over a film, in units in which pressure is that over µω(r/c)². */
interface Sums {
  readonly towards: number;
  readonly across: number;
  readonly inflow: number;
  readonly outflow: number;
  readonly peak: number;
  readonly peakAt: number;
  readonly ruptureAt: number;
}

/** A bearing of finite length, from two grids of which the second is twice as fine. */
export function relaxedFilm(eccentricity: number, slenderness: number): PlainFilm {
  const places = slenderness > 2 ? 24 : 12;
  const coarse = sumsOf(relax(eccentricity, slenderness, 180, places));
  const fine = sumsOf(relax(eccentricity, slenderness, 360, 2 * places));
  const beyond = (key: keyof Sums) => fine[key] + (fine[key] - coarse[key]) / 3;
  return numbersOf(eccentricity, {
    towards: beyond('towards'),
    across: beyond('across'),
    inflow: beyond('inflow'),
    outflow: beyond('outflow'),
    peak: beyond('peak'),
    peakAt: beyond('peakAt'),
    ruptureAt: fine.ruptureAt,
  });
}

/** An endlessly long bearing, by Simpson's rule over the closed form for pressure in Sommerfeld's angle. */
export function endlessFilm(e: number): PlainFilm {
  const s = Math.sqrt(1 - e * e);
  const pressure = (y: number, end: number) => {
    const twice = (1 + (e * e) / 2) * y - 2 * e * Math.sin(y) + ((e * e) / 4) * Math.sin(2 * y);
    return (6 / s ** 3) * (y - e * Math.sin(y) - twice / (1 - e * Math.cos(end)));
  };
  // The film ends where its pressure comes to zero with its slope, beyond the narrowest gap.
  let [low, high] = [Math.PI, 1.5 * Math.PI];
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (pressure(middle, middle) > 0) low = middle;
    else high = middle;
  }
  const end = (low + high) / 2;
  const steps = 4000;
  let towards = 0;
  let across = 0;
  for (let i = 0; i <= steps; i++) {
    const y = (i * end) / steps;
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    const wide = 1 - e * Math.cos(y);
    const push = (weight * end * pressure(y, end) * s) / (3 * steps * wide);
    towards -= (push * (Math.cos(y) - e)) / wide;
    across += (push * s * Math.sin(y)) / wide;
  }
  const angle = Math.acos((Math.cos(end) - e) / (1 - e * Math.cos(end)));
  return numbersOf(e, {
    towards,
    across,
    inflow: (s * s) / (1 - e * Math.cos(end)),
    outflow: 0,
    peak: pressure(2 * Math.PI - end, end),
    peakAt: angle,
    ruptureAt: 2 * Math.PI - angle,
  });
}

function numbersOf(e: number, sums: Sums): PlainFilm {
  const load = Math.hypot(sums.towards, sums.across);
  const attitude = Math.atan2(sums.across, sums.towards);
  const degrees = (angle: number) => (angle * 180) / Math.PI;
  const drag = (2 * Math.PI) / Math.sqrt(1 - e * e) + (e / 2) * sums.across;
  return {
    sommerfeld: 1 / (Math.PI * load),
    attitude: degrees(attitude),
    friction: drag / load,
    flow: Math.PI * sums.inflow,
    sideFlow: sums.outflow / sums.inflow,
    pressureRatio: load / (2 * sums.peak),
    peakAngle: degrees(sums.peakAt + attitude) - 180,
    ruptureAngle: degrees(sums.ruptureAt + attitude) - 180,
  };
}

/** u on a grid: rows around from the widest gap, places along from midway to the end. */
interface Relaxed {
  readonly e: number;
  readonly slenderness: number;
  readonly around: number;
  readonly along: number;
  readonly u: Float64Array;
}

function relax(e: number, slenderness: number, around: number, along: number): Relaxed {
  const step = (2 * Math.PI) / around;
  const row = along + 1;
  const u = new Float64Array((around + 1) * row);
  const a = 1 / step ** 2;
  const b = (along / slenderness) ** 2;
  const gap = (i: number) => 1 + e * Math.cos(i * step);
  const stiff = Float64Array.from({ length: around + 1 }, (_, i) => {
    const [slope, bend] = [-e * Math.sin(i * step), -e * Math.cos(i * step)];
    return 2 * a + 2 * b + 0.75 * (slope / gap(i)) ** 2 + (1.5 * bend) / gap(i);
  });
  const drive = Float64Array.from(
    { length: around + 1 },
    (_, i) => (6 * e * Math.sin(i * step)) / gap(i) ** 1.5,
  );
  const rho = 1 - (0.8 + 2.5 / slenderness ** 2) / (2 * a + 2 * b);
  const omega = 2 / (1 + Math.sqrt(1 - rho * rho));
  const allowed = 1e-7 * Math.max(...drive);
  const at = (place: number) => u[place] as number;
  for (let sweep = 0; sweep < 20_000; sweep++) {
    let left = 0;
    for (let i = 1; i < around; i++) {
      const own = stiff[i] as number;
      for (let j = 0; j < along; j++) {
        const place = i * row + j;
        const beside = at(j === 0 ? place + 1 : place - 1) + at(place + 1);
        const push =
          a * (at(place - row) + at(place + row)) +
          b * beside +
          (drive[i] as number) -
          own * at(place);
        left = Math.max(left, at(place) > 0 ? Math.abs(push) : push);
        u[place] = Math.max(0, at(place) + (omega * push) / own);
      }
    }
    if (left < allowed) return { e, slenderness, around, along, u };
  }
  throw new Error(`Not solved at e ${e}, L/D ${slenderness}.`);
}

/** Slope at the first of five places one apart. */
const slopeOf = (y: (i: number) => number): number =>
  (-25 * y(0) + 48 * y(1) - 36 * y(2) + 16 * y(3) - 3 * y(4)) / 12;

function sumsOf({ e, slenderness, around, along, u }: Relaxed): Sums {
  const step = (2 * Math.PI) / around;
  const gap = (i: number) => 1 + e * Math.cos(i * step);
  const p = (i: number, j: number) => (u[i * (along + 1) + j] as number) / gap(i) ** 1.5;
  const simpson = (y: (j: number) => number) => {
    let sum = y(0) + y(along);
    for (let j = 1; j < along; j++) sum += (j % 2 === 1 ? 4 : 2) * y(j);
    return sum / (3 * along);
  };
  let [towards, across, outflow, top, last] = [0, 0, 0, 1, 1];
  for (let i = 1; i < around; i++) {
    const mean = simpson((j) => p(i, j));
    towards -= mean * Math.cos(i * step) * step;
    across += mean * Math.sin(i * step) * step;
    outflow += gap(i) ** 3 * slopeOf((k) => p(i, along - k)) * along * step;
    if (p(i, 0) > p(top, 0)) top = i;
    if (p(i, 0) > 0) last = i;
  }
  const backflow = simpson((j) => slopeOf((k) => p(k, j)) / step);
  const [before, highest, after] = [p(top - 1, 0), p(top, 0), p(top + 1, 0)];
  const off = (before - after) / (2 * (before - 2 * highest + after));
  // Pressure dies out as the square of the distance to where the film ends.
  const [near, nearer] = [Math.sqrt(p(last - 3, 0)), Math.sqrt(p(last - 1, 0))];
  return {
    towards,
    across,
    inflow: 1 + e - ((1 + e) ** 3 / 6) * backflow,
    outflow: outflow / (6 * slenderness ** 2),
    peak: highest - ((before - after) * off) / 4,
    peakAt: (top + off) * step,
    ruptureAt: (last - 1 + (2 * nearer) / (near - nearer)) * step,
  };
}
