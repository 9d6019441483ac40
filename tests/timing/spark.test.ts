import {
  type Angle,
  degree,
  describeTimingCard,
  inch,
  pistonTravel,
  pointsDwell,
  ratio,
  rimDistance,
  rotorEdgeAngle,
  sparkLaterByDwell,
  sparkSetting,
  timingCard,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const inDegrees = (angle: Angle | undefined) => angle && valueIn(angle, degree);
const spark = { advance: degree(20), speedRatio: ratio(0.5), lag: degree(12) };

describe('spark', () => {
  it('comes later for starting by the lag at the crank and by the lever', () => {
    const setting = sparkSetting({ ...spark, retard: degree(5) });
    expect(inDegrees(setting.heldBack)).toBeCloseTo(29, 9);
    expect(inDegrees(setting.starting)).toBeCloseTo(-9, 9);
    expect(setting.running).toBe(spark.advance);
  });

  it('lags less at the crank the faster the magneto turns', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.25, max: 4, noNaN: true }), (speed) => {
        const { heldBack } = sparkSetting({ ...spark, speedRatio: ratio(speed) });
        expect(heldBack * speed).toBeCloseTo(spark.lag, 12);
      }),
    );
  });

  it('is not early by the last digit of a spark at the top', () => {
    for (const speed of [0.5, 0.75, 1, 1.5, 2, 3]) {
      for (let advance = 1; advance <= 25; advance++) {
        const [lag, speedRatio] = [degree(advance * speed), ratio(speed)];
        const { cautions } = sparkSetting({ advance: degree(advance), lag, speedRatio });
        expect([speed, advance, cautions]).toEqual([speed, advance, []]);
      }
    }
  });

  it('lets the limits of the maker win', () => {
    const early = { ...spark, lag: degree(8) };
    expect(sparkSetting(early).cautions).toEqual(['kicks back']);
    const allowed = sparkSetting({ ...early, limits: { max: degree(5) } });
    expect(allowed.cautions).toEqual([]);
    expect(allowed.finding.basis).toEqual({ kind: 'specified' });
    // A least alone says nothing of what is too early.
    expect(sparkSetting({ ...early, limits: { min: degree(0) } }).cautions).toEqual(['kicks back']);
  });
});

describe('points', () => {
  it('turn an angle into a share and back, whatever the lobes', () => {
    const any = fc.record({
      lobes: fc.integer({ min: 1, max: 12 }),
      share: fc.double({ min: 0.1, max: 0.95, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ lobes, share }) => {
        const { dwell, open } = pointsDwell({ lobes, share: ratio(share) });
        expect(dwell + open).toBeCloseTo((2 * Math.PI) / lobes, 12);
        expect(pointsDwell({ lobes, dwell }).share).toBeCloseTo(share, 12);
      }),
    );
  });

  it('refuses a dwell as long as the turn from one opening to the next', () => {
    const refused = refusal(() => pointsDwell({ lobes: 4, dwell: degree(90) }));
    expect(refused.parameter).toBe('dwell');
  });

  it('move the spark earlier by less dwell, and back by as much', () => {
    const [from, to, speedRatio] = [degree(50), degree(44), ratio(1)];
    expect(inDegrees(sparkLaterByDwell({ from, to, speedRatio }))).toBeCloseTo(-3, 9);
    expect(sparkLaterByDwell({ from: to, to: from, speedRatio })).toBe(
      -sparkLaterByDwell({ from, to, speedRatio }),
    );
  });
});

describe('the edge of a rotor', () => {
  it('gives the distance of an angle back, straight across', () => {
    const diameter = inch(1.75);
    const { chord } = rimDistance({ diameter, angle: degree(10) });
    const edge = { rotorDiameter: diameter, edgeDistance: chord, speedRatio: ratio(0.5) };
    expect(inDegrees(rotorEdgeAngle(edge).atMagneto)).toBeCloseTo(10, 9);
    expect(inDegrees(rotorEdgeAngle(edge).atCrank)).toBeCloseTo(20, 9);
  });
});

describe('the timing card', () => {
  const crank = { stroke: inch(3.25), rodLength: inch(6) };
  const whole = timingCard({
    rimDiameter: inch(10),
    crank,
    spark: { ...spark, within: degree(2) },
    valves: {
      inletOpens: { angle: degree(10), before: 'top' },
      inletCloses: { angle: degree(40), after: 'bottom' },
      exhaustOpens: { angle: degree(45), before: 'bottom' },
      exhaustCloses: { angle: degree(0), after: 'top' },
      within: degree(1),
    },
  });

  it('lists every event as the functions of the room give it', () => {
    expect(whole.rows.map(({ event, side, centre }) => [event, side, centre])).toEqual([
      ['top dead centre', 'at', 'top'],
      ['spark, starting', 'after', 'top'],
      ['spark, running', 'before', 'top'],
      ['inlet opens', 'before', 'top'],
      ['inlet closes', 'after', 'bottom'],
      ['exhaust opens', 'before', 'bottom'],
      ['exhaust closes', 'at', 'top'],
    ]);
    expect(whole.notKnown).toEqual([]);
    expect(whole.notGiven).toEqual([]);
    const closes = whole.rows.find(({ event }) => event === 'inlet closes');
    const turn = { diameter: inch(10), angle: degree(40) };
    expect(closes?.rim?.arc).toBeCloseTo(rimDistance(turn).arc, 12);
    // 40 degrees after the bottom is 140 from the top.
    expect(closes?.travel).toBeCloseTo(pistonTravel({ ...crank, angle: degree(140) }), 12);
  });

  it('is described in the units asked for, what to mind first', () => {
    const lines = describeTimingCard(whole, { units: 'inch' });
    expect(lines[0]).toBe(
      'before the crank is turned by hand: ignition off, magneto lead earthed, plugs out',
    );
    expect(lines).toContain(
      'exhaust closes: at top dead centre ± 1.0 deg; piston 0.000 in below the top',
    );
    expect(describeTimingCard(whole, { units: 'metric' }).join('\n')).toContain('mm along the rim');
  });

  it('lists what is not known as not known', () => {
    const bare = timingCard({});
    expect(bare.rows.map(({ event }) => event)).toEqual(['top dead centre']);
    expect(bare.cautions).toEqual(['earth the magneto', 'starting spark not known']);
    expect(describeTimingCard(bare, { units: 'inch' })).toEqual([
      'before the crank is turned by hand: ignition off, magneto lead earthed, plugs out',
      'where the spark comes for starting is not known: if it comes before the top, it throws the starting handle back',
      'top dead centre: the top mark; the bottom mark is half a turn from it',
      'not known: spark starting; spark running; inlet opens; inlet closes; exhaust opens; exhaust closes',
      'no distances on the rim: its diameter was not given',
      'no travel of the piston: stroke and rod were not given',
      'whose figures: specified',
    ]);
  });
});
