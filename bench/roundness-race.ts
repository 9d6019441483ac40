import highsLoader from 'highs';
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { mustAgree, raceBeside } from './beside.js';
import { roundness } from './built.js';
import type { Section } from './report.js';

type Points = Parameters<typeof roundness>[0];

const COUNT = 1000;
const RADIUS = 0.025;

/** A journal with an oval, three lobes and some roughness, half a micron off the datum. */
const points = Array.from({ length: COUNT }, (_, i) => {
  const angle = (2 * Math.PI * i) / COUNT;
  const rough = 3e-7 * Math.sin(1e4 * Math.sin(1 + 7 * i));
  const radius = RADIUS + 2e-6 * Math.cos(2 * angle) + 1e-6 * Math.cos(3 * angle + 1) + rough;
  return { x: radius * Math.cos(angle) + 5e-7, y: radius * Math.sin(angle) };
}) as unknown as Points;
const microns = points.map(({ x, y }) => [1e6 * x, 1e6 * y] as const);
const OURS = {
  name: 'crankwright  roundness(points), both circles',
  pass: () => roundness(points).leastSquares.radius as number,
};

/** The circles of a thousand points, each beside a general solver that is given the same problem. */
export async function raceRoundness(): Promise<readonly Section[]> {
  const found = roundness(points);
  if (found.outcome !== 'determined') throw new Error(`the journal is ${found.outcome}`);
  const squares = { name: 'ml-levenberg-marquardt, least squares alone', pass: byMarquardt };
  mustAgree(squares.name, squares.pass(), found.leastSquares.radius, 1e-9);
  const highs = await highsLoader();
  const zone = {
    name: 'highs, minimum zone alone, as linear programs',
    pass: () => byPrograms(highs),
  };
  mustAgree(zone.name, zone.pass(), found.minimumZone.radialOutOfRound, 1e-4);
  const title = (circle: string) => `roundness of ${COUNT} points: ${circle}, to the same digits`;
  return [
    raceBeside({
      title: title('the least-squares circle'),
      calls: 1,
      ours: OURS,
      peers: [squares],
      target: { name: 'both circles', atMost: 1 },
    }),
    raceBeside({
      title: title('the minimum zone'),
      calls: 1,
      ours: OURS,
      peers: [zone],
      target: { name: 'both circles', atMost: 0.2 },
    }),
  ];
}

/** The radius, by a general fit that is told the distance of each point from a centre, in microns. */
function byMarquardt(): number {
  const { parameterValues } = levenbergMarquardt(
    { x: microns.map((_, i) => i), y: microns.map(() => 0) },
    ([x = 0, y = 0, radius = 0]) =>
      (i) => {
        const [px, py] = microns[i] as readonly [number, number];
        return Math.hypot(px - x, py - y) - radius;
      },
    {
      initialValues: [0, 0, 1e6 * RADIUS],
      damping: 1e-6,
      gradientDifference: 0.1,
      centralDifference: true,
      errorTolerance: 1e-9,
      maxIterations: 4,
    },
  );
  return (parameterValues[2] ?? Number.NaN) / 1e6;
}

/** The width of the narrowest zone: a linear program about each centre, until the centre stays. */
function byPrograms(highs: Awaited<ReturnType<typeof highsLoader>>): number {
  let [x, y, width] = [0, 0, 0];
  for (let step = 0; step < 2; step++) {
    const rows = points.flatMap((point, i) => {
      const [dx, dy] = [point.x - x, point.y - y];
      const distance = Math.hypot(dx, dy);
      const excess = 1e6 * (distance - RADIUS);
      const wave = `r ${signed(dx / distance)} a ${signed(dy / distance)} b`;
      return [
        ` u${i}: h + ${wave} >= ${excess.toFixed(9)}`,
        ` l${i}: - h + ${wave} <= ${excess.toFixed(9)}`,
      ];
    });
    const program = `Minimize\n obj: h\nSubject To\n${rows.join('\n')}\nBounds\n r free\n a free\n b free\nEnd\n`;
    const solution = highs.solve(program);
    const of = (name: string) => (solution.Columns[name] as { readonly Primal: number }).Primal;
    x += of('a') / 1e6;
    y += of('b') / 1e6;
    width = (2 * solution.ObjectiveValue) / 1e6;
  }
  return width;
}

const signed = (value: number) => `${value < 0 ? '-' : '+'} ${Math.abs(value).toFixed(12)}`;
