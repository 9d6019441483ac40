import { degree, inch, ratio, thou, valueIn } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { describeTiming } from '../../src/assembly/describe-timing.js';
import { timingSetting } from '../../src/assembly/timing-setting.js';
import type { TimingData } from '../../src/reading/index.js';

const crank = { stroke: inch(3.25), rodLength: inch(6) };
/** A magneto at half speed, held back by 12°: 24° at the crank, so that it starts 2° after the top. */
const spark = { advance: degree(22), speedRatio: ratio(0.5), lag: degree(12) };
const valves: NonNullable<TimingData['valves']> = {
  inletOpens: { angle: degree(5), before: 'top' },
  inletCloses: { angle: degree(45), after: 'bottom' },
};
const words = (data: TimingData, train: typeof crank | undefined = crank) =>
  describeTiming(timingSetting(data, train), { units: 'inch' });

describe('timing', () => {
  it('of which nothing is known has the top dead centre, and says what is not known', () => {
    const { card, ...rest } = timingSetting({}, undefined);
    expect(rest).toEqual({});
    expect(card.rows.map(({ event }) => event)).toEqual(['top dead centre']);
    expect(card.notGiven).toEqual(['rim diameter', 'stroke and rod']);
    expect(words({}, undefined).notes.join('\n')).toContain(
      'not known: spark starting; spark running',
    );
  });

  it('has its events in degrees alone without rim and rod', () => {
    const { card } = timingSetting({ spark, valves }, undefined);
    const row = card.rows.find(({ event }) => event === 'inlet closes');
    expect(row).toMatchObject({ side: 'after', centre: 'bottom' });
    expect(row && valueIn(row.angle, degree)).toBeCloseTo(45, 9);
    expect(row?.rim).toBeUndefined();
    expect(row?.travel).toBeUndefined();
  });

  it('has them on the rim and as travel with both', () => {
    const { card } = timingSetting({ rimDiameter: inch(13), spark, valves }, crank);
    const row = card.rows.find(({ event }) => event === 'inlet closes');
    // π * 13 * 45 / 360 = 5.10509 in around, 13 * sin(22.5°) = 4.97489 in across.
    expect(row?.rim && valueIn(row.rim.arc, inch)).toBeCloseTo(5.10509, 5);
    expect(row?.rim && valueIn(row.rim.chord, inch)).toBeCloseTo(4.97488, 4);
    // 225° past the top: 1.625 * (1 - cos 225°) + 6 * (1 - cos asin(1.625 / 6 * sin 225°)) = 2.88510 in.
    expect(row?.travel && valueIn(row.travel, inch)).toBeCloseTo(2.8851, 4);
  });

  it('has the spark where the coupling and the lever let it come', () => {
    const starting = (more: object) => {
      const { card } = timingSetting({ spark: { ...spark, ...more } }, crank);
      return card.starting && valueIn(card.starting.value, degree);
    };
    // 22 - 12 / 0.5 = -2; with a lever of 3° besides -5.
    expect(starting({})).toBeCloseTo(-2, 9);
    expect(starting({ retard: degree(3) })).toBeCloseTo(-5, 9);
  });

  it('is judged by the limits of the file, else by the rule of thumb', () => {
    const by = (more: object) =>
      timingSetting({ spark: { ...spark, ...more } }, crank).card.starting;
    expect(by({})).toMatchObject({ verdict: 'within', basis: { kind: 'common practice' } });
    const starting = { min: degree(-1), max: degree(3), source: 'sheet 5' };
    expect(by({ starting })).toMatchObject({
      verdict: 'below',
      basis: { kind: 'specified', by: 'sheet 5' },
    });
  });

  it('says whose figures these are', () => {
    expect(timingSetting({ source: 'sheet 5' }, undefined).card.basis).toEqual({
      kind: 'specified',
      by: 'sheet 5',
    });
    expect(timingSetting({}, undefined).card.basis).toEqual({ kind: 'specified' });
    expect(words({ spark, source: 'sheet 5' }).notes.at(-1)).toBe(
      'spark and valves are timed by these figures (specified by sheet 5)',
    );
  });

  it('tells what a tooth out of mesh does', () => {
    // 360° / 22 = 16.36°.
    const { tooth } = timingSetting({ gears: { crankTeeth: 22, camTeeth: 44 } }, undefined);
    expect(tooth && valueIn(tooth.atCrank, degree)).toBeCloseTo(16.3636, 4);
    expect(words({ gears: { crankTeeth: 22, camTeeth: 44 } }).notes[0]).toBe(
      'a timing gear one tooth out of mesh puts the valves out by 16.4 deg of the crank',
    );
  });

  it('has the gaps with whose they are, those of the points before the spark', () => {
    const pointsGap = { min: thou(12), max: thou(15), source: 'sheet 5' };
    const plugGap = { max: thou(28) };
    const setting = timingSetting({ pointsGap, plugGap }, undefined);
    expect(setting.pointsGap?.limits).toEqual({ min: thou(12), max: thou(15) });
    expect(setting.plugGap?.limits).toEqual({ max: thou(28) });
    const { notes } = words({ spark, pointsGap, plugGap });
    const [points, plug] = [
      'gap of the points 0.0120 to 0.0150 in (specified by sheet 5): set it before the spark is timed, as it moves the spark',
      'gap of the spark plug at most 0.0280 in (specified)',
    ];
    expect(notes).toContain(points);
    expect(notes).toContain(plug);
    expect(notes.indexOf(points)).toBeLessThan(
      notes.findIndex((note) => note.startsWith('spark, running')),
    );
  });
});

describe('what may hurt', () => {
  it('is a starting handle thrown back, and stands apart', () => {
    // 22° before the top, held back by nothing.
    expect(words({ spark: { ...spark, lag: degree(0) } }).cautions).toEqual([
      'The spark for starting comes too early, and throws the starting handle back.',
    ]);
    // 22 - 2 * 11 = 0, within 1°.
    expect(words({ spark: { ...spark, lag: degree(11), within: degree(1) } }).cautions).toEqual([
      'The spark for starting may come too early, and throw the starting handle back.',
    ]);
    expect(words({ spark }).cautions).toEqual([]);
  });

  it('is a spark of which nobody knows what holds it back', () => {
    const { lag: _, ...bare } = spark;
    expect(words({ spark: bare }).cautions).toEqual([
      'The spark for starting may come too early, and throw the starting handle back.',
      'Where the spark comes for starting is not known: if it comes before the top, it throws the starting handle back.',
    ]);
    expect(words({ valves }).cautions).toHaveLength(1);
  });

  it('is a magneto that is not earthed: that is a thing to do', () => {
    expect(words({ spark }).notes).toContain(
      'before the crank is turned by hand: ignition off, magneto lead earthed, plugs out',
    );
  });
});
