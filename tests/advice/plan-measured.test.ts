import { readFileSync } from 'node:fs';
import { inch, type Limits, type Span } from 'crankwright';
import { buildSheet } from 'crankwright/build-sheet';
import { type Plan, planBuilds, planReport } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';

const text = (name: string) => readFileSync(`examples/${name}`, 'utf8');
const record = JSON.parse(text('pump-set-shed.json')) as object;

/** The shed of the pump set, read with a bore gauge that is this good, in thou. The depth gauge reads half a thou. */
const shedOf = (boreGauge: number) =>
  readShed(
    JSON.stringify({
      ...record,
      instruments: {
        micrometer: '0.0001 in',
        boreGauge: `${boreGauge / 1000} in`,
        wallGauge: '0.0001 in',
        depthGauge: '0.0005 in',
      },
    }),
    text('pump-set-shed-readings.csv'),
  );

const flowing = (printed: string) => printed.replace(/\s+/g, ' ');

/** How far the clearances that are known worst stay inside their limits, in thou. */
const oilMargins = ({ builds }: Plan) =>
  builds.flatMap(({ bearings }) =>
    bearings.map(({ clearance, finding }) => roomIn(clearance, finding.limits) / inch(0.001)),
  );

const roomIn = ({ min, max }: Span<number>, limits: Limits<number>) =>
  Math.min(min - (limits.min ?? -Infinity), (limits.max ?? Infinity) - max);

describe('a plan that rests on a margin of 0.4 thou', () => {
  it('is safe where the clearance is known to 0.3 thou', async () => {
    const plan = await planBuilds(shedOf(0.2));
    expect((plan.smallestMargin ?? Number.NaN) / inch(0.001)).toBeCloseTo(0.4, 9);
    // √(0.2² + (2 * 0.1)² + 0.1²) = 0.3 thou of oil clearance, which is two standard uncertainties.
    const { finding } = plan.builds[0]?.bearings[3] ?? {};
    expect((finding?.uncertainty ?? Number.NaN) / inch(0.001)).toBeCloseTo(0.3, 5);
    expect(plan.near).toEqual([]);
    // Beyond 0.4 / 0.15 = 2.667 lies 0.00383, of two bearings; beyond 0.5 / 0.15 = 3.333 lies 0.00043, of two;
    // beyond 0.7 / 0.15 = 4.67 lies nothing that counts. The end plays are 2 and 3 thou inside, known to
    // √(2 * 0.5² + 0.1²) = 0.714: beyond 2 / 0.357 = 5.6 lies nothing either. Together 0.0085.
    expect(plan.allHold).toBeCloseTo(1 - 0.0085, 4);
    expect(flowing(planReport(plan))).toContain(
      'All the clearances hold together with a chance of 0.991 or more',
    );
  });

  it('asks for one more reading before money is spent where the bore gauge is worse', async () => {
    const [fine, coarse] = [await planBuilds(shedOf(0.2)), await planBuilds(shedOf(0.4))];
    expect(coarse.builds.length).toBe(fine.builds.length);
    expect(coarse.near.length).toBeGreaterThan(fine.near.length);
    // √(0.4² + 0.2² + 0.1²) / 2 = 0.2291: beyond 0.4 / 0.2291 = 1.746 lies 0.0404.
    const worst = Math.min(...coarse.near.map(({ holds }) => holds));
    expect(worst).toBeCloseTo(1 - 0.0404, 3);
    // The engine that 342.50 rests on comes first, though another clearance is less sure.
    expect(coarse.near[0]?.engine).toBe('block B');
    const printed = planReport(coarse);
    const at = (heading: string) => printed.indexOf(`\n${heading}\n`);
    expect(at('MEASURE ONCE MORE')).toBeGreaterThan(0);
    expect(at('MEASURE ONCE MORE')).toBeLessThan(at('TO BUY'));
    expect(at('MEASURE ONCE MORE')).toBeLessThan(at('MACHINING ORDERS'));
    const sheet = buildSheet(coarse);
    expect(sheet.indexOf('## Measure once more')).toBeGreaterThan(0);
    expect(sheet.indexOf('## Measure once more')).toBeLessThan(sheet.indexOf('## Buy'));
  });

  it('takes other rods, for more money, where 0.4 thou is not enough to be 95 % sure', async () => {
    // √(0.45² + 0.2² + 0.1²) / 2 = 0.2512 thou, and 1.645 of it is 0.413.
    const shed = shedOf(0.45);
    const [asRead, sure] = [await planBuilds(shed), await planBuilds(shed, { holdsWith: 0.95 })];
    expect(Math.min(...oilMargins(asRead))).toBeCloseTo(0.4, 9);
    expect(Math.min(...oilMargins(sure))).toBeGreaterThan(0.413);
    expect(sure.builds.length).toBe(asRead.builds.length);
    expect(sure.cost.amount).toBeGreaterThan(asRead.cost.amount);
    expect((sure.smallestMargin ?? Number.NaN) / inch(0.001)).toBeCloseTo(0.5 - 0.4133, 3);
    const page = flowing(planReport(sure));
    expect(page).toContain('inside its limits after the guard band');
    expect(page).toContain('Every clearance holds with a chance of 0.95 or more');
  });

  it('builds nothing rather than an engine that it cannot show to hold', async () => {
    // √(0.6² + 0.2² + 0.1²) / 2 = 0.32 thou, and 1.645 of it is 0.527: more than any rods leave.
    const plan = await planBuilds(shedOf(0.6), { holdsWith: 0.95 });
    expect(plan.builds).toEqual([]);
    expect(flowing(planReport(plan))).toContain(
      'no choice of parts makes a complete engine whose clearances each hold',
    );
  });
});
