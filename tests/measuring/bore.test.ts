import { boreShape, format, inch, journalShape, type Length, type Span, thou } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { grid, someReadings } from './readings.js';

const land = grid([0.1], [0, 90], [[3.0001, 2.9999]]);
const travelled = grid(
  [0.5, 3],
  [0, 90],
  [
    [3.006, 3.008],
    [3.001, 3.0015],
  ],
);
const ringTravel = { min: inch(0.3), max: inch(3.5) };

describe('boreShape', () => {
  it('keeps the unworn land apart from the ring travel', () => {
    const shape = boreShape([...land, ...travelled], { ringTravel });
    expect(format(shape.outOfRound, inch)).toBe('0.0020 in');
    expect(format(shape.taper, inch)).toBe('0.0065 in');
    expect(shape.unworn && format(shape.unworn, inch)).toBe('3.0000 in');
    expect(shape.wear && format(shape.wear, inch)).toBe('0.0080 in');
    expect(shape.stations).toHaveLength(2);
    expect(format(shape.smallest, inch)).toBe('3.0010 in');
  });

  it('is the shape of a journal where no ring travel is told', () => {
    expect(boreShape(travelled)).toEqual(journalShape(travelled));
  });

  it('knows no wear where no land was read', () => {
    const shape = boreShape(travelled, { ringTravel });
    expect(shape).toEqual(journalShape(travelled));
    expect(shape).not.toHaveProperty('wear');
  });

  it('counts the ends of the travel to it, to the nanometre', () => {
    const near = (by: number) => ({
      min: (inch(0.5) + by) as Length,
      max: (inch(3) - by) as Length,
    });
    expect(boreShape(travelled, { ringTravel: near(0) })).not.toHaveProperty('unworn');
    expect(boreShape(travelled, { ringTravel: near(0.9e-9) })).not.toHaveProperty('unworn');
    expect(refusal(() => boreShape(travelled, { ringTravel: near(1e-6) })).parameter).toBe(
      'options.ringTravel',
    );
  });

  it('takes the land below the travel for unworn too', () => {
    const below = grid([4], [0, 90], [[3, 3]]);
    const shape = boreShape([...travelled, ...below], { ringTravel });
    expect(shape.wear).toBeCloseTo(thou(8), 12);
  });

  it('takes one reading of the land alone, of which no shape is asked', () => {
    const shape = boreShape([...land.slice(0, 1), ...travelled], { ringTravel });
    expect(shape.unworn).toBe(inch(3.0001));
  });

  it('finds more wear in a larger bore, by as much', () => {
    fc.assert(
      fc.property(someReadings, fc.integer({ min: 0, max: 100 }), (readings, more) => {
        const size = Math.max(...readings.map((reading) => reading.diameter)) as Length;
        const unworn = { station: inch(-1), angle: readings[0]?.angle ?? (0 as never) };
        const travel = { ringTravel: { min: 0 as Length, max: inch(7) } };
        const wear = (by: number) =>
          boreShape([{ ...unworn, diameter: (size - by) as Length }, ...readings], travel).wear;
        expect(wear(more * 1e-6)).toBeCloseTo(more * 1e-6, 14);
      }),
    );
  });

  it('leaves its arguments alone', () => {
    const all = Object.freeze([...land, ...travelled].map((reading) => Object.freeze(reading)));
    const options = Object.freeze({ ringTravel: Object.freeze(ringTravel) });
    expect(boreShape(all, options).form).toBe('tapered');
  });
});

describe('boreShape refuses', () => {
  it('a ring travel that no reading lies in', () => {
    const error = refusal(() =>
      boreShape(travelled, { ringTravel: { min: inch(5), max: inch(6) } }),
    );
    expect(error.parameter).toBe('options.ringTravel');
    expect(error.hint).toContain('the same datum');
  });

  it('a ring travel the wrong way round, or none', () => {
    const call = (travel: unknown) => () =>
      boreShape(travelled, { ringTravel: travel as Span<Length> });
    expect(refusal(call({ min: inch(3), max: inch(1) })).hint).toBe('Swap the two.');
    expect(refusal(call({ min: inch(3) })).parameter).toBe('options.ringTravel.max');
    expect(refusal(call(null)).parameter).toBe('options.ringTravel');
  });

  it('a travel without a second angle or station, land or no land', () => {
    const readings = [...land, ...travelled.slice(0, 2)];
    expect(refusal(() => boreShape(readings, { ringTravel })).message).toContain(
      'a second station at angle 0 deg is missing',
    );
  });

  it.each([null, 5, []])('%j for options', (options) => {
    expect(refusal(() => boreShape(travelled, options as object)).parameter).toBe('options');
  });
});
